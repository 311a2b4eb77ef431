import type { UnitSystem } from '../../engine/job/job.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { gridStep } from './grid-step.ts';
import type { Span } from './plot-scale.ts';

/** A corner of a drawn line: pressure in Pa, cost in cents. */
export interface Corner {
  readonly pressure: number;
  readonly cents: number;
}

/** One line of a plot of cost against pressure, pressure rising, and where the layout stands as drawn. */
export interface CostLine {
  readonly letter: string;
  readonly name: string;
  readonly strong: boolean;
  readonly corners: readonly Corner[];
  readonly drawn: Corner | undefined;
}

/** The steps of a least cost that holds up to each point's pressure: spare pressure, cost and spare rising. */
export function stepsUpTo(points: readonly { cents: number; spare: number }[], from: number): Corner[] {
  return points.flatMap(({ cents, spare }, at) => [
    { pressure: at === 0 ? Math.min(from, spare) : points[at - 1]!.spare, cents },
    { pressure: spare, cents },
  ]);
}

/** The steps of a least cost that holds from each point's pressure on: pressure at the street, the need falling. */
export function stepsFrom(points: readonly { cents: number; need: number }[], to: number): Corner[] {
  return points
    .flatMap(({ cents, need }, at) => [
      { pressure: at === 0 ? Math.max(to, need) : points[at - 1]!.need, cents },
      { pressure: need, cents },
    ])
    .reverse();
}

/** The part of a stepped line between two pressures, cut where it crosses them. */
export function inSight(corners: readonly Corner[], { least, most }: Span): readonly Corner[] {
  const inside = corners.filter(({ pressure }) => pressure >= least && pressure <= most);
  const before = corners.findLast(({ pressure }) => pressure < least);
  const behind = corners.find(({ pressure }) => pressure > most);
  if (inside.length === 0 && (before === undefined || behind === undefined)) return [];
  return [
    ...(before === undefined ? [] : [{ pressure: least, cents: before.cents }]),
    ...inside,
    ...(behind === undefined ? [] : [{ pressure: most, cents: behind.cents }]),
  ];
}

/** Least cost where `spare` has to be left, cents; undefined where no sizes leave so much. */
export function leastCostAt(
  points: readonly { cents: number; spare: number }[],
  spare: number,
): number | undefined {
  return points.find((point) => point.spare >= spare)?.cents;
}

const wide = toSI(10, 'psi');
const margin = toSI(2, 'psi');

/**
 * The pressures that a plot shows: all that is drawn and, if that is near, where the curves begin, with room beside;
 * of a curve that goes far beyond, only the beginning.
 */
export function shownSpan(
  drawn: readonly number[],
  starts: readonly number[],
  ends: readonly number[],
): Span {
  const near = [0, ...drawn, ...starts.map((value) => Math.max(-3 * wide, Math.min(3 * wide, value)))];
  const least = Math.min(...near) - margin;
  const reach = Math.max(wide, ...near) + margin;
  return { least, most: Math.max(Math.min(reach, Math.max(...ends, 0) + margin), least + 2 * margin) };
}

/** Round pressures over a span, a table's rows: about `count`. */
export function roundPressures({ least, most }: Span, system: UnitSystem, count: number): number[] {
  const unit = toSI(1, displayUnits[system].pressure.unit);
  const step = Math.max(1, gridStep((most - least) / unit, count));
  const rows: number[] = [];
  for (let row = Math.ceil(least / unit / step); row * step * unit <= most; row++)
    rows.push(row * step * unit);
  return rows;
}
