import type { FittingKind, JointId, MaterialId } from '../../tables/pipe/names.ts';
import type { PartKindId } from '../../tables/takeoff/part-kinds.ts';
import type { Device } from '../job/job.ts';

/** Money as a decimal in a string, e.g. `12.50`: binary fractions never touch it. */
export type Money = string;

export interface PipePrice {
  readonly material: MaterialId;
  readonly size: string;
  readonly perFoot: Money;
  readonly hoursPerFoot: number;
}

/**
 * One fitting with all its joints made. A tee is drawn in two legs, one entry for each run that leaves it, so `tee-run`
 * and `tee-branch` each carry a share of the tee: the two together are one tee.
 */
export interface FittingPrice {
  readonly material: MaterialId;
  readonly joint: JointId;
  readonly kind: FittingKind;
  readonly size: string;
  readonly each: Money;
  readonly hours: number;
}

/** A device, set and connected. */
export interface PlainDevicePrice {
  readonly device: Exclude<Device['device'], 'manifold'>;
  /**
   * What tells its kind apart: the size of a meter or arrester, the type of a backflow assembly or heater, the name of
   * another device. Without it the price is for each that has none of its own.
   */
  readonly size?: string;
  readonly each: Money;
  readonly hours: number;
}

/** A manifold: `each` and `hours` for the body, the others for each of its ports. */
export interface ManifoldPrice {
  readonly device: 'manifold';
  readonly size: string;
  readonly valved: boolean;
  readonly each: Money;
  readonly perPort: Money;
  readonly hours: number;
  readonly hoursPerPort: number;
}

export type DevicePrice = PlainDevicePrice | ManifoldPrice;

/** Parts that a take-off counts by rule, beside the pipe, the fittings drawn and the devices. */
export type PricedPartKind = Exclude<
  PartKindId,
  'pipe' | Exclude<FittingKind, 'tee-run' | 'tee-branch'> | Device['device'] | JointPartKind
>;
type JointPartKind = 'crimp-ring' | 'expansion-ring' | 'solder-joint' | 'solvent-joint' | 'threaded-joint';

/**
 * One part of a take-off with all its joints made, or a foot of it. What is left out is open: without a material it is
 * for any, without sizes for any that has no price of its own; one size is for every part whose largest size it is.
 */
export interface PartPrice {
  readonly kind: PricedPartKind;
  readonly material?: MaterialId;
  readonly joint?: JointId;
  /** As the take-off names them: a tee's run in, run on and branch. */
  readonly sizes?: readonly string[];
  readonly each: Money;
  readonly hours: number;
}

/** What things cost: one book, checked at the boundary. A price that is not in it is missing, never nothing. */
export interface PriceBook {
  readonly format: 'hightap-prices';
  readonly version: 1;
  readonly name: string;
  readonly note?: string;
  /** Whether the figures are made up, as those of the book that ships are; shown wherever a price is. */
  readonly invented: boolean;
  /** Three letters, `USD`. */
  readonly currency: string;
  /** Day from which the prices hold, `2026-11-25`. */
  readonly effective: string;
  readonly source: string;
  readonly pipe: readonly PipePrice[];
  readonly fittings: readonly FittingPrice[];
  readonly devices: readonly DevicePrice[];
  readonly parts?: readonly PartPrice[];
}
