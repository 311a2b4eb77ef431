import type { Report } from '../../../engine/index.ts';
import type { SheetSection } from '../../../views/sheet.ts';
import { figure, unitSymbol } from '../../../views/text/figure.ts';
import { figures, paragraph, row, table, words } from '../blocks.ts';

/** What is left at every inlet, the worst first. */
export function inletSection({ network, inlets }: Report): SheetSection {
  const { units } = network.job;
  const pressure = unitSymbol('pressure', units);
  const rows = inlets.map(({ inlet, residual, margin, staticPressure }) =>
    row(
      inlet.fixture.id,
      inlet.fixture.name,
      inlet.side,
      network.runs[inlet.run]!.id,
      figure(inlet.requiredFlow, 'flow', units),
      figure(staticPressure, 'pressure', units),
      figure(residual, 'pressure', units),
      figure(inlet.requiredPressure, 'pressure', units),
      figure(margin, 'pressure', units),
      margin < 0 ? 'SHORT' : 'enough',
    ),
  );
  const columns = [
    words('Id'),
    words('Fixture'),
    words('Side'),
    words('Run'),
    figures(`Flow, ${unitSymbol('flow', units)}`),
    figures(`At rest, ${pressure}`),
    figures(`Left, ${pressure}`),
    figures(`Needs, ${pressure}`),
    figures(`To spare, ${pressure}`),
    words('Judged'),
  ];
  return {
    id: 'inlets',
    title: 'Pressure at every fixture',
    blocks:
      rows.length === 0
        ? [paragraph('No run ends at a fixture yet.')]
        : [table('Inlets, the smallest margin first', columns, rows)],
  };
}
