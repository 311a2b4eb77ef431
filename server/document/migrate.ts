/** A job file as parsed JSON, before it is checked. */
export type RawJob = { readonly [field: string]: unknown };

/** What turns a file of version `from` into one of the next version; it must not change what it is given. */
export interface Migration {
  readonly from: number;
  readonly up: (job: RawJob) => RawJob;
}

/**
 * Oldest first, each one version on from the one before. Version 2 has fields that version 1 lacks, all of them
 * optional, so that a file of version 1 is already one of version 2.
 */
export const migrations: readonly Migration[] = [{ from: 1, up: (job) => job }];

export type Migrated =
  | { readonly ok: true; readonly job: RawJob }
  | { readonly ok: false; readonly problem: string };

/**
 * Brings a file to the present version, one version at a time; the version number is set here.
 *
 * @param present the version that is read without migration
 * @param steps for tests of the mechanism; otherwise {@link migrations}
 */
export function migrate(job: RawJob, present: number, steps: readonly Migration[] = migrations): Migrated {
  const { version } = job;
  const oldest = Math.min(present, ...steps.map(({ from }) => from));
  const readable =
    oldest === present ? `the number ${present}` : `a whole number from ${oldest} to ${present}`;
  if (version === undefined) return refuse(`version is missing; expected ${readable}`);
  if (typeof version !== 'number' || !Number.isInteger(version)) {
    return refuse(`version is no whole number; expected ${readable}`);
  }
  if (version > present) {
    return refuse(
      `version: the file was written by a newer Hightap (version ${version}); expected ${readable}, so update this one`,
    );
  }
  let migrated = job;
  for (let at = version; at < present; at++) {
    const step = steps.find(({ from }) => from === at);
    if (step === undefined) return refuse(`version: ${version} came; expected ${readable}`);
    migrated = { ...step.up(migrated), version: at + 1 };
  }
  return { ok: true, job: migrated };
}

function refuse(problem: string): Migrated {
  return { ok: false, problem };
}
