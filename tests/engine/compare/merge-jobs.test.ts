import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mergeJobs } from '../../../engine/compare/merge-jobs.ts';
import type { Job, Run } from '../../../engine/job/job.ts';
import { buildNetwork } from '../../../engine/network/build-network.ts';
import { cold, fixture, ft, psi, run } from '../../jobs/written-job.ts';
import { applyAll, type Edit, edits, flat, placesOf } from './random-edits.ts';

function withRuns(change: (runs: readonly Run[]) => readonly Run[], before: Job = flat): Job {
  return { ...before, schemes: before.schemes.map((scheme) => ({ ...scheme, runs: change(scheme.runs) })) };
}

function withRun(id: string, fields: Partial<Run>): Job {
  return withRuns((runs) => runs.map((one) => (one.id === id ? { ...one, ...fields } : one)));
}

function merged(mine: Job, theirs: Job): Job {
  const result = mergeJobs(flat, mine, theirs);
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result.job;
}

function runsOf(job: Job): readonly Run[] {
  return job.schemes[0]!.runs;
}

function runOf(job: Job, id: string): Run {
  return runsOf(job).find((one) => one.id === id)!;
}

/** Lists without their order: what two people add in the same place may stand either way round. */
function unordered(job: Job): Job {
  const sorted = <T extends { readonly id: string }>(list: readonly T[]) =>
    [...list].sort((one, other) => (one.id < other.id ? -1 : 1));
  return {
    ...job,
    fixtures: sorted(job.fixtures),
    schemes: job.schemes.map((scheme) => ({ ...scheme, runs: sorted(scheme.runs) })),
  };
}

describe('two changes of one document', () => {
  it('join where they are of different runs, or of different fields of one run', () => {
    const both = merged(withRun('C', { size: '1' }), withRun('C2', { length: ft(30) }));
    expect([runOf(both, 'C').size, runOf(both, 'C2').length.typed]).toEqual(['1', '30 ft']);
    const one = merged(withRun('C', { size: '1' }), withRun('C', { length: ft(30) }));
    expect([runOf(one, 'C').size, runOf(one, 'C').length.typed]).toEqual(['1', '30 ft']);
  });

  it('join where one adds a fixture and the other a run', () => {
    const withFixture: Job = {
      ...withRuns((runs) => [...runs, run('TUBC', 'C', { end: cold('TUB') })]),
      fixtures: [...flat.fixtures, fixture('TUB', 'hose-bibb')],
    };
    const both = merged(
      withFixture,
      withRuns((runs) => [...runs, run('N1', 'C')]),
    );
    expect(both.fixtures.map(({ id }) => id)).toEqual(['SINK', 'BASIN', 'HOSE', 'TUB']);
    expect(runsOf(both).map(({ id }) => id)).toEqual([...runsOf(flat).map(({ id }) => id), 'TUBC', 'N1']);
  });

  it('give what both added under one id two ids, and say so', () => {
    const mine = withRuns((runs) => [...runs, run('R1', 'C'), run('R2', 'R1')]);
    const theirs = withRuns((runs) => [...runs, run('R1', 'WH')]);
    const result = mergeJobs(flat, mine, theirs);
    expect(result).toMatchObject({
      ok: true,
      renames: [{ list: ['schemes', 'only', 'runs'], from: 'R1', to: 'R3' }],
    });
    if (!result.ok) return;
    const added = runsOf(result.job).filter(({ id }) => id.startsWith('R'));
    expect(added.map(({ id, from }) => `${id} from ${from}`).sort()).toEqual([
      'R1 from WH',
      'R2 from R3',
      'R3 from C',
    ]);
  });

  it('clash where both set one field, and each side is told', () => {
    const result = mergeJobs(flat, withRun('C', { size: '1' }), withRun('C', { size: '1-1/4' }));
    const subject = { way: ['schemes', 'only', 'runs', 'C'], list: 'runs' };
    expect(result).toEqual({
      ok: false,
      defects: [],
      clashes: [
        {
          mine: [{ change: 'field', subject, field: 'size', before: '3/4', after: '1' }],
          theirs: [{ change: 'field', subject, field: 'size', before: '3/4', after: '1-1/4' }],
        },
      ],
    });
  });

  it('clash where one takes out what the other changes', () => {
    const without = withRuns((runs) => runs.filter(({ id }) => id !== 'C1'));
    const result = mergeJobs(flat, without, withRun('C1', { size: '3/4' }));
    expect(result.ok).toBe(false);
    if (result.ok) return;
    expect(result.clashes.map(({ mine, theirs }) => [mine[0]?.change, theirs[0]?.change])).toEqual([
      ['removed', 'field'],
    ]);
  });

  it('clash as a whole where a supply becomes one of another kind', () => {
    const well: Job = {
      ...flat,
      supply: { kind: 'well', elevation: ft(0), cutIn: psi(40), cutOut: psi(60) },
    };
    const lower: Job = { ...flat, supply: { kind: 'static', elevation: ft(0), low: psi(50), high: psi(60) } };
    const result = mergeJobs(flat, well, lower);
    expect(result.ok).toBe(false);
    if (result.ok) return;
    expect(result.clashes).toHaveLength(1);
  });

  it('is refused with reasons where the two together make no tree', () => {
    const without = withRuns((runs) =>
      runs.filter(({ id }) => id !== 'C').map((one) => (one.from === 'C' ? { ...one, from: 'SV' } : one)),
    );
    const under = withRuns((runs) => [...runs, run('N1', 'C')]);
    expect(mergeJobs(flat, without, under)).toEqual({
      ok: false,
      clashes: [],
      defects: [{ code: 'parent-missing', run: 'N1', from: 'C' }],
    });
  });

  it('keep the order of whoever moved things', () => {
    const [first, ...others] = runsOf(flat);
    const moved = withRuns(() => [...others, first!]);
    const added = withRuns((runs) => runs.flatMap((one) => (one.id === 'C' ? [one, run('N1', 'C')] : [one])));
    const expected = ['C', 'N1', 'C1', 'C2', 'HB', 'WH', 'H1', 'H2', 'SV'];
    expect(runsOf(merged(moved, added)).map(({ id }) => id)).toEqual(expected);
    expect(runsOf(merged(added, moved)).map(({ id }) => id)).toEqual(expected);
  });
});

describe('the laws of merging', () => {
  const lists = fc.array(edits, { maxLength: 5 });

  it('gives a change back where the other side changed nothing or the same', async () => {
    await fc.assert(
      fc.property(lists, (list) => {
        const mine = applyAll(flat, once(list));
        expect(merged(mine, flat)).toEqual(mine);
        expect(merged(flat, mine)).toEqual(mine);
        expect(merged(mine, structuredClone(mine))).toEqual(mine);
      }),
    );
  });

  it('joins changes of different places to what one after the other gives, either way round', async () => {
    await fc.assert(
      fc.property(lists, lists, (one, other) => {
        const mine = once(one);
        const places = placesOf(mine);
        const theirs = once(other).filter((edit) =>
          [...placesOf([edit])].every((place) => !places.has(place)),
        );
        const expected = unordered(applyAll(applyAll(flat, mine), theirs));
        expect(unordered(merged(applyAll(flat, mine), applyAll(flat, theirs)))).toEqual(expected);
        expect(unordered(merged(applyAll(flat, theirs), applyAll(flat, mine)))).toEqual(expected);
      }),
      { numRuns: 300 },
    );
  });

  it('invents nothing, drops nothing that no side took out, and makes a tree or says why not', async () => {
    await fc.assert(
      fc.property(lists, lists, (one, other) => {
        const mine = applyAll(flat, once(one));
        const theirs = applyAll(flat, once(other));
        const result = mergeJobs(flat, mine, theirs);
        if (!result.ok) {
          expect(result.clashes.length + result.defects.length).toBeGreaterThan(0);
          return;
        }
        expect(buildNetwork(result.job).ok).toBe(true);
        const ids = (job: Job) => [...runsOf(job), ...job.fixtures].map(({ id }) => id);
        const had = new Set(ids(flat));
        const given = new Map(result.renames.map(({ from, to }) => [from, to]));
        const added = (job: Job) => ids(job).filter((id) => !had.has(id));
        const kept = [...had].filter((id) => ids(mine).includes(id) && ids(theirs).includes(id));
        const expected = [...kept, ...added(mine).map((id) => given.get(id) ?? id), ...added(theirs)];
        expect([...ids(result.job)].sort()).toEqual([...new Set(expected)].sort());
      }),
      { numRuns: 300 },
    );
  });
});

/** The first edit of each place: a second run of one name would be a defect of the test. */
function once(list: readonly Edit[]): readonly Edit[] {
  const places = list.map((edit) => [...placesOf([edit])].join());
  return list.filter((_edit, index) => places.indexOf(places[index]!) === index);
}
