import { describe, expect, it } from 'vitest';
import type { Mend } from '../../../engine/checks/finding.ts';
import type { Job } from '../../../engine/job/job.ts';
import { toSI } from '../../../tables/units/definitions.ts';
import { cold, fixture, ft, gpm, job, psi, reportOf, run } from '../../jobs/written-job.ts';
import { findingsOf } from './findings-of.ts';

/** A shower that needs what it is told to, behind a reducing valve without fall-off, on 3 gpm. */
function house(need: number, valve: number, low: number, rise = 0): Job {
  const still = { curve: [{ flow: gpm(100), loss: psi(0) }] };
  return job(
    [fixture('shower', 'shower', { inlets: 'cold', flow: gpm(3), pressure: psi(need) })],
    [
      run('valve', 'street', {
        material: 'copper-l',
        fittings: { 'ball-valve': 1 },
        end: { device: 'reducing-valve', set: psi(valve), ...still },
      }),
      run('end', 'valve', {
        material: 'copper-l',
        length: ft(Math.max(10, rise)),
        rise: ft(rise),
        end: cold('shower'),
      }),
    ],
    { supply: { kind: 'static', elevation: ft(0), low: psi(low), high: psi(100) } },
  );
}

function mendOf(written: Job): Mend | undefined {
  const found = findingsOf('residual-short', written);
  expect(found).toHaveLength(1);
  return found[0]!.mend;
}

describe('what mends a shower that is left with too little', () => {
  it('is a turn of the reducing valve, up to 80 psi at rest, before any pipe', () => {
    const mend = mendOf(house(60, 55, 95));
    expect(mend).toMatchObject({ do: 'raise-setting', run: 'valve', mends: true });
    if (mend?.do !== 'raise-setting') throw new Error('another mend');
    expect(mend.set).toBeCloseTo(toSI(80, 'psi'), 3);
    expect(mend.gain).toBeCloseTo(toSI(25, 'psi'), 3);
    const before = reportOf(house(60, 55, 95)).worst!.margin;
    expect(reportOf(house(60, 80, 95)).worst!.margin - before).toBeCloseTo(mend.gain, 3);
  });

  it('is no valve that already lets 80 psi stand, nor one that the street does not fill', () => {
    expect(mendOf(house(82, 80, 95))?.do).not.toBe('raise-setting');
    expect(mendOf(house(60, 70, 58))?.do).not.toBe('raise-setting');
  });

  it('is more pressure where even pipe without friction would leave it short', () => {
    // 100 ft of height take 43 psi; the street gives 60, the shower needs 30, and friction is a psi or two.
    const mend = mendOf(house(30, 80, 60, 100));
    expect(mend?.do).toBe('raise-pressure');
    const { margin } = reportOf(house(30, 80, 60, 100)).worst!;
    expect(mend?.do === 'raise-pressure' ? mend.by : 0).toBeCloseTo(-margin, 6);
  });
});
