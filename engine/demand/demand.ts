import type { UnitId } from '../../tables/units/definitions.ts';
import type { Fixture } from '../job/job.ts';
import type { DemandTable } from './demand-table.ts';
import type { ServedFlows } from './gather-flows.ts';
import type { GatheredUnits } from './gather-units.ts';
import type { UnitCount } from './unit-count.ts';

/** Demand read off a table by the units of what a run serves. */
export interface UnitsDemand extends GatheredUnits {
  readonly by: 'units';
  /** What the units are called; those of one code mean nothing to the table of another. */
  readonly unit: Extract<UnitId, 'wsfu' | 'lu'>;
  readonly count: UnitCount;
  readonly table: DemandTable;
}

/** What the demand of a run was found from, by method. */
export type DemandBasis = UnitsDemand;

/**
 * The demand of every run by one method, with what it was found from. Rules that hold for every method (one fixture
 * alone, the largest fixture, flow that runs for long, the runs fed) come after it: see design-flow.ts.
 */
export interface Demand {
  readonly from: DemandBasis;
  /** By position, m3/s. */
  readonly flow: Float64Array;
}

/** A demand method set to a job and the pipes of a scheme. */
export interface DemandMethod {
  /** Whether the method knows the fixture; the flow of one that it does not know is added whole. */
  readonly counts: (fixture: Fixture) => boolean;
  /** The demand of every run. */
  readonly demand: (served: ServedFlows) => Demand;
}
