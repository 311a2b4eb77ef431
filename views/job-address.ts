/**
 * What an address behind `/jobs/` names: `3f2k` a job as it is, `3f2k~5` its fifth revision, `3f2k~t0a1b` a trial of
 * it. Every page of a job works at each of them.
 */
export type JobAddress =
  | { readonly at: 'job'; readonly job: string }
  | { readonly at: 'revision'; readonly job: string; readonly revision: number }
  | { readonly at: 'trial'; readonly job: string; readonly trial: string };

const mark = '~';

export function readAddress(id: string): JobAddress {
  const cut = id.indexOf(mark);
  if (cut < 0) return { at: 'job', job: id };
  const job = id.slice(0, cut);
  const rest = id.slice(cut + 1);
  // Ids of trials begin with a letter.
  return /^[1-9]\d{0,8}$/.test(rest)
    ? { at: 'revision', job, revision: Number(rest) }
    : { at: 'trial', job, trial: rest };
}

/** Id of the job that an address belongs to. */
export function jobOfAddress(id: string): string {
  return readAddress(id).job;
}

/** The address of an earlier revision, or of a trial. */
export function addressBeside(job: string, what: number | string): string {
  return `${job}${mark}${what}`;
}
