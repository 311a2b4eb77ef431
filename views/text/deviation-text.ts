import type { Deviation } from '../../engine/job/deviations.ts';
import type { UnitSystem } from '../../engine/job/job.ts';
import { materials } from '../../tables/pipe/names.ts';
import type { Cited } from '../../tables/table.ts';
import { figureWithUnit } from './figure.ts';

const choices = {
  interpolate: 'a straight line between two rows of the demand table',
  'round-up': 'the next row up between two rows of the demand table',
  'hazen-williams': 'friction by Hazen-Williams',
  'darcy-weisbach': 'friction by Darcy-Weisbach with Colebrook',
  'equivalent-length': 'fittings by equivalent length, by K where no table prints one',
  'loss-coefficient': 'fittings by K',
} as const;

/** One line of a job's deviations: what it takes, and what its code has in that place. */
export function deviationText(deviation: Deviation, system: UnitSystem): string {
  switch (deviation.what) {
    case 'velocity': {
      const { side, own, profile } = deviation;
      const limits = profile.map(
        ({ material, limit }) =>
          `${figureWithUnit(limit.value, 'velocity', system)} for ${materials[material]}`,
      );
      const instead = limits.length === 0 ? '' : `; the profile has ${limits.join(', ')}`;
      return `Own limit of velocity in ${side} pipe, ${own.typed}${instead}.`;
    }
    case 'fixture-flow':
      return needText(deviation.fixture, 'a flow', deviation.own.typed, deviation.profile, 'flow', system);
    case 'fixture-pressure':
      return needText(
        deviation.fixture,
        'a pressure',
        deviation.own.typed,
        deviation.profile,
        'pressure',
        system,
      );
    case 'elevation-factor':
      return `Pressure by height at ${deviation.own.typed}, in place of density × g.`;
    case 'fitting-allowance':
      return `Fittings as ${deviation.percent} % of the developed length, in place of those drawn.`;
    case 'between-rows':
    case 'friction':
    case 'fittings':
      return `Chosen, for the code leaves it open: ${choices[deviation.own]}.`;
  }
}

function needText(
  fixture: string,
  what: string,
  own: string,
  { value }: Cited,
  shown: 'flow' | 'pressure',
  system: UnitSystem,
): string {
  return `Fixture ${fixture} has ${what} of its own, ${own}; the code has ${figureWithUnit(value, shown, system)}.`;
}
