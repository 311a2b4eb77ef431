import type { Locator, Source, Verification } from '../../tables/table.ts';
import type { UnitId } from '../../tables/units/definitions.ts';

export interface FormulaSymbol {
  readonly unit: UnitId;
  readonly meaning: string;
}

/**
 * One published formula: how it is printed, what its symbols mean and in which units its source prints them, and
 * its arithmetic in those same units.
 */
export interface Formula<S extends string = string> {
  readonly id: string;
  readonly title: string;
  readonly printed: string;
  /** How it is printed for terms that it takes another form for; undefined where that is `printed`. */
  readonly printedAt?: (terms: { readonly [name in S]: number }) => string | undefined;
  readonly source: { readonly source: Source; readonly at: Locator; readonly verified: Verification };
  readonly symbols: { readonly [name in S]: FormulaSymbol };
  readonly result: FormulaSymbol;
  readonly note?: string;
  /** Terms and result in the units that `symbols` and `result` name. */
  readonly compute: (terms: { readonly [name in S]: number }) => number;
}
