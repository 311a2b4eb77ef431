import type { Command, Option } from './command.ts';

const scheme: Option = { takes: 'ID', about: 'another scheme than the one that the job has chosen' };
const prices: Option = { takes: 'FILE', about: 'another price book than the invented one that ships' };
const store: Option = {
  takes: 'FOLDER|postgres://...',
  about: 'another store than DATABASE_URL or HIGHTAP_DATA name',
};
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
      `${jsonUnits} Keys: job, jobFile_sha256 (as on the sheet), scheme, basis, deviations (what the job settles for itself), supply, demand, passes, worst, inlets (smallest margin first), path (fixture, side, lines of the ledger, unverified), runs, findings, unverified (table values on the worst path that nobody could verify).`,
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
    name: 'size',
    about: 'every run at the least total cost that holds every limit; exit code 1 where nothing fits',
    takes: ['JOB'],
    options: {
      keep: { takes: 'RUN,RUN', about: 'runs that stay as they are drawn' },
      'not-larger': { takes: 'flag', about: 'no run larger than the one that feeds it' },
      trunk: {
        takes: 'RUN,RUN',
        about: 'runs one behind the other that keep one size; may come more than once',
        repeats: true,
      },
      material: { takes: 'MATERIAL,MATERIAL', about: "materials to choose among, each run's own without it" },
      all: { takes: 'flag', about: 'every run in the table, not only those that change' },
      write: { takes: 'flag', about: 'the job file with the new sizes instead of the answer' },
      prices,
      scheme,
      json,
    },
    details: [
      'JOB is a job file, or - for standard input.',
      'The answer is exact for its prices: pipe by the foot and the fittings drawn; no other choice of the sizes in stock costs less and holds velocity, rating, least size and the need at every inlet. Beside it stand what the hand methods choose, the least cost at other street pressures, and what each further psi costs.',
      'Prices come from the book that ships, which is INVENTED, unless --prices names another. A price that a book lacks is told and never taken as nothing.',
      `${jsonUnits} Money is a decimal in a string. Keys: job, scheme, prices, supply, fits, drawn, least, unsized (why nothing fits), runs, methods, curve (least cost by street pressure), changes (single changes and what they gain), missingPrices.`,
    ],
    load: async () => (await import('./size.ts')).size,
  },
  {
    name: 'compare',
    about: 'up to six schemes of a job side by side: pressure, price, pipe, labor, hot-water wait, findings',
    takes: ['JOB'],
    options: {
      schemes: { takes: 'ID,ID', about: 'which schemes, in which order; the first six without it' },
      size: { takes: 'flag', about: 'each scheme sized at the least cost first' },
      prices,
      json,
    },
    details: [
      'JOB is a job file, or - for standard input.',
      'Prices come from the book that ships, which is INVENTED, unless --prices names another. A scheme for which the book lacks a price has no total.',
      `${jsonUnits} Money is a decimal in a string. Keys: job, prices, sized, schemes, broken (schemes that make no tree).`,
    ],
    load: async () => (await import('./compare.ts')).compare,
  },
  {
    name: 'takeoff',
    about: 'what a scheme takes: pipe, fittings, valves, supports and joints, with their price',
    takes: ['JOB'],
    options: {
      csv: {
        takes: 'flag',
        about: 'every line as CSV, by phase, area and service, with the runs it comes from',
      },
      against: { takes: 'FILE', about: 'an earlier revision of the job: what is added and dropped since' },
      rate: { takes: 'MONEY', about: 'labor, for an hour: builds a price up' },
      tax: { takes: 'PERCENT', about: 'sales tax on material' },
      overhead: { takes: 'PERCENT', about: 'on material, tax and labor' },
      margin: { takes: 'PERCENT', about: 'as a part of the price' },
      prices,
      scheme,
      json,
    },
    details: [
      'JOB is a job file, or - for standard input.',
      'Fittings are counted by a rule for each kind of junction; where the drawing and the tree disagree there is a question. Pipe is the developed length without waste. How everything is counted stands with the answer.',
      'Prices come from the book that ships, which is INVENTED, unless --prices names another. A price that a book lacks is told and never taken as nothing.',
      `${jsonUnits} Lengths stand in feet as well. Money is a decimal in a string. Keys: job, scheme, prices, lines (item, kind, sizes, count or length, phase, area, service, from, price), pieces (pipe to cut), priced, labor_h, total, bid, against, missingPrices, questions, rules, values (table values and rules of thumb).`,
    ],
    load: async () => (await import('./takeoff.ts')).takeoff,
  },
  {
    name: 'sheet',
    about: 'the whole calculation as a PDF for plan review; or whether paper and file match',
    takes: ['JOB'],
    options: {
      out: { takes: 'FILE.pdf', about: 'where the PDF is written' },
      match: {
        takes: 'HASH',
        about: 'instead: is this hash, read off paper, that of the job file? exit code 1 if not',
      },
      units: { takes: 'us|si', about: "the reader's system, the job's without it" },
      paper: { takes: 'letter|a4', about: 'letter for us units and a4 for si without it' },
      date: { takes: 'YYYY-MM-DD', about: 'the day on each page; none without it' },
      prices,
      scheme,
    },
    details: [
      'JOB is a job file, or - for standard input.',
      'Each page carries the first digits of the SHA-256 of the job file, written as Hightap writes it; the whole of it stands once. The same job gives the same bytes.',
      'Prices come from the book that ships, which is INVENTED, unless --prices names another.',
    ],
    load: async () => (await import('./sheet.ts')).sheet,
  },
  {
    name: 'riser',
    about: 'the drawing of a scheme as an SVG file: its riser, heights to scale, or its tree laid flat',
    takes: ['JOB'],
    options: {
      view: {
        takes: 'riser|plan',
        about:
          'heights to scale, or the tree by developed length; without it by whether there are several levels',
      },
      scheme,
    },
    details: [
      'JOB is a job file, or - for standard input: hightap riser my-job.json > my-riser.svg',
      'Hot pipe is dashed, a larger bore is a heavier line, the path to the worst fixture lies on a band. The file needs nothing beside it.',
    ],
    load: async () => (await import('./riser.tsx')).riser,
  },
  {
    name: 'backup',
    about: 'all that the store holds, as it is at this moment, in one file',
    takes: ['FILE'],
    options: { store },
    details: [
      'A server may go on working meanwhile. The file is the same for both kinds of store, so it also moves a store from one to the other.',
    ],
    load: async () => (await import('./backup.ts')).backup,
  },
  {
    name: 'restore',
    about: 'a backup put into a store, once all of the file is found whole',
    takes: ['FILE'],
    options: {
      store,
      replace: { takes: 'flag', about: 'in place of the jobs and price books that the store holds' },
    },
    details: [
      'Stop the server first. The check sum, the counts and every document are read before the store is touched; where anything fails the store is as it was.',
    ],
    load: async () => (await import('./restore.ts')).restore,
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
