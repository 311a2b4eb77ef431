import { type InletResult, type InletSide, ledger, type Report } from '../../../engine/index.ts';
import type { SheetBlock, SheetSection } from '../../../views/sheet.ts';
import { figure, unitSymbol } from '../../../views/text/figure.ts';
import { lossWords } from '../../../views/text/loss-step.ts';
import { figures, paragraph, row, table, total, words } from '../blocks.ts';

/** The way from the street to the worst fixture of each side, one line for each loss. */
export function pathSection(report: Report): SheetSection {
  const worst = worstOfSides(report);
  return {
    id: 'paths',
    title: 'From the street to the worst fixtures',
    blocks:
      worst.length === 0
        ? [paragraph('No run ends at a fixture yet.')]
        : worst.map((result) => pathTable(report, result)),
  };
}

/** The worst inlet of each side that has one, the worse first. */
export function worstOfSides({ inlets }: Report): InletResult[] {
  const sides: readonly InletSide[] = ['cold', 'hot'];
  const found = sides.map((side) => inlets.find(({ inlet }) => inlet.side === side));
  return found.filter((result) => result !== undefined).sort((one, other) => one.margin - other.margin);
}

function pathTable({ network, solution }: Report, { inlet, residual, margin }: InletResult): SheetBlock {
  const { units } = network.job;
  const pressure = unitSymbol('pressure', units);
  const lines = ledger(network, solution, inlet.run).map(({ run, what, loss, after }) => {
    const { id } = network.runs[run]!;
    return row(
      id,
      lossWords(network.runs[run]!, what, loss),
      what === 'pipe' ? figure(solution.flow[run]!, 'flow', units) : '',
      figure(loss, 'pressure', units),
      figure(after, 'pressure', units),
    );
  });
  return table(
    `${inlet.fixture.name}, ${inlet.side}`,
    [
      words('Run'),
      words('What'),
      figures(`Flow, ${unitSymbol('flow', units)}`),
      figures(`Loss, ${pressure}`),
      figures(`Left, ${pressure}`),
    ],
    [
      row('', 'at the street, under demand', '', '', figure(solution.supplyPressure, 'pressure', units)),
      ...lines,
      total('', 'left at the fixture', '', '', figure(residual, 'pressure', units)),
      row('', 'needed there', '', '', figure(inlet.requiredPressure, 'pressure', units)),
      total('', margin < 0 ? 'SHORT by' : 'to spare', '', '', figure(Math.abs(margin), 'pressure', units)),
    ],
  );
}
