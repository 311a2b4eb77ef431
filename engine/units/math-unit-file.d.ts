/** The one inner file of mathjs that is loaded, and only the part of it that is called. */
declare module '*/mathjs/lib/esm/type/unit/Unit.js' {
  export interface MathUnit {
    equalBase(other: MathUnit): boolean;
    toNumeric(unit: MathUnit): number;
    readonly dimensions: readonly number[];
  }
  export interface MathUnitClass {
    new (value: number | null, unit: string): MathUnit;
    isValuelessUnit(word: string): boolean;
    createUnit(
      definitions: { readonly [name: string]: { readonly definition?: string } },
      options?: { readonly override: boolean },
    ): unknown;
    readonly BASE_UNITS: { readonly [name: string]: { readonly dimensions: readonly number[] } };
  }
  export function createUnitClass(parts: { readonly [part: string]: unknown }): MathUnitClass;
}
