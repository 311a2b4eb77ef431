import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type JobChange, jobChanges } from '../../../engine/compare/job-changes.ts';
import { sameValue } from '../../../engine/compare/things.ts';
import type { Job, Run } from '../../../engine/job/job.ts';
import { cold, ft, psi, run } from '../../jobs/written-job.ts';
import { applyAll, edits, flat } from './random-edits.ts';

function withRuns(change: (runs: readonly Run[]) => readonly Run[]): Job {
  return { ...flat, schemes: flat.schemes.map((scheme) => ({ ...scheme, runs: change(scheme.runs) })) };
}

function withRun(id: string, fields: Partial<Run>): Job {
  return withRuns((runs) => runs.map((one) => (one.id === id ? { ...one, ...fields } : one)));
}

const runs = ['schemes', 'only', 'runs'];

describe('the changes from one document to another', () => {
  it('names each changed field of a run as it was typed', () => {
    const after = withRun('C2', {
      size: '3/4',
      length: ft(12),
      fittings: [
        { kind: 'ell', count: 2 },
        { kind: 'tee-branch', count: 1 },
      ],
      end: { device: 'filter', curve: [{ flow: ft(1), loss: psi(2) }] },
      note: 'behind the wall',
    });
    const subject = { way: [...runs, 'C2'], list: 'runs' };
    expect(jobChanges(flat, after)).toEqual([
      { change: 'field', subject, field: 'size', before: '1/2', after: '3/4' },
      { change: 'field', subject, field: 'length', before: '10 ft', after: '12 ft' },
      { change: 'field', subject, field: 'fittings', before: 'none', after: '2 ells 1 tee' },
      {
        change: 'field',
        subject,
        field: 'end',
        before: 'to BASIN cold',
        after: 'then filter, which loses 2 psi at 1 ft',
      },
      { change: 'field', subject, field: 'note', after: 'behind the wall' },
    ]);
  });

  it('names what came, what went and what only moved', () => {
    const added = withRuns((list) => [...list, run('N', 'C', { size: '1/2' })]);
    expect(jobChanges(flat, added)).toEqual([
      { change: 'added', subject: { way: [...runs, 'N'], list: 'runs' }, words: '1/2 PEX 10 ft' },
    ]);
    expect(jobChanges(added, flat)).toEqual([
      { change: 'removed', subject: { way: [...runs, 'N'], list: 'runs' }, words: '1/2 PEX 10 ft' },
    ]);
    const moved = withRuns(([service, ...others]) => [...others, service!]);
    expect(jobChanges(flat, moved)).toEqual([
      { change: 'moved', subject: { way: [...runs, 'SV'], list: 'runs' } },
    ]);
    const turned = withRuns((list) => [...list].reverse());
    expect(jobChanges(flat, turned)).toEqual([{ change: 'reordered', subject: { way: runs } }]);
  });

  it('takes another id for a rename, and what follows it for no change', () => {
    const after = withRuns((list) =>
      list.map((one) =>
        one.id === 'C' ? { ...one, id: 'COLD' } : one.from === 'C' ? { ...one, from: 'COLD' } : one,
      ),
    );
    expect(jobChanges(flat, after)).toEqual([
      { change: 'renamed', subject: { way: [...runs, 'COLD'], list: 'runs' }, from: 'C' },
    ]);
    const fixtures = flat.fixtures.map((one) => (one.id === 'HOSE' ? { ...one, id: 'BIB' } : one));
    const bib = { ...withRun('HB', { end: cold('BIB') }), fixtures };
    expect(jobChanges(flat, bib)).toEqual([
      {
        change: 'renamed',
        subject: { way: ['fixtures', 'BIB'], list: 'fixtures', name: 'HOSE' },
        from: 'HOSE',
      },
    ]);
  });

  it('names sections, levels, groups, fixtures, schemes and the job itself', () => {
    const after: Job = {
      ...flat,
      name: 'Another',
      basis: { ...flat.basis, friction: 'darcy-weisbach', velocityHot: ft(5) },
      levels: [{ id: 'L1', name: 'Basement', elevation: ft(-8) }],
      groups: [],
      fixtures: flat.fixtures.map((one) => ({ ...one, group: 'G1' })),
      schemes: [...flat.schemes, { id: 'S2', name: 'Zones', runs: [] }],
    };
    const told = jobChanges(flat, after).map(({ change, subject }) => [change, subject.way.join('/')]);
    expect(told).toEqual([
      ['field', ''],
      ['field', 'basis'],
      ['field', 'basis'],
      ['field', 'levels/L1'],
      ['field', 'levels/L1'],
      ['removed', 'groups/G1'],
      ['field', 'fixtures/SINK'],
      ['field', 'fixtures/HOSE'],
      ['added', 'schemes/S2'],
    ]);
  });

  it('is empty where the documents are the same, and only there, whatever a later release adds', async () => {
    const later = fc.dictionary(fc.string(), fc.jsonValue());
    const jobs = fc
      .tuple(fc.array(edits, { maxLength: 3 }), later, fc.option(fc.tuple(fc.constantFrom('C', 'H1'), later)))
      .map(([list, extra, onRun]): Job => {
        const changed = applyAll(flat, list);
        const schemes = changed.schemes.map((scheme) => ({
          ...scheme,
          runs: scheme.runs.map((one) => (one.id === onRun?.[0] ? { ...onRun[1], ...one } : one)),
        }));
        return { ...extra, ...changed, schemes };
      });
    await fc.assert(
      fc.property(jobs, jobs, (one, other) => {
        const changes: readonly JobChange[] = jobChanges(one, other);
        expect(changes.length === 0).toBe(sameValue(one, other));
        expect(jobChanges(one, structuredClone(one))).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });
});
