import { bounds } from '../../engine/job/bounds.ts';
import type { Job, Run, Scheme } from '../../engine/job/job.ts';
import { changed, type Edited, nextId, refused } from './edited.ts';

const noScheme = (id: string) => refused({ '': `There is no scheme ${id}.` });

/** Makes a scheme the one that the answer is read from. */
export function chooseScheme(job: Job, id: string): Edited {
  return schemeOf(job, id) === undefined ? noScheme(id) : changed({ ...job, chosen: id });
}

/** Takes a scheme out; never the chosen one. */
export function removeScheme(job: Job, id: string): Edited {
  const gone = schemeOf(job, id);
  if (gone === undefined) return noScheme(id);
  if (id === job.chosen) {
    return refused({ '': `${gone.name} is the chosen scheme; choose another one before removing it.` });
  }
  return changed({ ...job, schemes: job.schemes.filter((scheme) => scheme !== gone) });
}

/** Adds a scheme to the job, behind the others. */
export function addScheme(job: Job, scheme: Scheme): Edited {
  return changed({ ...job, schemes: [...job.schemes, scheme] });
}

/** A copy of a scheme with other runs, under a new id and a name that says what it is. */
export function copyScheme(job: Job, id: string, what: string, runs?: readonly Run[]): Edited {
  const original = schemeOf(job, id);
  if (original === undefined) return noScheme(id);
  return addScheme(job, {
    id: freeSchemeId(job, 'S'),
    name: freeSchemeName(job, `${original.name}, ${what}`),
    runs: runs ?? original.runs,
  });
}

/** Puts runs in the place of a scheme's own. */
export function replaceSchemeRuns(job: Job, id: string, runs: readonly Run[]): Edited {
  if (schemeOf(job, id) === undefined) return noScheme(id);
  return changed({
    ...job,
    schemes: job.schemes.map((scheme) => (scheme.id === id ? { ...scheme, runs } : scheme)),
  });
}

/** The scheme of that id, or undefined. */
export function schemeOf(job: Job, id: string): Scheme | undefined {
  return job.schemes.find((scheme) => scheme.id === id);
}

/** The first of `stem`1, `stem`2, ... that no scheme of the job has. */
export function freeSchemeId(job: Job, stem: string): string {
  return nextId(
    stem,
    job.schemes.map(({ id }) => id),
  );
}

/** A name that no scheme of the job has: `wanted`, or the same with a number. */
export function freeSchemeName(job: Job, wanted: string): string {
  const taken = new Set(job.schemes.map(({ name }) => name));
  // Room for a number behind it.
  const stem = wanted.slice(0, bounds.nameLength - 5).trim();
  if (!taken.has(stem)) return stem;
  let number = 2;
  while (taken.has(`${stem} ${number}`)) number++;
  return `${stem} ${number}`;
}
