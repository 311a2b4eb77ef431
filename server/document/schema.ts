import { z } from 'zod';
import { bounds } from '../../engine/job/bounds.ts';
import type { Job } from '../../engine/job/job.ts';
import { fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { profiles } from '../../tables/profiles.ts';
import { fileLimits } from './file-limits.ts';
import { demandSchema } from './schema-demand.ts';
import { endSchema } from './schema-ends.ts';
import type { ListOf } from './schema-parts.ts';
import {
  choiceOf,
  describedList,
  fieldsOf,
  idOf,
  keysOf,
  noteOf,
  quantityOf,
  readList,
  textOf,
  wholeOf,
  yesOrNo,
} from './schema-parts.ts';
import { runSchema } from './schema-runs.ts';

/** The version of the job file that is written; older ones are migrated, newer ones refused. */
export const jobVersion = 2;

/** The basis, its lists made by `listOf`. */
function basisSchema(listOf: ListOf) {
  return fieldsOf({
    profile: choiceOf(keysOf(profiles), 'the set of rules that the job is sized by'),
    demand: z.exactOptional(demandSchema(listOf)),
    between: choiceOf(['interpolate', 'round-up'], 'what is done between two rows of the demand table'),
    friction: choiceOf(['hazen-williams', 'darcy-weisbach'], 'the friction formula'),
    coldTemperature: quantityOf('temperature', 'temperature of the cold water'),
    hotTemperature: quantityOf('temperature', 'temperature of the hot water'),
    elevationFactor: z.exactOptional(
      quantityOf(
        'pressure gradient',
        'pressure for each unit of height, where a code prescribes it',
        'above zero',
      ),
    ),
    fittings: z.exactOptional(
      choiceOf(['equivalent-length', 'loss-coefficient'], 'what the fittings that are counted lose by'),
    ),
    fittingAllowancePercent: z.exactOptional(
      z
        .number({ error: 'a percentage from 0 to 200' })
        .min(0, { error: 'a percentage from 0 to 200' })
        .max(200, { error: 'a percentage from 0 to 200' })
        .meta({ description: 'fittings as a percentage of the developed length, in place of those counted' }),
    ),
    velocityCold: z.exactOptional(quantityOf('velocity', 'limit of velocity in cold pipe', 'above zero')),
    velocityHot: z.exactOptional(quantityOf('velocity', 'limit of velocity in hot pipe', 'above zero')),
  });
}

const elevation = quantityOf('length', "height of the point where the pressure is known, on the job's datum");
const daily = (when: string) =>
  quantityOf('pressure', `static pressure at the daily ${when}`, 'not below zero');

const supply = z.discriminatedUnion(
  'kind',
  [
    fieldsOf({ kind: z.literal('static'), elevation, low: daily('low'), high: daily('high') }),
    fieldsOf({
      kind: z.literal('flow-test'),
      elevation,
      static: quantityOf('pressure', 'static pressure before the test', 'not below zero'),
      residual: quantityOf('pressure', 'residual pressure at the measured flow', 'not below zero'),
      flow: quantityOf('flow', 'measured flow', 'above zero'),
      low: z.exactOptional(daily('low')),
      high: z.exactOptional(daily('high')),
    }),
    fieldsOf({
      kind: z.literal('well'),
      elevation,
      cutIn: quantityOf('pressure', 'pressure at which the pump starts', 'not below zero'),
      cutOut: quantityOf('pressure', 'pressure at which the pump stops', 'not below zero'),
      pumpFlow: z.exactOptional(quantityOf('flow', 'flow that the pump sustains', 'above zero')),
    }),
  ],
  { error: 'a supply whose kind is static, flow-test or well' },
);

const level = fieldsOf({
  id: idOf('id of the level'),
  name: textOf(bounds.nameLength, 'name of the level'),
  elevation: quantityOf('length', "finished floor on the job's datum"),
});

const x = quantityOf('length', "distance along the plan's first axis from the job's corner");
const y = quantityOf('length', "distance along the plan's second axis from the job's corner");
const spotOn = (what: string) => fieldsOf({ level: idOf(`id of the level of the ${what}`), x, y });
const riser = fieldsOf({ id: idOf('id of the riser'), x, y });

/** Where pipe starts and rises, for layouts drawn up from the schedule. */
function placesSchema(listOf: ListOf) {
  return fieldsOf({
    serviceEntry: spotOn('service entry'),
    mechanicalRoom: spotOn('mechanical room'),
    risers: listOf(riser, fileLimits.risers, 'risers'),
  });
}

const group = fieldsOf({
  id: idOf('id of the group'),
  name: textOf(bounds.nameLength, 'name of the group'),
  kind: choiceOf(['full-bath', 'half-bath', 'kitchen', 'laundry'], 'kind of the group'),
});

const fixture = fieldsOf({
  id: idOf('id of the fixture'),
  name: textOf(bounds.nameLength, 'name of the fixture'),
  kind: choiceOf(keysOf(fixtureKinds), 'kind of the fixture'),
  level: z.exactOptional(idOf('id of its level')),
  room: z.exactOptional(textOf(bounds.nameLength, 'its room')),
  use: choiceOf(['private', 'public'], 'who uses it'),
  count: wholeOf(bounds.fixtureCount, 'how many of them stand on the same inlet'),
  inlets: z.exactOptional(choiceOf(['cold', 'hot', 'both'], 'what is piped to it')),
  height: z.exactOptional(quantityOf('length', 'inlet above the finished floor')),
  x: z.exactOptional(x),
  y: z.exactOptional(y),
  distance: z.exactOptional(
    quantityOf('length', 'pipe from the riser or manifold, where there is no plan', 'not below zero'),
  ),
  flow: z.exactOptional(quantityOf('flow', 'flow that its maker asks for', 'above zero')),
  pressure: z.exactOptional(quantityOf('pressure', 'pressure that its maker asks for', 'not below zero')),
  group: z.exactOptional(idOf('id of its group')),
  continuous: z.exactOptional(yesOrNo('whether it runs for long')),
}).superRefine((read, context) => {
  if ((read.x === undefined) === (read.y === undefined)) return;
  const [has, lacks] = read.x === undefined ? (['y', 'x'] as const) : (['x', 'y'] as const);
  context.addIssue({
    code: 'custom',
    path: [lacks],
    message: `missing beside ${has}; expected both x and y, or neither`,
  });
});

/** The job file, its lists made by `listOf`. */
function jobSchema(listOf: ListOf) {
  const scheme = fieldsOf({
    id: idOf('id of the scheme'),
    name: textOf(bounds.nameLength, 'name of the scheme'),
    runs: listOf(runSchema(listOf, endSchema(listOf)), fileLimits.runsOfScheme, 'runs'),
  });
  return fieldsOf({
    format: z.literal('hightap-job', { error: '"hightap-job"' }),
    version: z.literal(jobVersion, { error: `the number ${jobVersion}` }),
    name: textOf(bounds.nameLength, 'name of the job'),
    note: z.exactOptional(noteOf('note to the job')),
    units: choiceOf(['us', 'si'], "the reader's system of units"),
    basis: basisSchema(listOf),
    supply,
    levels: listOf(level, fileLimits.levels, 'levels'),
    places: z.exactOptional(placesSchema(listOf)),
    groups: listOf(group, fileLimits.groups, 'groups'),
    fixtures: listOf(fixture, fileLimits.fixtures, 'fixtures'),
    schemes: listOf(scheme, fileLimits.schemes, 'schemes'),
    chosen: idOf('id of the scheme that the answer is read from'),
  });
}

/** Reads the parsed JSON of a job file of the present version into a job. */
export const jobReader: z.ZodType<Job, unknown> = jobSchema(readList);

/** The same file, for its description. */
export const describedJob = jobSchema(describedList).meta({
  title: 'Hightap job',
  description:
    "One building's water supply: supply, fixtures and one or more layouts of pipe. Quantities are texts with their unit, as a person writes them.",
});
