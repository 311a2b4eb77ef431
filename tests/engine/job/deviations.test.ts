import { describe, expect, it } from 'vitest';
import { deviations } from '../../../engine/job/deviations.ts';
import type { Job } from '../../../engine/job/job.ts';
import { deviationText } from '../../../views/text/deviation-text.ts';
import { openExample } from '../../examples/open-example.ts';

const house = await openExample('three-level-house.json');
const basis = { ...house.basis };
delete (basis as { fittingAllowancePercent?: number }).fittingAllowancePercent;
const plain: Job = {
  ...house,
  basis: {
    profile: basis.profile,
    between: 'interpolate',
    friction: 'hazen-williams',
    coldTemperature: basis.coldTemperature,
    hotTemperature: basis.hotTemperature,
  },
  fixtures: house.fixtures.map(({ flow: _flow, pressure: _pressure, ...fixture }) => fixture),
};
const whats = (job: Job): string[] => deviations(job).map(({ what }) => what);

describe('deviations', () => {
  it('of a job that takes its profile as it is are the three choices that no code makes', () => {
    expect(whats(plain)).toEqual(['between-rows', 'friction', 'fittings']);
  });

  it('name each value of its own', () => {
    const own = {
      ...plain,
      basis: {
        ...plain.basis,
        velocityCold: { typed: '2 m/s', si: 2 },
        elevationFactor: { typed: '0.433 psi/ft', si: 9794.6 },
        fittingAllowancePercent: 50,
      },
    };
    expect(whats(own)).toEqual([
      'velocity',
      'elevation-factor',
      'fitting-allowance',
      'between-rows',
      'friction',
    ]);
  });

  /** The NSPC holds all but hot copper to 8 ft/s, 2.4384 m/s. */
  it('set the own limit of velocity beside the profile’s for each material piped', () => {
    const [velocity] = deviations({
      ...plain,
      basis: { ...plain.basis, velocityCold: { typed: '2 m/s', si: 2 } },
    });
    if (velocity?.what !== 'velocity') throw new Error('no velocity');
    expect(velocity.profile.length).toBeGreaterThan(0);
    for (const { limit } of velocity.profile) expect(limit.value).toBeCloseTo(2.4384, 9);
    expect(deviationText(velocity, 'us')).toContain('2 m/s; the profile has 8.0 ft/s for');
  });

  it('name what a maker asks for where it is not what the code has', () => {
    const [first, ...others] = plain.fixtures;
    const psi = 6894.757293168361;
    const asking = {
      ...plain,
      fixtures: [{ ...first!, pressure: { typed: '45 psi', si: 45 * psi } }, ...others],
    };
    expect(deviations(asking)[0]).toMatchObject({ what: 'fixture-pressure', fixture: first!.id });
  });
});
