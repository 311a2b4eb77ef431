import { lossAt } from '../hydraulics/curve.ts';
import type { Network } from '../network/network.ts';
import {
  type Choice,
  cheapestWithin,
  extend,
  type Front,
  joinAll,
  type MadeFront,
  pointFront,
  union,
  type Window,
} from './front.ts';
import { windows } from './windows.ts';

/** One pipe that a run may be made of. */
export interface PipeChoice extends Choice {
  /** Names the pipe, size and material; runs that must be the same have the same. */
  readonly pipe: string;
  /** Nominal size in inches: what `not-larger` compares. */
  readonly inches: number;
}

/** How a run's pipe is tied to that of the run which feeds it. */
export type Tie = 'free' | 'not-larger' | 'same';

/** What the least-cost sizing decides over. */
export interface SizingTask {
  readonly network: Network;
  /** Design flow by position, m3/s; no size changes it. */
  readonly flow: Float64Array;
  /** By position, one or more, at most 255; a run with one choice is fixed. Costs in whole cents. */
  readonly choices: readonly (readonly PipeChoice[])[];
  /** By position; all free where it is left out. */
  readonly ties?: readonly Tie[];
  /** Pa, see `extend`: 0, the default, is exact; else an answer asks at most this for each run of its path too much. */
  readonly tolerance?: number;
  /** Pressures at the street between which the curve is wanted, Pa; the narrower, the less work. */
  readonly between?: Window;
}

/** One answer: what it costs, what it asks at the street (Pa), and by position which of a run's choices it takes. */
export interface Sizing {
  readonly cost: number;
  readonly need: number;
  readonly choice: Uint8Array;
}

/** Least cost against pressure at the street, and the sizes behind each point. */
export interface CostCurve extends Front {
  /** The cheapest sizing that manages with `available` Pa at the street; undefined where none does. */
  readonly pick: (available: number) => Sizing | undefined;
  /** Points kept over all runs, and the most at one run: the work that exactness took. */
  readonly points: number;
  readonly longest: number;
}

/**
 * What is kept of a run for some of its choices: the front at its start, and what is needed at its end, behind its
 * device. A run that no tie touches keeps all its choices together.
 */
interface Part {
  readonly choices: readonly number[];
  readonly front: MadeFront;
  readonly needAtEnd: Float64Array;
  /** How many of those needs a reducing valve cannot give; the others stand in front of it in the same order. */
  readonly beyondValve: number;
}

/**
 * Exact least-cost sizing of a tree. From the taps to the street, each run carries the whole trade-off between cost
 * and the pressure it asks: the trade-offs of the runs it feeds are joined at the larger need, and each of its own
 * sizes shifts the result by its cost and its loss. A point that costs no less and asks no less than another cannot
 * be in a better answer, so it is dropped and nothing is lost. Demand depends on no size, hence losses are constants.
 * Where ties bind a run to its neighbours, it keeps a trade-off for each of its sizes.
 */
export function leastCost(task: SizingTask): CostCurve {
  const { network, flow, choices, tolerance = 0 } = task;
  const { size, subtreeEnd, elevationLoss } = network;
  const { most, least } = windows(task);
  const own = ownNeeds(network);
  const split = splitRuns(task);
  const worked = new Array<readonly Part[]>(size);
  let points = 0;
  let longest = 0;
  for (let at = size - 1; at >= 0; at--) {
    const all = choices[at]!.map((_, index) => index);
    const groups = split[at] === 1 ? all.map((index) => [index]) : [all];
    worked[at] = groups.map((group): Part => {
      const fronts: Front[] = own[at]! > Number.NEGATIVE_INFINITY ? [pointFront(0, own[at]!)] : [];
      for (let child = at + 1; child < subtreeEnd[at]!; child = subtreeEnd[child]!) {
        const allowed = worked[child]!.filter((part) => fits(task, child, part, at, group));
        fronts.push(allowed.length === 1 ? allowed[0]!.front : union(allowed.map(({ front }) => front)));
      }
      const atEnd = joinAll(fronts);
      const { front: before, beyondValve } = acrossDevice(network, at, flow[at]!, atEnd);
      const raised = { cost: before.cost, need: before.need.map((need) => need + elevationLoss[at]!) };
      const window = { most: most[at]!, least: least[at]! };
      const front = extend(
        raised,
        group.map((index) => choices[at]![index]!),
        window,
        tolerance,
      );
      points += front.cost.length;
      longest = Math.max(longest, front.cost.length);
      return { choices: group, front, needAtEnd: atEnd.need, beyondValve };
    });
  }
  const { cost, need } = union(worked[0]!.map(({ front }) => front));
  return { cost, need, points, longest, pick: (available) => trace(task, worked, available) };
}

/** 1 where a run's own size has to be known by a neighbour. */
function splitRuns({ network, ties }: SizingTask): Uint8Array {
  const split = new Uint8Array(network.size);
  ties?.forEach((tie, at) => {
    if (tie === 'free' || at === 0) return;
    split[at] = 1;
    split[network.parent[at]!] = 1;
  });
  return split;
}

/** Whether a part of a fed run goes with a part of the run that feeds it. */
function fits(
  { choices, ties }: SizingTask,
  child: number,
  part: Part,
  at: number,
  group: readonly number[],
): boolean {
  const tie = ties?.[child] ?? 'free';
  if (tie === 'free') return true;
  const fed = choices[child]![part.choices[0]!]!;
  const feeding = choices[at]![group[0]!]!;
  return tie === 'same' ? fed.pipe === feeding.pipe : fed.inches <= feeding.inches;
}

/** What a fixture at the end of each run needs, Pa; minus infinity where none is. */
function ownNeeds(network: Network): Float64Array {
  const needs = new Float64Array(network.size).fill(Number.NEGATIVE_INFINITY);
  for (const { run, requiredPressure } of network.inlets) needs[run] = requiredPressure;
  return needs;
}

/** A front behind a run's device as it is in front of it. A reducing valve gives no more than its set pressure. */
function acrossDevice(
  network: Network,
  at: number,
  flow: number,
  behind: Front,
): { front: Front; beyondValve: number } {
  const placed = network.deviceAt[at]!;
  if (placed < 0) return { front: behind, beyondValve: 0 };
  const { curve, setPressure = Number.POSITIVE_INFINITY } = network.devices[placed]!;
  const loss = lossAt(curve, flow);
  const need = behind.need.map((asked) => asked + loss);
  const within = need.findIndex((asked) => asked <= setPressure);
  const beyondValve = within === -1 ? need.length : within;
  return {
    front: { cost: behind.cost.subarray(beyondValve), need: need.subarray(beyondValve) },
    beyondValve,
  };
}

/** Walks the kept fronts from the street outwards and reads off the choice of every run. */
function trace(
  task: SizingTask,
  worked: readonly (readonly Part[])[],
  available: number,
): Sizing | undefined {
  const { size, subtreeEnd, parent } = task.network;
  const choice = new Uint8Array(size);
  const given = new Float64Array(size);
  given[0] = available;
  let total: { cost: number; need: number } | undefined;
  for (let at = 0; at < size; at++) {
    const above = parent[at]!;
    const taken = cheapest(
      above < 0 ? worked[at]! : worked[at]!.filter((part) => fits(task, at, part, above, [choice[above]!])),
      given[at]!,
    );
    if (taken === undefined) return undefined;
    const { part, point } = taken;
    const { front, needAtEnd, beyondValve } = part;
    total ??= { cost: front.cost[point]!, need: front.need[point]! };
    choice[at] = part.choices[front.choice[point]!]!;
    const atEnd = needAtEnd[front.upon[point]! + beyondValve]!;
    for (let child = at + 1; child < subtreeEnd[at]!; child = subtreeEnd[child]!) given[child] = atEnd;
  }
  return total && { ...total, choice };
}

/** The cheapest point over several parts that manages with `available`. */
function cheapest(parts: readonly Part[], available: number): { part: Part; point: number } | undefined {
  let best: { part: Part; point: number } | undefined;
  for (const part of parts) {
    const point = cheapestWithin(part.front, available);
    if (point === -1) continue;
    if (best === undefined || part.front.cost[point]! < best.part.front.cost[best.point]!)
      best = { part, point };
  }
  return best;
}
