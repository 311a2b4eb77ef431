import type { Network } from '../network/network.ts';
import type { Box } from './placed.ts';
import {
  type Bands,
  bandsBetween,
  copyProfile,
  cover,
  emptyProfile,
  join,
  type Profile,
  toClear,
  widthOf,
} from './profile.ts';

/** What columns are found for. Heights are y on the sheet, downwards. */
export interface Blocks {
  readonly parent: Network['parent'];
  /** Height of each run's end, and of the street. */
  readonly y: ArrayLike<number>;
  readonly streetY: number;
  /** Room for what stands at a run's end, on a sheet whose x is 0 at the end. */
  readonly atEnd: readonly (readonly Box[])[];
  /** Room to the left of a run's upright part, for its name. */
  readonly beside: ArrayLike<number>;
  /** Least length of a run's level part, for its name. */
  readonly along: ArrayLike<number>;
  /** 1 where what a run feeds leaves a header one behind the other, as from a manifold. */
  readonly header: Uint8Array;
}

const gap = 3;
/** Room that a level pipe takes above and below itself, a name on it included. */
const levelRoom = { above: 12, below: 3 };
/** Up to so many branches every order is tried. */
const mostOrders = 4;

interface Placed {
  readonly profile: Profile;
  readonly moves: readonly (readonly [run: number, by: number])[];
}

/**
 * The x of each run's end, the street's being 0. A run that rises or falls from where the one before it ended goes
 * on in its column where nothing stands in the way, as a riser does; the others stand to the right of it, each block
 * as near as the outlines of those before it allow, in the order that makes the whole narrowest.
 */
export function columns(blocks: Blocks): Float64Array {
  const size = blocks.parent.length;
  const heights = [
    blocks.streetY,
    ...Array.from(blocks.y),
    ...blocks.atEnd.flatMap((boxes) => boxes.flatMap(({ top, bottom }) => [top, bottom])),
  ];
  const bands = bandsBetween(
    heights.reduce((one, other) => Math.min(one, other)) - 20,
    heights.reduce((one, other) => Math.max(one, other)) + 20,
  );
  const fed = fedBy(blocks.parent);
  const profiles = new Array<Profile | undefined>(size);
  const offset = new Float64Array(size);
  for (let at = size - 1; at >= 0; at--) {
    const runs = fed[at] ?? [];
    const own = ownProfile(blocks, bands, at);
    const best = ordersOf(blocks, at, profiles, runs)
      .map((order) => placeInOrder(blocks, bands, at, own, order, profiles))
      .reduce((one, other) => (cost(other) < cost(one) ? other : one));
    for (const [run, by] of best.moves) {
      offset[run] = by;
      profiles[run] = undefined;
    }
    profiles[at] = best.profile;
  }
  const x = new Float64Array(size);
  x[0] = Math.max(blocks.along[0]!, 24);
  for (let at = 1; at < size; at++) x[at] = x[blocks.parent[at]!]! + offset[at]!;
  return x;
}

/** The runs that each run feeds. */
function fedBy(parent: Int32Array): (number[] | undefined)[] {
  const fed = new Array<number[] | undefined>(parent.length);
  parent.forEach((above, at) => {
    if (above < 0) return;
    const others = fed[above];
    if (others === undefined) fed[above] = [at];
    else others.push(at);
  });
  return fed;
}

function startY({ parent, y, streetY }: Blocks, at: number): number {
  const above = parent[at]!;
  return above < 0 ? streetY : y[above]!;
}

/** A run without what it feeds: its upright part, and what stands at its end. */
function ownProfile(blocks: Blocks, bands: Bands, at: number): Profile {
  const profile = emptyProfile(bands);
  const from = startY(blocks, at);
  const to = blocks.y[at]!;
  if (Math.abs(to - from) > 8) {
    const [top, bottom] = from < to ? [from + 8, to] : [to, from - 8];
    cover(profile, bands, { left: -2 - blocks.beside[at]!, right: 2, top, bottom });
  }
  cover(profile, bands, { left: -2, right: 2, top: to - 2, bottom: to + 2 });
  for (const box of blocks.atEnd[at]!) cover(profile, bands, box);
  return profile;
}

function cost({ profile, moves }: Placed): number {
  return widthOf(profile) + 0.3 * moves.reduce((sum, [, by]) => sum + by, 0);
}

/** Which runs go on in the column of the one that feeds them, and the order of the others to the right of it. */
interface Order {
  readonly straight: readonly number[];
  readonly beside: readonly number[];
}

/** Orders worth trying: all of a few, else by what a block takes and by where it ends. */
function ordersOf(
  blocks: Blocks,
  at: number,
  profiles: readonly (Profile | undefined)[],
  runs: readonly number[],
): Order[] {
  const { y, header } = blocks;
  if (header[at] === 1)
    return sortings(runs, y, profiles).map((beside) => ({
      straight: [],
      beside: alongBar(blocks, at, beside),
    }));
  const orders = runs.length <= mostOrders ? permutations(runs) : sortings(runs, y, profiles);
  return orders.flatMap((order) => {
    const straight = straightOn(blocks, at, order);
    const besides = order.filter((run) => !straight.includes(run));
    return [
      { straight, beside: besides },
      ...straight.map((run) => ({
        straight: straight.filter((one) => one !== run),
        beside: order.filter((one) => one === run || besides.includes(one)),
      })),
    ];
  });
}

/** From a manifold's bar those that leave it up or down come first; the bar ends before the others. */
function alongBar({ y }: Blocks, at: number, runs: readonly number[]): number[] {
  const leaves = (run: number) => leavesBar(y[run]! - y[at]!);
  return [...runs.filter(leaves), ...runs.filter((run) => !leaves(run))];
}

/** Whether a pipe that goes so far up or down leaves the bar of a manifold across, clear of what is drawn on it. */
export function leavesBar(down: number): boolean {
  return Math.abs(down) >= 16;
}

function sortings(
  runs: readonly number[],
  y: ArrayLike<number>,
  profiles: readonly (Profile | undefined)[],
): number[][] {
  const width = new Map(runs.map((run) => [run, widthOf(profiles[run]!)]));
  const byWidth = [...runs].sort((one, other) => width.get(one)! - width.get(other)!);
  const byHeight = [...runs].sort((one, other) => y[one]! - y[other]!);
  return [byWidth, [...byWidth].reverse(), byHeight, [...byHeight].reverse()];
}

function permutations(runs: readonly number[]): number[][] {
  if (runs.length <= 1) return [[...runs]];
  return runs.flatMap((run) => permutations(runs.filter((one) => one !== run)).map((rest) => [run, ...rest]));
}

/** Blocks behind run `at` in an order: first those that go on in its column, then those beside it. */
function placeInOrder(
  blocks: Blocks,
  bands: Bands,
  at: number,
  own: Profile,
  { straight, beside }: Order,
  profiles: readonly (Profile | undefined)[],
): Placed {
  const profile = copyProfile(own);
  const moves: [run: number, by: number][] = [];
  const level = blocks.y[at]!;
  const later: number[] = [];
  for (const run of straight) {
    if (toClear(profile, profiles[run]!, gap) > 0) later.push(run);
    else {
      join(profile, profiles[run]!, 0);
      moves.push([run, 0]);
    }
  }
  for (const run of [...later, ...beside]) {
    const by = Math.max(blocks.along[run]!, toClear(profile, profiles[run]!, gap));
    join(profile, profiles[run]!, by);
    cover(profile, bands, {
      left: 0,
      right: by,
      top: level - levelRoom.above,
      bottom: level + levelRoom.below,
    });
    moves.push([run, by]);
  }
  return { profile, moves };
}

/** For each direction in which the column of run `at` is free, the first in the order that goes there. */
function straightOn(blocks: Blocks, at: number, order: readonly number[]): number[] {
  const level = blocks.y[at]!;
  const came = Math.sign(level - startY(blocks, at));
  return [-1, 1].flatMap((way) => {
    if (came === -way) return [];
    return order.find((run) => Math.sign(blocks.y[run]! - level) === way) ?? [];
  });
}
