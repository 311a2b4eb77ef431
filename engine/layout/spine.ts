import type { Stretch } from './drawing.ts';
import type { Axis, Point } from './grid.ts';

/** What leaves a straight pipe at one place of its axis. */
export interface Stop {
  readonly at: number;
  readonly behind: readonly Stretch[];
}

/**
 * A straight pipe along one axis with stops, both ways from where it is fed. What stops where it is fed leaves there;
 * the rest is one arm towards each side, from stop to stop. A trunk along a floor, the branch of a group and a riser
 * through the levels are all of this form.
 *
 * @returns what leaves `start`
 */
export function spine(
  start: Point,
  axis: Axis,
  stops: readonly Stop[],
  named: Pick<Stretch, 'name' | 'note'>,
): Stretch[] {
  const used = stops.filter(({ behind }) => behind.length > 0);
  const here = used.filter(({ at }) => at === start[axis]).flatMap(({ behind }) => behind);
  const arm = (side: 1 | -1): Stretch[] => {
    const places = [...new Set(used.map(({ at }) => at))]
      .filter((at) => (at - start[axis]) * side > 0)
      .sort((one, other) => (other - one) * side);
    let beyond: Stretch[] = [];
    for (const at of places) {
      const behind = used.filter((stop) => stop.at === at).flatMap((stop) => stop.behind);
      beyond = [{ ...named, corners: [{ ...start, [axis]: at }], behind: [...behind, ...beyond] }];
    }
    return beyond;
  };
  return [...here, ...arm(1), ...arm(-1)];
}
