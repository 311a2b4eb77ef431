import { z } from 'zod';
import { citedValue, finding, listOf, marked, ofScheme, side } from './schema-common.ts';

const inlet = z
  .object({
    fixture: z.string(),
    side,
    name: z.string(),
    run: z.string(),
    residual_Pa: z.number(),
    required_Pa: z.number(),
    margin_Pa: z.number(),
    static_Pa: z.number(),
    requiredFlow_m3_per_s: z.number(),
  })
  .meta({ id: 'Inlet', description: "one side of a fixture, judged at the fixture's flow" });

const path = z
  .object({
    fixture: z.string(),
    side,
    lines: listOf(
      z.object({
        run: z.string(),
        what: z.string(),
        loss_Pa: z.number(),
        before_Pa: z.number(),
        after_Pa: z.number(),
      }),
      'the ledger from the street to the inlet',
    ),
    unverified: listOf(citedValue, 'table values on this path that nobody could verify'),
  })
  .meta({ id: 'Path' });

const run = z
  .object({
    id: z.string(),
    from: z.string(),
    size: z.string(),
    material: z.string(),
    water: z.enum(['cold', 'hot']),
    length_m: z.number(),
    rise_m: z.number(),
    fixtureUnits: z.number(),
    flow_m3_per_s: z.number(),
    velocity_m_per_s: z.number(),
    gradient_Pa_per_m: z.number(),
    pipeLoss_Pa: z.number(),
    fittingLoss_Pa: z.number(),
    deviceLoss_Pa: z.number(),
    elevationLoss_Pa: z.number(),
    residual_Pa: z.number(),
    static_Pa: z.number(),
  })
  .meta({ id: 'SolvedRun', description: 'one run at design demand' });

/** What `hightap pressure --json` prints. */
export const pressureAnswer = z
  .object({
    ...marked('hightap-pressure'),
    jobFile_sha256: z.string().meta({ description: 'hash of the job file, as the sheet carries it' }),
    ...ofScheme,
    basis: z.object({
      profile: z.string(),
      code: z.string(),
      edition: z.string(),
      between: z.string(),
      friction: z.string(),
      coldTemperature_K: z.number(),
      hotTemperature_K: z.number(),
    }),
    deviations: z.array(z.object({ what: z.string(), says: z.string() })).meta({
      description: 'what the job settles for itself, in place of its code or where that leaves it open',
    }),
    supply: z.object({
      kind: z.string(),
      elevation_m: z.number(),
      pressure_Pa: z.number(),
      static_Pa: z.number(),
    }),
    demand: z.object({ flow_m3_per_s: z.number(), fixtureUnits: z.number() }),
    passes: z.boolean(),
    worst: inlet.nullable(),
    inlets: listOf(inlet, 'smallest margin first'),
    path: path.nullable(),
    runs: listOf(run, 'each after the run that feeds it'),
    findings: listOf(finding, 'every rule that is broken or worth a note'),
    unverified: listOf(citedValue, 'table values on the worst path that nobody could verify'),
  })
  .meta({ id: 'PressureAnswer', description: 'what is left at every fixture' });

export type PressureAnswer = z.infer<typeof pressureAnswer>;
