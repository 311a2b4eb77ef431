import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writeJob } from '../../../server/document/write-job.ts';
import { arbitraryHouse } from '../../arbitrary/house.ts';
import { arbitraryJob } from '../../arbitrary/job.ts';
import { testApp } from '../test-app.ts';

const pages = ['', '/pictures', '/compare', '/sizing', '/takeoff', '/takeoff.csv', '/sheet', '/file'];

describe('any job that can be read', () => {
  it('has an answer on every page that is no fault of ours', async () => {
    await fc.assert(
      fc.asyncProperty(fc.oneof(arbitraryJob, arbitraryHouse), async (made) => {
        const { app, id } = await testApp(writeJob(made));
        for (const page of pages) {
          const answer = await app.inject(`/jobs/${id}${page}`);
          expect(answer.statusCode, `${page}: ${answer.body.slice(0, 300)}`).toBeLessThan(500);
          expect(answer.body, page).not.toMatch(/\bNaN\b|\bInfinity\b/);
        }
      }),
      { numRuns: 25 },
    );
  });
});
