import type { FittingKind, JointId, MaterialId } from '../../tables/pipe/names.ts';

/** Money as a decimal in a string, e.g. `12.50`: binary fractions never touch it. */
export type Money = string;

export interface PipePrice {
  readonly material: MaterialId;
  readonly size: string;
  readonly perFoot: Money;
  readonly hoursPerFoot: number;
}

export interface FittingPrice {
  readonly material: MaterialId;
  readonly joint: JointId;
  readonly kind: FittingKind;
  readonly size: string;
  readonly each: Money;
  readonly hours: number;
}

export interface DevicePrice {
  readonly device: string;
  /** As the device's own size or type tells it apart; left out where there is one price for all. */
  readonly size?: string;
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
  readonly currency: string;
  /** Day from which the prices hold, `2026-11-25`. */
  readonly effective: string;
  readonly source: string;
  readonly pipe: readonly PipePrice[];
  readonly fittings: readonly FittingPrice[];
  readonly devices: readonly DevicePrice[];
}
