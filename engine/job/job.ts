import type { PublishedDemand } from '../../tables/demand/methods.ts';
import type { FixtureKindId } from '../../tables/fixtures/kinds.ts';
import type { FittingKind, JointId, MaterialId } from '../../tables/pipe/names.ts';
import type { ProfileId } from '../../tables/profiles.ts';
import type { Dimension } from '../../tables/units/definitions.ts';

/** A quantity as a person typed it, beside its SI value; the typed text is what is stored and shown again. */
export interface Quantity {
  readonly typed: string;
  readonly si: number;
}

export type QuantityDimension = Extract<
  Dimension,
  'pressure' | 'pressure gradient' | 'flow' | 'length' | 'velocity' | 'temperature' | 'flow coefficient'
>;

export type UnitSystem = 'us' | 'si';
export type InletSide = 'cold' | 'hot';

/** One row of a job's own demand table. */
export interface DemandPoint {
  /** Fixture units of the profile. */
  readonly units: number;
  readonly flow: Quantity;
}

/** A jurisdiction's own curve for the fixture units of the profile; units and flows rise from row to row. */
export interface OwnDemand {
  readonly method: 'own-table';
  readonly name: string;
  readonly points: readonly DemandPoint[];
}

/** How the flow of a run is found from the fixtures that it serves. */
export type DemandChoice = PublishedDemand | OwnDemand;

/** The chosen set of rules. */
export interface Basis {
  readonly profile: ProfileId;
  /** The profile's own method where it is left out. */
  readonly demand?: DemandChoice;
  /** Between two rows of the demand table: straight line, or the next row up. Neither is attributed to a code. */
  readonly between: 'interpolate' | 'round-up';
  readonly friction: 'hazen-williams' | 'darcy-weisbach';
  readonly coldTemperature: Quantity;
  readonly hotTemperature: Quantity;
  /** A rounded static factor that a code prescribes, e.g. `0.433 psi/ft`; without it density x g. */
  readonly elevationFactor?: Quantity;
  /** What fittings lose by; equivalent lengths where it is not said. What one lacks is taken from the other. */
  readonly fittings?: 'equivalent-length' | 'loss-coefficient';
  /** Percent of developed length in place of the fittings drawn; without it the fittings are counted. */
  readonly fittingAllowancePercent?: number;
  /** Velocity limits that replace the profile's. */
  readonly velocityCold?: Quantity;
  readonly velocityHot?: Quantity;
}

interface SupplyPoint {
  /** Height of the point where the pressure is known, on the job's datum. */
  readonly elevation: Quantity;
}

/** Static pressure at the street: the daily low for flow, the daily high for static checks. */
export interface StaticSupply extends SupplyPoint {
  readonly kind: 'static';
  readonly low: Quantity;
  readonly high: Quantity;
}

/** Static and residual pressure at a measured flow; `low` and `high` where the day's range is known as well. */
export interface FlowTestSupply extends SupplyPoint {
  readonly kind: 'flow-test';
  readonly static: Quantity;
  readonly residual: Quantity;
  readonly flow: Quantity;
  readonly low?: Quantity;
  readonly high?: Quantity;
}

/** A well pump with a pressure tank: flow checks at cut-in, static checks at cut-out. */
export interface WellSupply extends SupplyPoint {
  readonly kind: 'well';
  readonly cutIn: Quantity;
  readonly cutOut: Quantity;
  readonly pumpFlow?: Quantity;
}

export type Supply = StaticSupply | FlowTestSupply | WellSupply;

export interface Level {
  readonly id: string;
  readonly name: string;
  /** Finished floor on the job's datum. */
  readonly elevation: Quantity;
}

/** A point of the plan on a level, measured along the walls from the job's corner. */
export interface Place {
  readonly level: string;
  readonly x: Quantity;
  readonly y: Quantity;
}

/** Where the pipe has to start and to rise, for layouts that are drawn up from the schedule. */
export interface Places {
  /** Where the service comes through the wall. */
  readonly serviceEntry: Place;
  /** Heaters, manifolds, treatment. */
  readonly mechanicalRoom: Place;
  /** Shafts and wet walls that go through every level. */
  readonly risers: readonly { readonly id: string; readonly x: Quantity; readonly y: Quantity }[];
}

export type GroupKind = 'full-bath' | 'half-bath' | 'kitchen' | 'laundry';

/** Fixtures that a code counts together. */
export interface FixtureGroup {
  readonly id: string;
  readonly name: string;
  readonly kind: GroupKind;
}

export interface Fixture {
  readonly id: string;
  readonly name: string;
  readonly kind: FixtureKindId;
  readonly level?: string;
  readonly room?: string;
  readonly use: 'private' | 'public';
  /** Identical fixtures on the same inlet, 1 or more. */
  readonly count: number;
  /** What is piped to it, where it differs from its kind's. */
  readonly inlets?: 'cold' | 'hot' | 'both';
  /** Inlet above the finished floor of its level. */
  readonly height?: Quantity;
  /** Position on the plan of its level; or, where there is no plan, the length of pipe from the riser or manifold. */
  readonly x?: Quantity;
  readonly y?: Quantity;
  readonly distance?: Quantity;
  /** What the maker asks for, where it differs from the code's. */
  readonly flow?: Quantity;
  readonly pressure?: Quantity;
  readonly group?: string;
  /** Runs for long: added as flow, not as fixture units. */
  readonly continuous?: boolean;
}

/** One point of a maker's loss curve. */
export interface LossPoint {
  readonly flow: Quantity;
  readonly loss: Quantity;
}

/** What may stand at the end of a run. `curve` replaces the generic curve with the maker's points. */
export type Device =
  | { readonly device: 'meter'; readonly size: string; readonly curve?: readonly LossPoint[] }
  | {
      readonly device: 'reducing-valve';
      /** The size of its run where it is left out. */
      readonly size?: string;
      readonly set: Quantity;
      readonly curve?: readonly LossPoint[];
    }
  | {
      readonly device: 'backflow';
      readonly type: 'reduced-pressure' | 'double-check' | 'dual-check-vented';
      /** The size of its run where it is left out. */
      readonly size?: string;
      readonly curve?: readonly LossPoint[];
    }
  | { readonly device: 'softener'; readonly curve?: readonly LossPoint[] }
  | { readonly device: 'filter'; readonly curve?: readonly LossPoint[] }
  | {
      readonly device: 'heater';
      readonly type: 'storage' | 'tankless';
      readonly curve?: readonly LossPoint[];
    }
  | {
      readonly device: 'manifold';
      readonly size: string;
      readonly ports: number;
      /** Whether each port has its own valve. */
      readonly valved: boolean;
      readonly curve?: readonly LossPoint[];
    }
  | { readonly device: 'mixing-valve'; readonly cv?: number; readonly curve?: readonly LossPoint[] }
  | { readonly device: 'expansion-tank' }
  | { readonly device: 'arrester'; readonly size: string }
  | { readonly device: 'other'; readonly name: string; readonly curve: readonly LossPoint[] };

/** A run that ends at a fixture's cold or hot inlet. */
export interface FixtureInlet {
  readonly fixture: string;
  readonly inlet: InletSide;
}

export type RunEnd = FixtureInlet | Device;

export interface FittingCount {
  readonly kind: FittingKind;
  readonly count: number;
}

/** One length of pipe of one size between two points, with its fittings. */
export interface Run {
  readonly id: string;
  /** The run it comes from; `street` for the first. */
  readonly from: string;
  readonly size: string;
  readonly material: MaterialId;
  /** How it is joined; the material's usual way where it is not said. */
  readonly joint?: JointId;
  /** Developed length, the risen part included. */
  readonly length: Quantity;
  /** Height gained from start to end; negative goes down. */
  readonly rise?: Quantity;
  readonly fittings: readonly FittingCount[];
  readonly end?: RunEnd;
  readonly note?: string;
}

/** One layout of a job. */
export interface Scheme {
  readonly id: string;
  readonly name: string;
  readonly runs: readonly Run[];
}

/** One building's document. */
export interface Job {
  readonly format: 'hightap-job';
  readonly version: 2;
  readonly name: string;
  readonly note?: string;
  readonly units: UnitSystem;
  readonly basis: Basis;
  readonly supply: Supply;
  readonly levels: readonly Level[];
  readonly places?: Places;
  readonly groups: readonly FixtureGroup[];
  readonly fixtures: readonly Fixture[];
  readonly schemes: readonly Scheme[];
  /** Id of the scheme that the answer is read from. */
  readonly chosen: string;
}
