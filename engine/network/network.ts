import type { Cited } from '../../tables/table.ts';
import type { Demand } from '../demand/demand.ts';
import type { ServedFlows } from '../demand/gather-flows.ts';
import type { Curve } from '../hydraulics/curve.ts';
import type { Basis, Device, Fixture, InletSide, Job, Run, Scheme, Supply } from '../job/job.ts';

/** One inlet of one fixture, and the run that ends there. */
export interface Inlet {
  readonly fixture: Fixture;
  readonly side: InletSide;
  /** Position of its run in the network. */
  readonly run: number;
  /** What the fixture needs there while it flows, Pa and m3/s. */
  readonly requiredPressure: number;
  readonly requiredFlow: number;
  readonly pressureFrom: Cited | 'maker';
  readonly flowFrom: Cited | 'maker';
}

/** A device at the end of a run, with what it does to the pressure. */
export interface PlacedDevice {
  readonly device: Device;
  readonly run: number;
  readonly curve: Curve;
  /** Pa; a reducing valve's set pressure, else undefined. */
  readonly setPressure?: number;
}

/**
 * A scheme made ready to solve: one position per run, every run after the run that feeds it, so that one pass
 * forwards carries pressure from the street outwards and one pass backwards gathers demand. Plain numbers in
 * typed arrays, SI; what they were read from stands in `sources`.
 */
export interface Network {
  readonly job: Job;
  readonly scheme: Scheme;
  readonly basis: Basis;
  readonly supply: Supply;
  readonly size: number;
  readonly runs: readonly Run[];
  readonly positionOf: ReadonlyMap<string, number>;
  /** Position of the feeding run; -1 for the first. */
  readonly parent: Int32Array;
  /** One past the last position downstream: the runs fed by `i` are those from i to subtreeEnd[i] - 1. */
  readonly subtreeEnd: Int32Array;
  readonly hot: Uint8Array;

  readonly length: Float64Array;
  readonly rise: Float64Array;
  /** Height of the end of the run on the job's datum, m. */
  readonly elevation: Float64Array;
  readonly bore: Float64Array;
  /** Velocity = flow x this, 1/m2. */
  readonly velocityPerFlow: Float64Array;
  /** Hazen-Williams gradient in Pa/m = this x flow^1.852. */
  readonly friction: Float64Array;
  /** Absolute roughness, m. */
  readonly roughness: Float64Array;
  /** Equivalent length of the fittings, m. */
  readonly fittingLength: Float64Array;
  /** Loss of the fittings that are given by K or Cv, Pa = this x flow^2. */
  readonly fittingSquare: Float64Array;
  /** Pa per metre of rise. */
  readonly weight: Float64Array;
  /** kg/m3 and Pa s at the run's temperature. */
  readonly density: Float64Array;
  readonly viscosity: Float64Array;
  /** Position in `devices`, or -1. */
  readonly deviceAt: Int32Array;
  readonly devices: readonly PlacedDevice[];

  /** What each run adds to the fixture units of the profile, gathered from the runs it feeds. */
  readonly unitsAdded: Float64Array;
  /** Flow that runs for long, added at this run, m3/s. */
  readonly continuousAdded: Float64Array;
  /** Own flow of the fixtures that the demand method counts and this run itself serves, m3/s. */
  readonly ownFlow: Float64Array;
  /** What the sum of own flows changes at this run, so that a fixture met by both inlets counts once. */
  readonly ownFlowAdded: Float64Array;
  /** 1 where the run itself serves a flushometer valve. */
  readonly flushometer: Uint8Array;
  /** The sums of what each run adds, over all that it feeds. */
  readonly served: Served;
  /** What the demand method of the basis makes of it. */
  readonly demand: Demand;
  /** Pressure given up to height, Pa, and static pressure at the end of the run: no flow changes them. */
  readonly elevationLoss: Float64Array;
  readonly staticPressure: Float64Array;

  readonly inlets: readonly Inlet[];
  readonly sources: NetworkSources;
}

/** What each run serves: flows, and the fixture units of the profile, whatever the demand method. */
export interface Served extends ServedFlows {
  readonly units: Float64Array;
}

/** The table values behind the arrays, by position. */
export interface NetworkSources {
  readonly bore: readonly Cited[];
  readonly roughness: readonly Cited[];
  readonly hazenWilliamsC: readonly Cited[];
  readonly fittings: readonly (readonly FittingSource[])[];
  readonly units: readonly (readonly UnitSource[])[];
}

export interface FittingSource {
  readonly kind: string;
  readonly count: number;
  /** As a length of the pipe, as velocity heads, or as a flow coefficient: the port of a manifold. */
  readonly by: 'equivalent length' | 'K' | 'Cv';
  readonly each: Cited;
}

/** One reason why `unitsAdded` is what it is at a run. */
export type UnitSource =
  | {
      readonly what: 'inlet';
      readonly fixture: Fixture;
      readonly side: InletSide;
      readonly each: Cited;
    }
  /** Cold and hot of one fixture meet here: its total replaces the sum of the two. */
  | {
      readonly what: 'both sides';
      readonly fixture: Fixture;
      readonly total: Cited;
      readonly cold: Cited;
      readonly hot: Cited;
    }
  /** The run serves all of a group (or all of its cold, or hot): the group's value replaces the fixtures' own. */
  | GroupSource<'group'>
  /** Part of the group's other side joins here: back to the fixtures' own. */
  | GroupSource<'group ends'>;

interface GroupSource<W extends string> {
  readonly what: W;
  readonly group: string;
  readonly column: 'cold' | 'hot' | 'total';
  readonly value: Cited;
  readonly members: readonly Cited[];
}
