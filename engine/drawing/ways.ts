import type { Network } from '../network/network.ts';
import { lineBox, overlap } from './box.ts';
import type { Box, Point } from './placed.ts';

/** Distance between level pipes that would lie on each other, points. */
const lane = 5;
const mostLanes = 6;

export interface Ends {
  readonly parent: Network['parent'];
  readonly x: ArrayLike<number>;
  readonly y: ArrayLike<number>;
  readonly street: Point;
  readonly weight: ArrayLike<number>;
  /** How far the header of a manifold reaches to the right of its run's end; 0 where there is none. */
  readonly headerEnd: ArrayLike<number>;
}

interface Level {
  readonly y: number;
  readonly left: number;
  readonly right: number;
}

/**
 * The way of each run: level from where the one before it ends, then up or down to its own end. Where level parts
 * would lie on each other they are drawn beside each other, the larger pipe at its true height; ends are always at
 * theirs.
 *
 * @param kept boxes that a level part that has to give way should not cross
 */
export function ways(ends: Ends, kept: readonly Box[]): Point[][] {
  const { parent, x, y, street, weight, headerEnd } = ends;
  const found = new Array<Point[]>(parent.length);
  const levels: Level[] = [];
  const order = [...parent.keys()].sort((one, other) => weight[other]! - weight[one]! || one - other);
  for (const at of order) {
    const above = parent[at]!;
    const node = above < 0 ? street : { x: x[above]!, y: y[above]! };
    const end = { x: x[at]!, y: y[at]! };
    const start = { x: Math.min(end.x, node.x + (above < 0 ? 0 : headerEnd[above]!)), y: node.y };
    if (Math.abs(end.x - start.x) < 0.5) {
      found[at] = [{ x: end.x, y: start.y }, end];
      continue;
    }
    const span = { left: Math.min(start.x, end.x), right: Math.max(start.x, end.x) };
    const free = lanesFor(end.y - start.y)
      .map((step): Level => ({ y: start.y + step * lane, ...span }))
      .filter((level) => !levels.some((other) => together(level, other)));
    const clear = free.find((level) => !kept.some((box) => overlap(box, boxOf(level))));
    const level = clear ?? free[0] ?? { y: start.y, ...span };
    levels.push(level);
    found[at] = corners([start, { x: start.x, y: level.y }, { x: end.x, y: level.y }, end]);
  }
  return found;
}

/** Lanes in the order of liking: the true height, then towards where the run goes. */
function lanesFor(down: number): number[] {
  const steps = Array.from({ length: mostLanes }, (_, index) => index + 1);
  const [first, second] = down < 0 ? [-1, 1] : [1, -1];
  return [0, ...steps.map((step) => step * first!), ...steps.map((step) => step * second!)];
}

function together(one: Level, other: Level): boolean {
  return (
    Math.abs(one.y - other.y) < lane - 0.5 && one.left < other.right - 0.5 && other.left < one.right - 0.5
  );
}

function boxOf({ left, right, y }: Level): Box {
  return lineBox({ x: left, y }, { x: right, y }, 2);
}

/** A way without points that stand on each other. */
function corners(points: readonly Point[]): Point[] {
  return points.filter((point, index) => {
    const before = points[index - 1];
    return before === undefined || before.x !== point.x || before.y !== point.y;
  });
}
