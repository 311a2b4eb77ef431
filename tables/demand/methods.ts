import type { FixtureKindId } from '../fixtures/kinds.ts';
import type { CurveTable, GridTable } from '../table.ts';

/** Where a kind of fixture stands in a table of units, by use; `null` where it has no row: its flow is added whole. */
export interface UnitRows {
  readonly private: string | null;
  readonly public: string | null;
  /** Why a row of another name was taken. */
  readonly note?: string;
}

/**
 * Units of fixtures and the curve from their sum to flow. The two belong together: units of one code mean nothing on
 * the curve of another, whatever both are called.
 */
export interface UnitsAndCurve {
  readonly units: GridTable<string, 'cold' | 'hot' | 'total'>;
  readonly rows: { readonly [kind in FixtureKindId]: UnitRows };
  /**
   * The table counts taps: a run that serves both inlets of a fixture counts both. Otherwise such a run counts the
   * fixture once, by its total.
   */
  readonly eachInlet?: true;
  readonly curve: CurveTable;
  /** The next row up between two rows, whatever the basis says of its code's own table. */
  readonly roundUp?: true;
}

/** The demand methods that are published, each with the parameters that its source leaves open. */
export type PublishedDemand =
  | {
      /** The profile's own fixture units and curve. */
      readonly method: 'code-table';
    }
  | { readonly method: 'en-806-3' };

export type PublishedMethodId = PublishedDemand['method'];
