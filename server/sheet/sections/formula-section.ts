import {
  type Explained,
  pathTo,
  type Report,
  type Step,
  type Steps,
  writeOut,
} from '../../../engine/index.ts';
import { units } from '../../../tables/units/definitions.ts';
import type { SheetFormula, SheetRow, SheetSection } from '../../../views/sheet.ts';
import { citedText, provenanceText } from '../../../views/text/citation-text.ts';
import { citedPlace } from '../../words/cited-words.ts';
import { paragraph, row, table, words } from '../blocks.ts';

/** A sum of more terms is no example that anybody reads. */
const mostTerms = 8;

/**
 * Every formula once, worked with the numbers of one run: one of the worst path where the formula is used there. Those
 * of a document stand with their symbols and sources; plain arithmetic is written out in a table.
 */
export function formulaSection(report: Report, steps: Steps): SheetSection {
  const examples = [...chosenExamples(report, steps)];
  const plain = examples.filter(({ formula }) => formula.source.source.id === 'arithmetic');
  return {
    id: 'formulas',
    title: 'Formulas, each worked once',
    blocks: [
      paragraph(
        'Every other run is computed in the same way. Numbers stand in the units that each formula’s source prints; nothing is rounded between steps.',
        'note',
      ),
      ...examples.filter((step) => !plain.includes(step)).map(workedFormula),
      table(
        'Plain arithmetic, each kind written out once',
        [words('What'), words('Step'), words('With numbers'), words('Result')],
        plain.map(arithmeticRow),
        'Readings between two rows of a table lie on a straight line between them, or at the next row, as the basis says.',
      ),
    ],
  };
}

/** The step that shows each formula best: on the worst path, with more than one term but not too many. */
function chosenExamples(report: Report, steps: Steps): Iterable<Step> {
  const places = placesOnWorstPath(report);
  const chosen = new Map<string, { readonly step: Step; readonly rank: number }>();
  for (const step of steps.values()) {
    const { id } = step.formula;
    const owner = step.id.slice(0, step.id.indexOf('.'));
    const count = Object.keys(step.terms).length;
    const shows = count > mostTerms ? 2000 : count < 2 ? 1000 : 0;
    const rank = shows + (places.get(owner) ?? 500);
    const known = chosen.get(id);
    if (known === undefined || rank < known.rank) chosen.set(id, { step, rank });
  }
  return [...chosen.values()].map(({ step }) => step);
}

/** Owners of steps by how well their numbers serve: the run that loses most first. */
function placesOnWorstPath({ network, solution, worst }: Report): Map<string, number> {
  if (worst === undefined) return new Map();
  const loss = (at: number): number => solution.pipeLoss[at]! + solution.fittingLoss[at]!;
  const path = pathTo(network, worst.inlet.run).sort((one, other) => loss(other) - loss(one));
  const runs = path.map((at, place) => [network.runs[at]!.id, Math.min(place, 499)] as const);
  return new Map([[worst.inlet.fixture.id, 0], ...runs]);
}

function workedFormula(step: Step): SheetFormula {
  const { formula } = step;
  const { formula: printed, arithmetic, result, inputs } = writeOut(step);
  const { source, at, verified } = formula.source;
  return {
    is: 'formula',
    title: formula.title,
    step: step.id,
    printed,
    arithmetic,
    result,
    terms: Object.entries(formula.symbols).map(([symbol, { meaning }]) => ({
      symbol,
      value: inputs[symbol] ?? '',
      meaning,
      origin: originText(step.terms[symbol]),
    })),
    source: `Formula: ${provenanceText(source, at, verified)}.${formula.note === undefined ? '' : ` ${formula.note}`}`,
  };
}

function arithmeticRow(step: Step): SheetRow {
  const { arithmetic, result } = writeOut(step);
  return row(capital(step.formula.title), step.id, arithmetic, result);
}

function capital(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}

function originText(term: Explained | undefined): string {
  if (term === undefined) return '';
  switch (term.from) {
    case 'given':
      return term.typed === '' ? term.field : `${term.field}: ${term.typed}`;
    case 'step':
      return `step ${term.step}`;
    case 'table': {
      const { cite } = term;
      const printed = `${cite.printed} ${units[cite.unit].symbol}`.trim();
      return `${citedPlace(cite)}: ${printed}. ${citedText(cite)}`;
    }
  }
}
