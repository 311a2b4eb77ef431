import type { Network } from '../../engine/index.ts';
import type { CurveTable, GridTable } from '../../tables/table.ts';
import { units } from '../../tables/units/definitions.ts';
import { provenanceText } from '../../views/text/citation-text.ts';

/** What the units are called by which the demand method counts. */
export function demandUnit({ demand }: Network): string {
  return units[demand.from.unit].symbol;
}

/** Where the units of the demand method stand, and the curves from their sum to flow. */
export function demandSources({ demand }: Network): string[] {
  const { count, table } = demand.from;
  const curves = [...new Set([table.tank.from, table.valve.from])];
  return [
    `units: ${tableSource(count.table)}`,
    ...curves.map((curve) => `flow: ${curve.title}, ${tableSource(curve)}`),
  ];
}

/** The document and place of a table, and how far it was compared with it. */
export function tableSource({ source, at, verified }: GridTable<string, string> | CurveTable): string {
  return provenanceText(source, at, verified);
}
