import { lookUp } from '../../tables/look-up.ts';
import type { MaterialId } from '../../tables/pipe/names.ts';
import { profiles } from '../../tables/profiles.ts';
import type { Cited } from '../../tables/table.ts';
import { requiredFlow, requiredPressure } from '../demand/fixture-needs.ts';
import type { Fixture, InletSide, Job, Quantity } from './job.ts';

/** One thing that a job settles for itself: in place of its profile's value, or where its code leaves it open. */
export type Deviation =
  /** The job's own limit of velocity, m/s, in place of the profile's for each material that its layouts use. */
  | {
      readonly what: 'velocity';
      readonly side: InletSide;
      readonly own: Quantity;
      readonly profile: readonly { readonly material: MaterialId; readonly limit: Cited }[];
    }
  /** What the maker of a fixture asks for in place of the code's table; flow m3/s, pressure Pa. */
  | {
      readonly what: 'fixture-flow' | 'fixture-pressure';
      readonly fixture: string;
      readonly own: Quantity;
      readonly profile: Cited;
    }
  /** A rounded factor of height in place of density x g, Pa/m. */
  | { readonly what: 'elevation-factor'; readonly own: Quantity }
  /** Percent of developed length in place of the fittings drawn. */
  | { readonly what: 'fitting-allowance'; readonly percent: number }
  /** What no code of a profile settles. */
  | { readonly what: 'between-rows'; readonly own: 'interpolate' | 'round-up' }
  | { readonly what: 'friction'; readonly own: 'hazen-williams' | 'darcy-weisbach' }
  | { readonly what: 'fittings'; readonly own: 'equivalent-length' | 'loss-coefficient' };

/**
 * Where a job departs from its profile and what it chooses where the profile leaves it open, in one list: its own
 * limits of velocity, its factor of height, its allowance for fittings, what makers ask for, then the three choices.
 */
export function deviations(job: Job): Deviation[] {
  const { basis } = job;
  const { elevationFactor, fittingAllowancePercent: percent } = basis;
  return [
    ...velocityLimits(job, 'cold', basis.velocityCold),
    ...velocityLimits(job, 'hot', basis.velocityHot),
    ...(elevationFactor === undefined ? [] : [{ what: 'elevation-factor', own: elevationFactor } as const]),
    ...(percent === undefined ? [] : [{ what: 'fitting-allowance', percent } as const]),
    ...job.fixtures.flatMap((fixture) => makersNeeds(job, fixture)),
    { what: 'between-rows', own: basis.between },
    { what: 'friction', own: basis.friction },
    ...(percent === undefined
      ? [{ what: 'fittings', own: basis.fittings ?? 'equivalent-length' } as const]
      : []),
  ];
}

/** Whether it is a choice that no code makes, and not a departure from one. */
export function isChoice({ what }: Deviation): boolean {
  return what === 'between-rows' || what === 'friction' || what === 'fittings';
}

function velocityLimits(job: Job, side: InletSide, own: Quantity | undefined): Deviation[] {
  if (own === undefined) return [];
  const table = profiles[job.basis.profile].velocityLimits;
  const used = new Set(job.schemes.flatMap(({ runs }) => runs.map(({ material }) => material)));
  const profile = [...used].map((material) => ({ material, limit: lookUp(table, material, side) }));
  return [{ what: 'velocity', side, own, profile }];
}

/** What a maker asks for beside the code's figure; nothing where the two are one. */
function makersNeeds(job: Job, fixture: Fixture): Deviation[] {
  const profile = profiles[job.basis.profile];
  const { id, kind, use, count, inlets, flow, pressure } = fixture;
  const bare = { id, name: fixture.name, kind, use, count, ...(inlets === undefined ? {} : { inlets }) };
  const apart = (
    what: 'fixture-flow' | 'fixture-pressure',
    own: Quantity | undefined,
    code: { readonly value: number; readonly from: Cited | 'maker' },
  ): Deviation[] =>
    own === undefined || code.from === 'maker' || Math.abs(own.si - code.value) <= 1e-9 * code.value
      ? []
      : [{ what, fixture: id, own, profile: code.from }];
  return [
    ...apart('fixture-flow', flow, requiredFlow(profile, bare)),
    ...apart('fixture-pressure', pressure, requiredPressure(profile, bare)),
  ];
}
