import type { Point } from './placed.ts';

/** Clear paper on both sides of the pipe that passes in front, points. */
const clear = 2.5;

interface Stretch {
  readonly pipe: number;
  readonly from: Point;
  readonly to: Point;
  /** Length of the way before it. */
  readonly before: number;
}

type Cut = readonly [from: number, to: number];

/**
 * The pieces of each way that are seen: where a level and an upright part cross without being joined, the thinner is
 * cut on both sides of the other.
 */
export function piecesSeen(ways: readonly (readonly Point[])[], weight: ArrayLike<number>): Point[][][] {
  const stretches = ways.flatMap((way, pipe) => stretchesOf(way, pipe));
  const level = stretches.filter(({ from, to }) => from.y === to.y);
  const upright = stretches.filter(({ from, to }) => from.x === to.x && from.y !== to.y);
  const cuts = ways.map((): Cut[] => []);
  for (const one of level) {
    for (const other of upright) {
      if (one.pipe === other.pipe || !cross(one, other)) continue;
      const [behind, front] = weight[one.pipe]! < weight[other.pipe]! ? [one, other] : [other, one];
      const place =
        behind.before +
        (behind === one ? Math.abs(other.from.x - one.from.x) : Math.abs(one.from.y - other.from.y));
      const half = weight[front.pipe]! / 2 + clear;
      cuts[behind.pipe]!.push([place - half, place + half]);
    }
  }
  return ways.map((way, pipe) => cutWay(way, cuts[pipe]!));
}

function stretchesOf(way: readonly Point[], pipe: number): Stretch[] {
  let before = 0;
  return way.slice(1).map((to, index) => {
    const stretch = { pipe, from: way[index]!, to, before };
    before += Math.hypot(to.x - stretch.from.x, to.y - stretch.from.y);
    return stretch;
  });
}

function cross(level: Stretch, upright: Stretch): boolean {
  return (
    inside(upright.from.x, level.from.x, level.to.x) && inside(level.from.y, upright.from.y, upright.to.y)
  );
}

function inside(value: number, one: number, other: number): boolean {
  return value > Math.min(one, other) + 0.5 && value < Math.max(one, other) - 0.5;
}

/** What is left of a way when stretches of its length are taken out. */
export function cutWay(way: readonly Point[], cuts: readonly Cut[]): Point[][] {
  const pieces: Point[][] = [];
  let piece: Point[] = [];
  const finish = () => {
    if (piece.length > 1) pieces.push(piece);
    piece = [];
  };
  for (const { from, to, before } of stretchesOf(way, 0)) {
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const at = (place: number): Point => {
      const share = length === 0 ? 0 : (place - before) / length;
      return { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
    };
    const end = before + length;
    const here = cuts
      .filter(([start, stop]) => stop > before && start < end)
      .sort((one, other) => one[0] - other[0]);
    let seen = before;
    for (const [start, stop] of here) {
      if (start > seen) {
        if (piece.length === 0) piece.push(at(seen));
        piece.push(at(start));
      }
      finish();
      seen = Math.max(seen, Math.min(stop, end));
    }
    if (seen < end || length === 0) {
      if (piece.length === 0) piece.push(at(seen));
      piece.push(to);
    }
  }
  finish();
  return pieces;
}
