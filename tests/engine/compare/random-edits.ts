import * as fc from 'fast-check';
import type { Job, Run } from '../../../engine/job/job.ts';
import { cold, fixture, ft, hot, job, psi, run } from '../../jobs/written-job.ts';

/** An invented flat: two sinks with hot and cold, a hose bibb, and branches to add to. */
export const flat: Job = job(
  [
    fixture('SINK', 'kitchen-sink', { level: 'L1' }),
    fixture('BASIN', 'lavatory', { level: 'L1', group: 'G1' }),
    fixture('HOSE', 'hose-bibb'),
  ],
  [
    run('SV', 'street'),
    run('C', 'SV', { size: '3/4' }),
    run('C1', 'C', { size: '1/2', end: cold('SINK'), fittings: { ell: 2 } }),
    run('C2', 'C', { size: '1/2', end: cold('BASIN'), rise: ft(4) }),
    run('HB', 'C', { size: '3/4', end: cold('HOSE') }),
    run('WH', 'SV', { end: { device: 'heater', type: 'storage' } }),
    run('H1', 'WH', { size: '1/2', end: hot('SINK') }),
    run('H2', 'WH', { size: '1/2', end: hot('BASIN'), rise: ft(4) }),
  ],
  {
    levels: [{ id: 'L1', name: 'Ground floor', elevation: ft(0) }],
    groups: [{ id: 'G1', name: 'Bath', kind: 'half-bath' }],
  },
);

/** One edit of the flat, and the place that it touches: edits of different places cannot clash. */
export interface Edit {
  readonly place: string;
  readonly apply: (job: Job) => Job;
}

function onRuns(change: (runs: readonly Run[]) => readonly Run[]): Edit['apply'] {
  return (before) => ({
    ...before,
    schemes: before.schemes.map((scheme) => ({ ...scheme, runs: change(scheme.runs) })),
  });
}

const onRun = (id: string, fields: Partial<Run>) =>
  onRuns((runs) => runs.map((one) => (one.id === id ? { ...one, ...fields } : one)));

const runId = fc.constantFrom('SV', 'C', 'C1', 'C2', 'HB', 'WH', 'H1', 'H2');
const sizes = fc.constantFrom('1/2', '3/4', '1', '1-1/4');

/** Edits of one field, additions and removals, all of which leave a tree. */
export const edits: fc.Arbitrary<Edit> = fc.oneof(
  fc.tuple(runId, sizes).map(([id, size]) => ({ place: `${id}.size`, apply: onRun(id, { size }) })),
  fc
    .tuple(runId, fc.integer({ min: 5, max: 60 }))
    .map(([id, length]) => ({ place: `${id}.length`, apply: onRun(id, { length: ft(length) }) })),
  fc.tuple(runId, fc.integer({ min: 0, max: 4 })).map(([id, count]) => ({
    place: `${id}.fittings`,
    apply: onRun(id, { fittings: count === 0 ? [] : [{ kind: 'ell', count }] }),
  })),
  fc
    .tuple(runId, fc.string({ minLength: 1 }))
    .map(([id, note]) => ({ place: `${id}.note`, apply: onRun(id, { note }) })),
  fc.constantFrom('SV', 'C', 'WH').chain((from) =>
    fc.constantFrom('N1', 'N2', 'N3').map((id) => ({
      place: id,
      // Behind the run that it comes from, as the workbench puts it.
      apply: onRuns((runs) => {
        const at = runs.findIndex((one) => one.id === from) + 1;
        return [...runs.slice(0, at), run(id, from), ...runs.slice(at)];
      }),
    })),
  ),
  fc.constant<Edit>({
    place: 'HOSE',
    apply: (before) => ({
      ...onRuns((runs) => runs.filter(({ id }) => id !== 'HB'))(before),
      fixtures: before.fixtures.filter(({ id }) => id !== 'HOSE'),
    }),
  }),
  fc.constantFrom('SINK', 'BASIN').chain((id) =>
    fc.string({ minLength: 1 }).map((name) => ({
      place: `${id}.name`,
      apply: (before: Job) => ({
        ...before,
        fixtures: before.fixtures.map((one) => (one.id === id ? { ...one, name } : one)),
      }),
    })),
  ),
  fc.constantFrom('hazen-williams' as const, 'darcy-weisbach' as const).map((friction) => ({
    place: 'basis.friction',
    apply: (before: Job) => ({ ...before, basis: { ...before.basis, friction } }),
  })),
  fc.integer({ min: 40, max: 60 }).map((low) => ({
    place: 'supply.low',
    apply: (before: Job) =>
      before.supply.kind === 'static' ? { ...before, supply: { ...before.supply, low: psi(low) } } : before,
  })),
  fc.integer({ min: -5, max: 20 }).map((floor) => ({
    place: 'L1.elevation',
    apply: (before: Job) => ({
      ...before,
      levels: before.levels.map((level) => ({ ...level, elevation: ft(floor) })),
    }),
  })),
  fc
    .string({ minLength: 1 })
    .map((name) => ({ place: 'name', apply: (before: Job) => ({ ...before, name }) })),
);

/** The removed hose bibb takes its run along: edits of that run touch the same place. */
export function placesOf(list: readonly Edit[]): ReadonlySet<string> {
  return new Set(list.map(({ place }) => (place.startsWith('HB.') ? 'HOSE' : place)));
}

export function applyAll(before: Job, list: readonly Edit[]): Job {
  return list.reduce((changed, edit) => edit.apply(changed), before);
}
