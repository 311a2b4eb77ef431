import type { Cited } from '../../tables/table.ts';
import type { UnitId } from '../../tables/units/definitions.ts';
import type { Formula } from './formula.ts';

/** A value with its story, SI. */
export type Explained =
  /** Somebody typed it. */
  | {
      readonly from: 'given';
      readonly value: number;
      readonly unit: UnitId;
      readonly field: string;
      readonly typed: string;
    }
  /** A published value. */
  | { readonly from: 'table'; readonly value: number; readonly cite: Cited }
  /** An earlier step. */
  | { readonly from: 'step'; readonly value: number; readonly step: string };

/** One formula applied once. */
export interface Step {
  /** `<run or fixture>.<quantity>`, e.g. `T3.velocity`. */
  readonly id: string;
  readonly formula: Formula;
  readonly value: number;
  readonly terms: Readonly<Record<string, Explained>>;
}

/** A flat map of steps, each after those it uses. */
export type Steps = ReadonlyMap<string, Step>;
