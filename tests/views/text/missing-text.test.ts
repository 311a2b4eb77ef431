import { describe, expect, it } from 'vitest';
import { missingText } from '../../../views/text/missing-text.ts';
import { readSmallJob } from '../../server/small-job.ts';

describe('what a layout has to know', () => {
  it('is told with the name and the id of the fixture', async () => {
    const job = await readSmallJob();
    expect(missingText({ code: 'fixture-place', fixture: 'SH' }, job)).toBe(
      'Rain shower (SH) has no place on the plan; give x and y, or a length of pipe.',
    );
    expect(missingText({ code: 'fixture-level', fixture: 'gone' }, job)).toContain('gone stands on no level');
  });

  it('is told by the place, and by each defect of the job', async () => {
    const job = await readSmallJob();
    expect(missingText({ code: 'place-level', place: 'mechanicalRoom' }, job)).toContain(
      'The mechanical room',
    );
    const defects = [
      { code: 'fixture-twice', fixture: 'WC' } as const,
      { code: 'level-twice', level: 'L1' } as const,
    ];
    const text = missingText({ code: 'sound-job', defects }, job);
    expect(text).toContain('Two fixtures are called WC');
    expect(text).toContain('Two levels are called L1');
  });
});
