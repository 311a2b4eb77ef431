import type { Article, Pipe } from './article.ts';
import type { Question } from './question.ts';

/** Parts that one place of the drawing asks for. */
export interface Piece {
  readonly article: Article;
  readonly count: number;
  /** Position of the run to whose level, phase and service it belongs. */
  readonly at: number;
  /** Positions of the runs that it comes from. */
  readonly from: readonly number[];
  /** Ends of pipe that one of it takes in. */
  readonly ends: readonly Pipe[];
  /** Put in after the walls are closed. */
  readonly trim?: true;
}

/** What a rule makes of one place: parts, and what the drawing leaves open. */
export interface Counted {
  readonly pieces: readonly Piece[];
  readonly questions: readonly Question[];
}
