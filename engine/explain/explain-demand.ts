import { servesSeveral } from '../demand/design-flow.ts';
import type { Inlet } from '../network/network.ts';
import type { Report } from '../network/report.ts';
import { largestOf, names, readOff, sumOf } from './arithmetic.ts';
import { explainTable, explainTableUnits, fixtureUnitName } from './explain-table.ts';
import { explainUnits } from './explain-units.ts';
import { fedTerms, type NamedTerm, terms } from './fed-runs.ts';
import { flowFormula } from './flow-formula.ts';
import { cited, given } from './leaf.ts';
import type { Explained } from './step.ts';
import type { Worksheet } from './worksheet.ts';

/** Adds the steps from what one run serves to its design flow: `units`, `demand`, `flow` and what they rest on. */
export function explainDemand(report: Report, at: number, sheet: Worksheet): void {
  const { network, solution } = report;
  const id = network.runs[at]!.id;
  explainUnits(report, at, sheet, fixtureUnitName, {
    units: solution.units,
    sources: network.sources.units,
  });
  const largest = explainLargest(report, at, sheet);
  const continuous = [
    ...fedTerms(report, at, 'continuous', solution.continuous),
    ...addedFlow(report, at, network.continuousAdded[at]!),
  ];
  const long = sheet.apply(
    `${id}.continuous`,
    sumOf({
      id: 'continuous',
      title: 'Flow that runs for long',
      unit: 'gpm',
      meaning: 'flow that is added whole and not counted by the method',
      terms: continuous.map(({ meaning }) => meaning),
    }),
    terms(continuous.map(({ term }) => term)),
  );
  const demand = explainMethod(report, at, sheet);
  const fed = fedTerms(report, at, 'flow', solution.flow);
  const own = Math.max(demand.value, largest.value) + long.value;
  const held = fed.find(({ term }) => term.value > own * (1 + 1e-12));
  const formula = flowFormula(
    fed.map(({ meaning }) => meaning),
    held?.meaning,
  );
  sheet.apply(`${id}.flow`, formula, {
    D: demand,
    L: largest,
    C: long,
    ...Object.fromEntries(names(fed.length).map((name, index) => [name, fed[index]!.term])),
  });
}

function explainLargest(report: Report, at: number, sheet: Worksheet): Explained {
  const { network, solution } = report;
  const own = network.ownFlow[at]! > 0 ? network.inlets.filter(({ run }) => run === at) : [];
  const list: NamedTerm[] = [
    ...fedTerms(report, at, 'largest', solution.largest),
    ...own.map((inlet) => ({ meaning: inlet.fixture.name, term: ownFlowOf(inlet) })),
  ];
  if (list.length === 0) {
    list.push({ meaning: 'no fixture', term: given(0, 'gpm', 'no fixture that the method counts', '0') });
  }
  return sheet.apply(
    `${network.runs[at]!.id}.largest`,
    largestOf({
      id: 'largest',
      title: 'Largest single fixture',
      unit: 'gpm',
      meaning: 'largest flow of one fixture',
      terms: list.map(({ meaning }) => meaning),
    }),
    terms(list.map(({ term }) => term)),
  );
}

/** The step `demand`, by the method of the basis where the run serves several fixtures. */
function explainMethod(report: Report, at: number, sheet: Worksheet): Explained {
  const { network, solution } = report;
  const id = network.runs[at]!.id;
  const list = [
    ...fedTerms(report, at, 'own-flows', solution.ownSum),
    ...addedFlow(report, at, network.ownFlowAdded[at]!),
  ];
  const own = sheet.apply(
    `${id}.own-flows`,
    sumOf({
      id: 'own-flows',
      title: "Fixtures' own flows",
      unit: 'gpm',
      meaning: 'sum of the own flows of the fixtures served',
      terms: list.map(({ meaning }) => meaning),
    }),
    terms(list.map(({ term }) => term)),
  );
  // A run to one fixture reads no table, but the runs before it count its units.
  const units = explainTableUnits(report, at, sheet, network.demand.from);
  if (!servesSeveral(solution.ownSum[at]!, solution.largest[at]!)) {
    const formula = readOff('one-fixture', 'One fixture: its own flow', 'gpm', 'own flow');
    return sheet.apply(`${id}.demand`, formula, { y: own });
  }
  return explainTable(report, at, sheet, network.demand.from, { own, units });
}

function ownFlowOf({ fixture, requiredFlow, flowFrom }: Inlet): Explained {
  return flowFrom === 'maker'
    ? given(requiredFlow, 'gpm', `fixture ${fixture.id}, flow`, fixture.flow!.typed)
    : cited(flowFrom);
}

/** Own flows that a run adds to a sum, a fixture met by both its inlets taken off once. */
function addedFlow({ network }: Report, at: number, amount: number): NamedTerm[] {
  if (amount === 0) return [];
  const ends = network.inlets.filter(({ run }) => run === at);
  const [first] = ends;
  if (ends.length === 1 && first!.fixture.count === 1) {
    return [{ meaning: first!.fixture.name, term: ownFlowOf(first!) }];
  }
  const meaning =
    first === undefined
      ? 'fixtures that both sides serve, counted once'
      : `${first.fixture.count} × ${first.fixture.name}`;
  return [{ meaning, term: given(amount, 'gpm', meaning, '') }];
}
