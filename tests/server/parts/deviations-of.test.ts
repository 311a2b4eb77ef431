import { describe, expect, it } from 'vitest';
import type { Fixture, Job } from '../../../engine/job/job.ts';
import { deviationsOf } from '../../../server/parts/part-list.tsx';
import { markupOf } from '../../../views/part.ts';
import { quantity } from '../../arbitrary/quantity.ts';
import { readSmallJob } from '../small-job.ts';

const lines = (job: Job): string[] =>
  [...markupOf(deviationsOf(job)).matchAll(/<li>(.*?)<\/li>/g)].map(([, text]) => text!);

describe('the list of deviations', () => {
  it('has the choices of a job that departs in nothing', async () => {
    const job = await readSmallJob();
    const bare = { ...job, fixtures: job.fixtures.map(({ flow: _own, ...fixture }): Fixture => fixture) };
    expect(lines(bare)).toEqual([
      'Chosen, for the code leaves it open: a straight line between two rows of the demand table.',
      'Chosen, for the code leaves it open: friction by Hazen-Williams.',
      'Chosen, for the code leaves it open: fittings by equivalent length, by K where no table prints one.',
    ]);
  });

  it('counts the makers’ figures beyond twelve, and still says what is chosen', async () => {
    const job = await readSmallJob();
    const shower = job.fixtures.find(({ id }) => id === 'SH')!;
    const fixtures = Array.from({ length: 15 }, (_, at): Fixture => {
      return { ...shower, id: `SH${at}`, flow: quantity('1.5 gpm', 'flow') };
    });
    const many = { ...job, fixtures };
    expect(lines(many)).toHaveLength(12 + 3);
    expect(lines(many).filter((line) => line.startsWith('Chosen'))).toHaveLength(3);
    expect(markupOf(deviationsOf(many))).toContain('Further figures of makers at fixtures: 3.');
  });
});
