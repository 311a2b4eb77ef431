import type { Network } from '../network/network.ts';

/** How high a storey may be drawn, points: enough for the names of fixtures between its floors, or ample. */
const storeyHeights = [130, 150, 175, 205, 240];
/** What a storey is taken for where the job has fewer than two levels, m. */
const usualStorey = 3;
/** A building of many storeys is drawn no higher than this, points. */
const mostHeight = 1100;

/** Scales that a riser may be drawn to, points per metre of height, the smallest first; at least one. */
export function heightScales({ job, elevation, supply }: Network): readonly [number, ...number[]] {
  const levels = [...new Set(job.levels.map((level) => level.elevation.si))].sort(
    (one, other) => one - other,
  );
  const storeys = levels
    .slice(1)
    .map((level, index) => level - levels[index]!)
    .filter((storey) => storey > 1.5)
    .sort((one, other) => one - other);
  const storey = storeys[Math.floor((storeys.length - 1) / 2)] ?? usualStorey;
  const [least, ...others] = storeyHeights.map((height) => height / storey);
  const heights = [supply.elevation.si, ...levels, ...elevation];
  const top = heights.reduce((one, other) => Math.max(one, other));
  const bottom = heights.reduce((one, other) => Math.min(one, other));
  const most = top > bottom ? mostHeight / (top - bottom) : Infinity;
  return [Math.min(least!, most), ...others.filter((scale) => scale <= most)];
}
