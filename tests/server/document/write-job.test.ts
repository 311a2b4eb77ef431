import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildNetwork } from '../../../engine/network/build-network.ts';
import { readJob } from '../../../server/document/read-job.ts';
import { writeJob } from '../../../server/document/write-job.ts';
import { arbitraryJob } from '../../arbitrary/job.ts';
import { smallJob } from './small-job.ts';

describe('writeJob', () => {
  it('gives back the same job when it is read', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryJob, async (job) => {
        expect(await readJob(writeJob(job))).toEqual({ ok: true, job });
      }),
      { numRuns: 150 },
    );
  });

  it('writes the same text whatever order the fields of the job stand in', () => {
    const turned = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(turned);
      if (typeof value !== 'object' || value === null) return value;
      return Object.fromEntries(
        Object.entries(value)
          .reverse()
          .map(([key, inner]) => [key, turned(inner)]),
      );
    };
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        expect(writeJob(turned(job) as typeof job)).toBe(writeJob(job));
      }),
      { numRuns: 50 },
    );
  });

  it('puts each run on one line, in trade words where these say all', async () => {
    const read = await readJob(JSON.stringify(smallJob));
    if (!read.ok) throw new Error(read.problems.join('\n'));
    const lines = writeJob(read.job).split('\n');
    expect(lines).toContain(
      `        { "id": "S1", "from": "street", "line": "1 PE 60' down 4' 1 corp stop then meter 3/4", "note": "by the city" },`,
    );
    expect(lines).toContain(
      `        { "id": "S2", "from": "S1", "size": "3/4", "material": "copper-l", "length": "6 ft", "fittings": [{ "kind": "ball-valve", "count": 1 }], "end": { "device": "filter", "curve": [{ "flow": "5 gpm", "loss": "1 psi" }, { "flow": "10 gpm", "loss": "4 psi" }] } },`,
    );
    expect(lines.at(-1)).toBe('');
  });
});

describe('the arbitrary job', () => {
  it('makes a tree', () => {
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        for (const { id } of job.schemes) {
          const built = buildNetwork(job, id);
          expect(built.ok ? [] : built.defects).toEqual([]);
        }
      }),
      { numRuns: 100 },
    );
  });
});
