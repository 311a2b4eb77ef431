import { describe, expect, it } from 'vitest';
import type { InletSide, Job, Mend, Run } from '../../engine/index.ts';
import { openExample, reportOf } from './open-example.ts';

const psi = 6894.757293168361;

/** The house with one run changed. */
function withRun(job: Job, id: string, change: (run: Run) => Run): Job {
  const schemes = job.schemes.map((scheme) => ({
    ...scheme,
    runs: scheme.runs.map((run) => (run.id === id ? change(run) : run)),
  }));
  expect(schemes.flatMap(({ runs }) => runs).filter((run) => run.id === id)).toHaveLength(1);
  return { ...job, schemes };
}

/** Does what a mend says. */
function mended(job: Job, mend: Mend): Job {
  switch (mend.do) {
    case 'larger-pipe':
      return withRun(job, mend.run, (run) => ({ ...run, size: mend.size }));
    case 'larger-meter':
      return withRun(job, mend.run, (run) => ({ ...run, end: { device: 'meter', size: mend.size } }));
    default:
      throw new Error(`${mend.do} does not mend a want of pressure`);
  }
}

const residualAt = (job: Job, fixture: string, side: InletSide): number =>
  reportOf(job).inlets.find(({ inlet }) => inlet.fixture.id === fixture && inlet.side === side)!.residual;

describe.each([
  { riser: 'cold riser', run: 'ER', from: '1', to: '3/4', side: 'cold' },
  { riser: 'hot riser', run: 'EHR', from: '3/4', to: '1/2', side: 'hot' },
] as const)('the $riser of the top-floor bath, one size smaller', ({ run, from, to, side }) => {
  const open = async (): Promise<Job> =>
    withRun(await openExample('three-level-house.json'), run, (was) => {
      expect(was.size).toBe(from);
      return { ...was, size: to };
    });

  it('leaves the rain shower short', async () => {
    const result = reportOf(await open());
    expect(result.passes).toBe(false);
    expect(result.worst?.inlet.fixture.id).toBe('RAIN');
    const short = result.findings.flatMap((finding) => (finding.code === 'residual-short' ? [finding] : []));
    expect(short.map(({ fixture, inlet }) => `${fixture} ${inlet}`)).toContain(`RAIN ${side}`);
    expect(short.every(({ residual, required }) => residual < required)).toBe(true);
  });

  it('is mended by the change that the finding names, and gains what it says', async () => {
    const job = await open();
    const finding = reportOf(job).findings.find(
      (one) => one.code === 'residual-short' && one.fixture === 'RAIN' && one.inlet === side,
    );
    const mend = finding?.mend;
    if (mend === undefined || !('gain' in mend)) throw new Error('the finding names no change with a gain');
    expect(mend.mends).toBe(true);
    const gain = residualAt(mended(job, mend), 'RAIN', side) - residualAt(job, 'RAIN', side);
    expect(Math.abs(gain - mend.gain) / psi).toBeLessThanOrEqual(1e-6);
    expect(reportOf(mended(job, mend)).findings.filter(({ code }) => code === 'residual-short')).toEqual([]);
  });
});
