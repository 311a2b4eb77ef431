import type { Network } from './network.ts';

/** Positions from the street to a run, the run included. */
export function pathTo(network: Pick<Network, 'parent'>, position: number): number[] {
  const path: number[] = [];
  for (let at = position; at >= 0; at = network.parent[at]!) path.push(at);
  return path.reverse();
}

/** Whether `below` is `above` itself or fed by it. */
export function feeds(network: Pick<Network, 'subtreeEnd'>, above: number, below: number): boolean {
  return below >= above && below < network.subtreeEnd[above]!;
}
