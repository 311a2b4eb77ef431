import type { Job, Run } from '../../engine/job/job.ts';
import { parseRunLine } from '../../engine/job/parse-run-line.ts';
import { changed, chosenScheme, type Edited, nextId, refused, withRuns } from './edited.ts';

/** Puts a changed run in the place of the one called `id`; where its name changed, what it feeds follows. */
export function replaceRun(job: Job, id: string, run: Run): Edited {
  const { runs } = chosenScheme(job);
  if (run.id !== id && runs.some((other) => other.id === run.id)) {
    return refused({ id: `There is a run ${run.id} already.` });
  }
  return changed(
    withRuns(
      job,
      runs.map((other) => {
        if (other.id === id) return run;
        return other.from === id && run.id !== id ? { ...other, from: run.id } : other;
      }),
    ),
  );
}

/** Changes a run to what a line of shorthand says; what a line cannot say is kept. */
export function replaceRunLine(job: Job, id: string, line: string): Edited {
  const previous = chosenScheme(job).runs.find((run) => run.id === id);
  if (previous === undefined) return refused({ '': `There is no run ${id}.` });
  const parsed = parseRunLine(line, { previous });
  if (!parsed.ok) return refused({ line: `${parsed.problem}.` });
  return replaceRun(job, id, { id, from: previous.from, ...parsed.run });
}

export interface NewRun {
  readonly from: string;
  readonly line: string;
  /** Empty: the next free name. */
  readonly id: string;
  /** Put it between `from` and what that feeds. */
  readonly insert: boolean;
}

/** Adds a run behind another, right after it in the document. */
export function addRun(job: Job, { from, line, id: wanted, insert }: NewRun): Edited {
  const { runs } = chosenScheme(job);
  const at = runs.findIndex((run) => run.id === from);
  if (at < 0 && from !== 'street') return refused({ from: `There is no run ${from}.` });
  if (runs.some((run) => run.id === wanted)) return refused({ id: `There is a run ${wanted} already.` });
  const parsed = parseRunLine(line);
  if (!parsed.ok) return refused({ line: `${parsed.problem}.` });
  const id =
    wanted === ''
      ? nextId(
          'R',
          runs.map((run) => run.id),
        )
      : wanted;
  const before = runs.slice(0, at + 1);
  const after = runs.slice(at + 1);
  const follow = (run: Run): Run => (insert && run.from === from ? { ...run, from: id } : run);
  return changed(withRuns(job, [...before.map(follow), { id, from, ...parsed.run }, ...after.map(follow)]));
}

/** Takes a run out; what it feeds comes from the run before it. */
export function removeRun(job: Job, id: string): Edited {
  const { runs } = chosenScheme(job);
  const gone = runs.find((run) => run.id === id);
  if (gone === undefined) return refused({ '': `There is no run ${id}.` });
  return changed(
    withRuns(
      job,
      runs.filter((run) => run.id !== id).map((run) => (run.from === id ? { ...run, from: gone.from } : run)),
    ),
  );
}
