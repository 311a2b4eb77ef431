import { citePoint, citeValue } from '../../tables/look-up.ts';
import { flowTestExponent } from '../../tables/supply/flow-test.ts';
import type { Cited } from '../../tables/table.ts';
import { addedCites, readCites } from '../demand/demand-cites.ts';
import { servesSeveral } from '../demand/design-flow.ts';
import { pointsRead } from '../hydraulics/curve.ts';
import type { Inlet, Network } from './network.ts';
import { pathTo } from './path.ts';
import type { Solution } from './solution.ts';

/**
 * Table values behind the residual at an inlet that nobody could compare with their document: recalled ones, and
 * rules of the trade. Each is given once: those of the pipes on the path, then those of the demand that they carry.
 */
export function unverifiedOnPath(network: Network, solution: Solution, inlet: Inlet): Cited[] {
  const found = new Map<string, Cited>();
  const values = [...pressureValues(network, solution, inlet), ...demandValues(network, solution, inlet)];
  for (const cited of values) {
    if (cited.verified !== 'memory' && cited.verified !== 'common-practice') continue;
    found.set(`${cited.table.id} ${cited.row ?? ''} ${cited.column ?? ''}`, cited);
  }
  return [...found.values()];
}

function pressureValues(network: Network, solution: Solution, inlet: Inlet): Cited[] {
  const { basis, supply, sources, deviceAt, devices } = network;
  const values: Cited[] = supply.kind === 'flow-test' ? [citeValue(flowTestExponent)] : [];
  for (const at of pathTo(network, inlet.run)) {
    values.push(sources.bore[at]!);
    values.push(basis.friction === 'hazen-williams' ? sources.hazenWilliamsC[at]! : sources.roughness[at]!);
    for (const { by, each } of sources.fittings[at]!) {
      // An allowance stands in place of the fittings, but not of a manifold's port.
      if (basis.fittingAllowancePercent === undefined || by === 'Cv') values.push(each);
    }
    const placed = deviceAt[at]!;
    if (placed < 0) continue;
    const { curve } = devices[placed]!;
    if (typeof curve.from !== 'object') continue;
    if ('printed' in curve.from) values.push(curve.from);
    else for (const point of pointsRead(curve, solution.flow[at]!)) values.push(citePoint(curve.from, point));
  }
  if (inlet.pressureFrom !== 'maker') values.push(inlet.pressureFrom);
  return values;
}

function demandValues(network: Network, solution: Solution, inlet: Inlet): Cited[] {
  const { subtreeEnd, demand, inlets } = network;
  const values: Cited[] = [];
  if (inlet.flowFrom !== 'maker') values.push(inlet.flowFrom);
  // A run to one fixture carries that fixture's own flow: no method of demand stands behind it.
  const several = pathTo(network, inlet.run).filter((at) =>
    servesSeveral(solution.ownSum[at]!, solution.largest[at]!),
  );
  for (const at of several) values.push(...readCites(demand, solution, at));
  // The demand of the first of them counts whatever it serves, off the path as well as on it.
  const [first] = several;
  for (let at = first ?? network.size; at < (first === undefined ? 0 : subtreeEnd[first]!); at++) {
    values.push(...addedCites(demand, at));
  }
  for (const { run, flowFrom } of inlets) {
    if (network.continuousAdded[run]! > 0 && flowFrom !== 'maker') values.push(flowFrom);
  }
  return values;
}
