import { lineStep, type Spot } from './place-texts.ts';
import type { Box, Point } from './placed.ts';

/** Clear paper between a text and the pipe or symbol that it names, points. */
const beside = 2;

/**
 * Places for the name of a run along its way: above and below its level parts, upright beside its upright parts, the
 * longest part first; then off to the sides with a leader.
 */
export function spotsAlong(way: readonly Point[], weight: number, width: number, lines: number): Spot[] {
  const height = lines * lineStep;
  const away = weight / 2 + beside;
  const parts = way
    .slice(1)
    .map((to, index) => ({ from: way[index]!, to }))
    .map((part) => ({ ...part, length: Math.hypot(part.to.x - part.from.x, part.to.y - part.from.y) }))
    .sort((one, other) => other.length - one.length);
  const near = parts.flatMap(({ from, to, length }): Spot[] => {
    if (length < 4) return [];
    const level = from.y === to.y;
    const least = level ? Math.min(from.x, to.x) : Math.min(from.y, to.y);
    const starts = [0.5, 0.15, 0.85, 0, 1].map((share) => least + share * (length - width));
    // A name may be longer than a short part, but not so long that it seems to be of its neighbour.
    if (length < width - 10) return [];
    return starts.flatMap((start): Spot[] =>
      level
        ? [
            { corner: { x: start, y: from.y - away - height }, turned: false },
            { corner: { x: start, y: from.y + away }, turned: false },
          ]
        : [
            { corner: { x: from.x - away - height, y: start + width }, turned: true },
            { corner: { x: from.x + away, y: start + width }, turned: true },
          ],
    );
  });
  const longest = parts[0];
  if (longest === undefined) return near;
  const starts = [0.5, 0.25, 0.75].map((share) => between(longest.from, longest.to, share));
  return [...near, ...starts.flatMap((start) => farSpots(start, width, height))];
}

/** Places around a symbol, or around the bare end of a run. */
export function spotsAround(box: Box, width: number, lines: number): Spot[] {
  const height = lines * lineStep;
  const centre = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  const level = (x: number, y: number): Spot => ({ corner: { x, y }, turned: false });
  const upright = (x: number, y: number): Spot => ({ corner: { x, y }, turned: true });
  return [
    level(centre.x - width / 2, box.top - beside - height),
    level(centre.x - width / 2, box.bottom + beside),
    level(box.right + beside, centre.y - height / 2),
    level(box.left - beside - width, centre.y - height / 2),
    level(box.right + 1, box.top - height),
    level(box.right + 1, box.bottom),
    level(box.left - 1 - width, box.top - height),
    level(box.left - 1 - width, box.bottom),
    upright(centre.x - height / 2, box.top - beside),
    upright(centre.x - height / 2, box.bottom + beside + width),
    ...farSpots(centre, width, height),
  ];
}

/** Where the text at the end of a pipe goes on from it. */
export type EndSide = 'above' | 'below' | 'right';

/** Places for what a run ends at: where the pipe would go on first, upright above and below it, else level. */
export function spotsAtEnd(end: Point, reach: number, side: EndSide, width: number, lines: number): Spot[] {
  const height = lines * lineStep;
  const above: Spot = { corner: { x: end.x - height / 2, y: end.y - reach }, turned: true };
  const below: Spot = { corner: { x: end.x - height / 2, y: end.y + reach + width }, turned: true };
  const box = { left: end.x - reach, right: end.x + reach, top: end.y - reach, bottom: end.y + reach };
  const right: Spot = { corner: { x: end.x + reach, y: end.y - height / 2 }, turned: false };
  const first = { above: [above, below], below: [below, above], right: [right] }[side];
  return [...first, ...spotsAround(box, width, lines)];
}

const distances = [16, 26, 38, 52];
const directions = [
  [0.7, -1],
  [-0.7, -1],
  [0.7, 1],
  [-0.7, 1],
  [0.2, -1],
  [-0.2, -1],
  [0.2, 1],
  [-0.2, 1],
] as const;

/** Places off to the sides of a point, each with a leader from it. */
function farSpots(from: Point, width: number, height: number): Spot[] {
  return distances.flatMap((distance) =>
    directions.map(([across, down]): Spot => {
      const to = { x: from.x + across * distance, y: from.y + down * distance };
      const corner = { x: across > 0 ? to.x + 1 : to.x - width - 1, y: to.y - height / 2 };
      return { corner, turned: false, leader: [from, to] };
    }),
  );
}

function between(one: Point, other: Point, share: number): Point {
  return { x: one.x + share * (other.x - one.x), y: one.y + share * (other.y - one.y) };
}
