import { describe, expect, it } from 'vitest';
import type { Job } from '../../../engine/index.ts';
import { shownSchemes } from '../../../server/schemes/compare-job.ts';

const job = (ids: string, chosen: string) =>
  ({
    chosen,
    schemes: ids.split('').map((id) => ({ id, name: id, runs: [] })),
  }) as unknown as Job;

describe('which schemes stand side by side', () => {
  it('is all of them, up to six', () => {
    expect(shownSchemes(job('abc', 'b'), [])).toEqual(['a', 'b', 'c']);
    expect(shownSchemes(job('abcdef', 'a'), [])).toEqual(['a', 'b', 'c', 'd', 'e', 'f']);
  });

  it('is the chosen one and the five newest of more', () => {
    expect(shownSchemes(job('abcdefgh', 'b'), [])).toEqual(['b', 'd', 'e', 'f', 'g', 'h']);
    expect(shownSchemes(job('abcdefgh', 'g'), [])).toEqual(['c', 'd', 'e', 'f', 'g', 'h']);
  });

  it('is those asked for, in the order of the job, six at most; names of none count for nothing', () => {
    expect(shownSchemes(job('abcdefgh', 'b'), ['h', 'a', 'x'])).toEqual(['a', 'h']);
    expect(shownSchemes(job('abcdefgh', 'b'), 'abcdefgh'.split(''))).toHaveLength(6);
    expect(shownSchemes(job('abc', 'b'), ['x'])).toEqual(['a', 'b', 'c']);
  });
});
