import type { Job, Run } from '../job/job.ts';
import { sameValue, type Way } from './things.ts';

/** A thing under another id. `list` is the way to its list: `['fixtures']`, `['schemes', 'S1', 'runs']`. */
export interface Rename {
  readonly list: Way;
  readonly from: string;
  readonly to: string;
  /** What a fixture is called. */
  readonly name?: string | undefined;
}

/** Runs and fixtures that differ from one that is gone by their id alone, and from no other. */
export function findRenames(before: Job, after: Job): readonly Rename[] {
  const fixtures = renamesOf(['fixtures'], before.fixtures, after.fixtures);
  const runs = after.schemes.flatMap((scheme) => {
    const was = before.schemes.find(({ id }) => id === scheme.id)?.runs ?? [];
    return renamesOf(['schemes', scheme.id, 'runs'], was, scheme.runs);
  });
  return [...fixtures, ...runs];
}

function renamesOf<T extends { readonly id: string; readonly name?: string }>(
  list: Way,
  before: readonly T[],
  after: readonly T[],
): readonly Rename[] {
  if (before === after) return [];
  const was = new Set(before.map(({ id }) => id));
  const is = new Set(after.map(({ id }) => id));
  const gone = before.filter(({ id }) => !is.has(id));
  const come = gone.length === 0 ? [] : after.filter(({ id }) => !was.has(id));
  const alike = (one: T, others: readonly T[]) =>
    others.filter((other) => sameValue({ ...one, id: other.id }, other));
  return gone.flatMap((old) => {
    const [found, second] = alike(old, come);
    if (found === undefined || second !== undefined || alike(found, gone).length !== 1) return [];
    return [{ list, from: old.id, to: found.id, name: found.name }];
  });
}

/** The job with a run, fixture, level, group or scheme under another id, and everything that names it following. */
export function renameIn(job: Job, { list, from, to }: Rename): Job {
  const named = <T extends { readonly id: string }>(things: readonly T[]): readonly T[] =>
    things.map((thing) => (thing.id === from ? { ...thing, id: to } : thing));
  const [top, scheme] = list;
  if (scheme !== undefined) {
    const renamed = (runs: readonly Run[]) =>
      named(runs).map((run) => (run.from === from ? { ...run, from: to } : run));
    return {
      ...job,
      schemes: job.schemes.map((one) => (one.id === scheme ? { ...one, runs: renamed(one.runs) } : one)),
    };
  }
  switch (top) {
    case 'fixtures':
      return {
        ...job,
        fixtures: named(job.fixtures),
        schemes: job.schemes.map((one) => ({
          ...one,
          runs: one.runs.map((run) => endRenamed(run, from, to)),
        })),
      };
    case 'levels':
      return {
        ...job,
        levels: named(job.levels),
        fixtures: job.fixtures.map((one) => (one.level === from ? { ...one, level: to } : one)),
      };
    case 'groups':
      return {
        ...job,
        groups: named(job.groups),
        fixtures: job.fixtures.map((one) => (one.group === from ? { ...one, group: to } : one)),
      };
    case 'schemes':
      return { ...job, schemes: named(job.schemes), chosen: job.chosen === from ? to : job.chosen };
    default:
      return job;
  }
}

function endRenamed(run: Run, from: string, to: string): Run {
  const { end } = run;
  if (end === undefined || !('fixture' in end) || end.fixture !== from) return run;
  return { ...run, end: { ...end, fixture: to } };
}
