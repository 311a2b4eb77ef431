import type { Command, Option } from './command.ts';

const scheme: Option = { takes: 'ID', about: 'another scheme than the one that the job has chosen' };
const json: Option = { takes: 'flag', about: 'for programs: JSON with stable keys' };

/** What JSON keys say about units, for the help of each command that prints it. */
const jsonUnits =
  'In JSON every figure is SI and unrounded, its unit at the end of its key: residual_Pa, flow_m3_per_s, velocity_m_per_s.';

/** Every command but help, which tells of them. */
export const commands: readonly Command[] = [
  {
    name: 'pressure',
    about: 'what is left at the worst fixture, at every other, and the path there as a ledger',
    takes: ['JOB'],
    options: {
      path: { takes: 'FIXTURE[.cold|.hot]', about: 'the ledger of another path than the worst' },
      all: { takes: 'flag', about: 'every inlet in the table, not the first 20' },
      scheme,
      json,
    },
    details: [
      'JOB is a job file, or - for standard input.',
      `${jsonUnits} Keys: job, scheme, basis, supply, demand, passes, worst, inlets (smallest margin first), path (fixture, side, lines of the ledger, unverified), runs, findings, unverified (table values on the worst path that nobody could verify).`,
    ],
    load: async () => (await import('./pressure.ts')).pressure,
  },
  {
    name: 'check',
    about: 'every finding with its rule, and what would mend it; exit code 1 where one is an error',
    takes: ['JOB'],
    options: { scheme, json },
    details: [
      'JOB is a job file, or - for standard input.',
      `${jsonUnits} Keys: job, scheme, passes, counts, findings (code, severity, run, fixture, what, tryThis, mend with gain_Pa, source, facts: the figures of the finding in SI).`,
    ],
    load: async () => (await import('./check.ts')).check,
  },
  {
    name: 'explain',
    about: 'the formula, inputs, sources and arithmetic behind the figures of a run or an inlet',
    takes: ['JOB', 'RUN[.QUANTITY]|FIXTURE[.cold|.hot]'],
    options: { scheme, json },
    details: [
      'JOB is a job file, or - for standard input. A run alone gives all its steps in order; RUN.QUANTITY, such as T3.velocity, gives one figure and what it rests on; FIXTURE.hot gives what is left there over the need.',
      'In JSON a step has its value in SI, and its formula, arithmetic, result and terms as its source prints them.',
    ],
    load: async () => (await import('./explain.ts')).explain,
  },
  {
    name: 'schema',
    about: 'the JSON Schema of a job file',
    takes: [],
    options: {},
    details: ['JSON Schema draft 2020-12, for editors and programs that write jobs.'],
    load: async () => (await import('./schema.ts')).schema,
  },
  {
    name: 'new',
    about: 'a small job to start from, on standard output',
    takes: ['[NAME]'],
    options: {},
    details: [
      'An invented cottage with a few fixtures, complete and ready to compute: hightap new "My job" > my-job.json',
    ],
    load: async () => (await import('./new.ts')).newJob,
  },
];
