import type { Job } from '../../engine/index.ts';
import type { Area } from '../../engine/takeoff/place-of-runs.ts';

/** An area by its name. */
export function areaText({ levels }: Pick<Job, 'levels'>, area: Area): string {
  if (area.area !== 'level') return area.area;
  return levels.find(({ id }) => id === area.level)?.name ?? area.level;
}
