import type { Decimal } from 'decimal.js';
import type { MaterialId } from '../../tables/pipe/names.ts';
import type { ServiceId } from '../../tables/takeoff/part-kinds.ts';
import type { Network } from '../network/network.ts';
import { pipeOf } from './article.ts';
import { joinOne } from './join-one.ts';
import type { RunPlace } from './place-of-runs.ts';
import { feetOf } from './price-run.ts';

/** A length of pipe to be cut: one for each run that has any. */
export interface PipePiece {
  readonly run: string;
  readonly material: MaterialId;
  readonly size: string;
  readonly service: ServiceId;
  /** Developed length. */
  readonly feet: Decimal;
  /** A line from a manifold's port: one length without a splice. */
  readonly homeRun: boolean;
}

/** The pieces of a network in the order of its runs; runs without length are nipples and have none. */
export function pipePieces(
  network: Network,
  followers: readonly (readonly number[])[],
  places: readonly RunPlace[],
): readonly PipePiece[] {
  const homeRuns = markHomeRuns(network, followers);
  return network.runs.flatMap((run, at) => {
    const { id, material, size } = run;
    const feet = feetOf(run.length);
    if (!feet.greaterThan(0)) return [];
    return [{ run: id, material, size, service: places[at]!.service, feet, homeRun: homeRuns[at] === 1 }];
  });
}

/** Runs from a manifold, and what goes on from one as the same pipe. */
function markHomeRuns({ runs, parent }: Network, followers: readonly (readonly number[])[]): Uint8Array {
  const marked = new Uint8Array(runs.length);
  for (let at = 1; at < runs.length; at++) {
    const from = runs[parent[at]!]!;
    const { end } = from;
    if (end !== undefined && 'device' in end) {
      if (end.device === 'manifold') marked[at] = 1;
      continue;
    }
    const alone = followers[parent[at]!]!.length === 1;
    if (alone && marked[parent[at]!] === 1 && joinOne(pipeOf(from), pipeOf(runs[at]!)) === undefined) {
      marked[at] = 1;
    }
  }
  return marked;
}
