import { describe, expect, it } from 'vitest';
import type { Migration } from '../../../server/document/migrate.ts';
import { migrate, migrations } from '../../../server/document/migrate.ts';
import { jobVersion } from '../../../server/document/schema.ts';

const planted: readonly Migration[] = [
  { from: 2, up: (job) => ({ ...job, second: true }) },
  { from: 1, up: ({ first: _, ...job }) => ({ ...job, one: 1 }) },
];

describe('migrate', () => {
  it('goes from version to version and sets the number', () => {
    expect(migrate({ version: 1, first: 0 }, 3, planted)).toEqual({
      ok: true,
      job: { version: 3, one: 1, second: true },
    });
    expect(migrate({ version: 2, first: 0 }, 3, planted)).toEqual({
      ok: true,
      job: { version: 3, first: 0, second: true },
    });
    expect(migrate({ version: 3, first: 0 }, 3, planted)).toEqual({
      ok: true,
      job: { version: 3, first: 0 },
    });
  });

  it('refuses a version before the first, after the last and in a gap', () => {
    expect(migrate({ version: 0 }, 3, planted)).toEqual({
      ok: false,
      problem: 'version: 0 came; expected a whole number from 1 to 3',
    });
    expect(migrate({ version: 4 }, 3, planted)).toMatchObject({ ok: false });
    expect(migrate({ version: 1 }, 3, [planted[1]!])).toMatchObject({ ok: false });
  });

  it('knows how to read every version since the first', () => {
    for (let version = 1; version < jobVersion; version++) {
      expect(migrations.filter(({ from }) => from === version)).toHaveLength(1);
    }
    expect(migrations).toHaveLength(jobVersion - 1);
  });
});
