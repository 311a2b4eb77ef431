import { citePoint } from '../../tables/look-up.ts';
import type { Cited } from '../../tables/table.ts';
import { rowAtOrAbove } from '../demand/demand-table.ts';
import type { Inlet, Network } from './network.ts';
import { pathTo } from './path.ts';
import type { Solution } from './solution.ts';

/**
 * Table values behind the residual at an inlet that nobody could compare with their document: recalled ones, and
 * rules of the trade. Each is given once, in the order of the path.
 */
export function unverifiedOnPath(network: Network, solution: Solution, inlet: Inlet): Cited[] {
  const found = new Map<string, Cited>();
  const keep = (cited: Cited): void => {
    if (cited.verified !== 'memory' && cited.verified !== 'common-practice') return;
    found.set(`${cited.table.id} ${cited.row ?? ''} ${cited.column ?? ''}`, cited);
  };
  const { sources, devices, deviceAt, demandTable } = network;
  for (const at of pathTo(network, inlet.run)) {
    keep(sources.bore[at]!);
    keep(network.basis.friction === 'hazen-williams' ? sources.hazenWilliamsC[at]! : sources.roughness[at]!);
    for (const { each } of sources.fittings[at]!) keep(each);
    const placed = deviceAt[at]!;
    if (placed >= 0) {
      const { from } = devices[placed]!.curve;
      if (typeof from === 'object') keep('printed' in from ? from : citePoint(from, 0));
    }
    for (const source of sources.units[at]!) {
      if (source.what === 'inlet') keep(source.each);
      else keep(source.what === 'both sides' ? source.total : source.value);
    }
    const column = solution.valve[at] === 1 ? demandTable.valve : demandTable.tank;
    const row = rowAtOrAbove(column, solution.units[at]!);
    if (row < column.from.points.length) keep(citePoint(column.from, row));
  }
  if (inlet.flowFrom !== 'maker') keep(inlet.flowFrom);
  if (inlet.pressureFrom !== 'maker') keep(inlet.pressureFrom);
  return [...found.values()];
}
