import type { Job, Run, Scheme } from '../../engine/job/job.ts';
import type { Problems } from '../../views/workbench.ts';

export { nextId } from '../../engine/job/next-id.ts';

/** A changed job, or why it was left as it was. */
export type Edited =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly problems: Problems };

export function changed(job: Job): Edited {
  return { ok: true, job };
}

export function refused(problems: Problems): Edited {
  return { ok: false, problems };
}

export function chosenScheme(job: Job): Scheme {
  const scheme = job.schemes.find(({ id }) => id === job.chosen);
  if (scheme === undefined) throw new Error(`the job has no scheme ${job.chosen}`);
  return scheme;
}

/** The job with the runs of its chosen scheme replaced. */
export function withRuns(job: Job, runs: readonly Run[]): Job {
  return {
    ...job,
    schemes: job.schemes.map((scheme) => (scheme.id === job.chosen ? { ...scheme, runs } : scheme)),
  };
}

/** Leaves out the keys whose value is `undefined`: an absent setting is absent in the document as well. */
export function present<T extends object>(values: T): { [key in keyof T]: Exclude<T[key], undefined> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    [key in keyof T]: Exclude<T[key], undefined>;
  };
}
