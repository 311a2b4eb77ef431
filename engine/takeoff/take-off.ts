import type { Decimal } from 'decimal.js';
import type { Cited } from '../../tables/table.ts';
import type { PhaseId, ServiceId } from '../../tables/takeoff/part-kinds.ts';
import type { TakeOffRuleId } from '../../tables/takeoff/rules.ts';
import type { Article } from './article.ts';
import type { InsulationRule } from './insulation.ts';
import type { PipePiece } from './pipe-pieces.ts';
import type { Area } from './place-of-runs.ts';
import type { Question } from './question.ts';

/** What the drawing does not say; each has a usual answer. */
export interface TakeOffOptions {
  /** The energy code's rule where it is left out. */
  readonly insulation?: InsulationRule;
  /** At each inlet of an indoor fixture; the rule of thumb where it is left out. */
  readonly nailPlatesPerInlet?: number;
  /** Ids of the runs that lie underground; by rule where it is left out. */
  readonly underground?: readonly string[];
}

/** One line: so much of an article, for one phase, area and service. */
export interface TakeOffLine {
  readonly article: Article;
  readonly unit: 'each' | 'ft';
  readonly quantity: Decimal;
  readonly phase: PhaseId;
  readonly area: Area;
  readonly service: ServiceId;
  /** The runs that each part of it comes from: a tee from three, an ell from one. The quantities add up to its own. */
  readonly from: readonly { readonly runs: readonly string[]; readonly quantity: Decimal }[];
}

/** What is loaded on the truck for one scheme, fixtures and tools aside. */
export interface TakeOff {
  readonly scheme: { readonly id: string; readonly name: string };
  /** By kind, material, size, phase, area and service. */
  readonly lines: readonly TakeOffLine[];
  /** The pipe in the lengths that are cut, in the order of the runs. */
  readonly pieces: readonly PipePiece[];
  readonly questions: readonly Question[];
  /** How it was counted, to be shown with it. */
  readonly rules: readonly TakeOffRuleId[];
  /** Table values and rules of thumb that it rests on, each once. */
  readonly cited: readonly Cited[];
}
