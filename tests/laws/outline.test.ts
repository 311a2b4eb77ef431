import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Job, Run } from '../../engine/job/job.ts';
import { orderRuns } from '../../engine/network/order-runs.ts';
import { chosenScheme, type Edited } from '../../server/edits/edited.ts';
import { addAfter, duplicate, indent, moveDown, moveUp, outdent } from '../../server/edits/tree-edits.ts';
import { cold, fixture, job, run } from '../jobs/written-job.ts';

const basin = fixture('LAV', 'lavatory');

/** Layouts in which every second run without followers ends at an inlet. */
const layouts = fc
  .array(fc.nat({ max: 1_000_000 }), { minLength: 2, maxLength: 24 })
  .map((draws) => draws.map((draw, at) => (at === 0 ? -1 : draw % at)))
  .chain((parents) => {
    const runs = parents.map((parent, at) => {
      const leaf = at % 2 === 1 && !parents.includes(at);
      return run(`R${at}`, parent < 0 ? 'street' : `R${parent}`, leaf ? { end: cold('LAV') } : {});
    });
    return fc.shuffledSubarray(runs, { minLength: runs.length });
  });

function jobOf(runs: readonly Run[]): Job {
  return job([basin], runs);
}

const edits = {
  up: moveUp,
  down: moveDown,
  in: indent,
  out: outdent,
  copy: duplicate,
  after: (one: Job, id: string) => addAfter(one, id, "1/2 PEX 5'"),
} as const satisfies Record<string, (job: Job, id: string) => Edited>;

const steps = fc.array(
  fc.tuple(fc.constantFrom(...(Object.keys(edits) as (keyof typeof edits)[])), fc.nat({ max: 1000 })),
  { maxLength: 12 },
);

/** Names in the order shown. */
function shown(one: Job): string[] {
  const scheme = chosenScheme(one);
  const ordered = orderRuns(scheme);
  if (!ordered.ok) throw new Error(JSON.stringify(ordered.defects));
  return Array.from(ordered.order.indexAt, (index) => scheme.runs[index]!.id);
}

function feeders(one: Job): Map<string, string> {
  return new Map(chosenScheme(one).runs.map(({ id, from }) => [id, from]));
}

describe('edits of the outline', () => {
  it('keep one tree, no name twice, nothing behind an inlet, and the order of the file as shown', async () => {
    await fc.assert(
      fc.property(layouts, steps, (runs, sequence) => {
        let now = jobOf(runs);
        for (const [name, draw] of sequence) {
          const before = chosenScheme(now).runs;
          const edited = edits[name](now, before[draw % before.length]!.id);
          if (!edited.ok) {
            expect(Object.values(edited.problems).join()).toMatch(/^Run R\d+.*\.$/);
            continue;
          }
          now = edited.job;
          const after = chosenScheme(now).runs;
          const names = after.map(({ id }) => id);
          expect(new Set(names).size).toBe(names.length);
          expect(shown(now)).toEqual(names);
          const ends = new Set(after.filter(({ end }) => end !== undefined).map(({ id }) => id));
          expect(after.filter(({ from }) => ends.has(from))).toEqual([]);
          const kept = new Set(names);
          expect(before.every(({ id }) => kept.has(id))).toBe(true);
          if (name !== 'copy' && name !== 'after') expect(after.length).toBe(before.length);
        }
      }),
    );
  });

  it.each([
    ['up', 'down'],
    ['down', 'up'],
    ['in', 'out'],
  ] as const)('%s and then %s changes nothing', async (there, back) => {
    await fc.assert(
      fc.property(layouts, fc.nat({ max: 1000 }), (runs, draw) => {
        const before = jobOf(runs);
        const { id } = runs[draw % runs.length]!;
        const gone = edits[there](before, id);
        if (!gone.ok) return;
        expect(gone.job).not.toEqual(before);
        const returned = edits[back](gone.job, id);
        if (!returned.ok) throw new Error(JSON.stringify(returned.problems));
        expect(shown(returned.job)).toEqual(shown(before));
        expect(feeders(returned.job)).toEqual(feeders(before));
      }),
    );
  });
});
