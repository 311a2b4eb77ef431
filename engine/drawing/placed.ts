/**
 * A drawing whose every line and text has its place. Points of 1/72 inch, x to the right, y **downwards** from the
 * top left corner; nothing of it lies outside width and height. Whoever shows it (SVG, PDF) draws, in this order:
 *
 * 1. `sheetLines`: thin lines of the sheet itself: floors, scale marks; already cut where text stands on them;
 * 2. `bands`: broad pale lines that lie under the worst path;
 * 3. `pipes`: each piece as a line with round joins, dashed where hot; pieces are already cut where another pipe
 *    passes in front; `keys` are drawn as pipes are, a band under the one that stands for the worst path;
 * 4. `joints`: filled dots where a pipe branches;
 * 5. `symbols`: a filled outline (paper) with its letters;
 * 6. `leaders`: thin lines from a text to what it names;
 * 7. `texts`: one line each. `x`, `y` is the start of the baseline; with `turned` the text reads upwards, so turn the
 *    paper by -90 degrees about that point. Widths were measured with the standard sans-serif of PDF readers,
 *    regular or bold, so that no text touches another.
 */
export interface PlacedDrawing {
  readonly view: 'riser' | 'plan';
  readonly width: number;
  readonly height: number;
  /** Scale of true heights in a riser; of developed lengths in a plan tree, where nothing is stretched. */
  readonly pointsPerMetre: number;
  /** Place of the datum on the scaled axis: y of height 0 in a riser, x of length 0 in a plan tree. */
  readonly datum: number;
  readonly sheetLines: readonly SheetLine[];
  readonly bands: readonly (readonly Point[])[];
  readonly pipes: readonly PlacedPipe[];
  readonly joints: readonly PlacedJoint[];
  readonly symbols: readonly PlacedSymbol[];
  readonly leaders: readonly Leader[];
  readonly texts: readonly PlacedText[];
  /** Positions of runs for whose name or end there was no room: the table beside the drawing names them. */
  readonly leftOut: readonly number[];
  /** Sample lines of the key below the drawing; their words are among the texts. */
  readonly keys: readonly KeyLine[];
}

export interface KeyLine {
  readonly what: 'cold' | 'hot' | 'worst';
  readonly from: Point;
  readonly to: Point;
  readonly weight: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A rectangle; `right > left`, `bottom > top`. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The pipe of one run. */
export interface PlacedPipe {
  /** Position in the network. */
  readonly run: number;
  readonly hot: boolean;
  readonly worst: boolean;
  /** Width of the line: it grows with the bore. */
  readonly weight: number;
  /** From the end of the run before it to its own end, whole. */
  readonly way: readonly Point[];
  /** The same in the pieces that are seen. */
  readonly pieces: readonly (readonly Point[])[];
}

export interface SheetLine {
  readonly what: 'floor' | 'mark';
  readonly from: Point;
  readonly to: Point;
}

export interface PlacedJoint extends Point {
  readonly run: number;
  readonly radius: number;
}

export type SymbolShape = 'circle' | 'box' | 'tank' | 'bar' | 'street';

/** What stands at the end of a run, as a plain outline about its box, with letters in it. */
export interface PlacedSymbol {
  /** -1 for the street. */
  readonly run: number;
  readonly shape: SymbolShape;
  readonly box: Box;
}

export interface Leader {
  readonly run: number;
  readonly from: Point;
  readonly to: Point;
}

/** What a text says: the run's name, what is at its end, letters in a symbol, a floor, a mark of the scale, the key. */
export type TextRole = 'run' | 'end' | 'symbol' | 'floor' | 'mark' | 'key';

export interface PlacedText extends Point {
  readonly role: TextRole;
  /** Position in the network; -1 where it is of no run. */
  readonly run: number;
  readonly text: string;
  readonly turned: boolean;
  readonly size: number;
  readonly bold: boolean;
  readonly box: Box;
}

/** The words of a drawing, in the reader's language and units; the engine only finds room for them. */
export interface DrawingWords {
  /** A run by its name, size and figures, the fullest first; the first that finds room is drawn. */
  readonly run: (position: number) => readonly string[];
  /**
   * What a run ends at, as lines one under the other. The drawing keeps room for the first or the second wording,
   * whichever makes it fit better on paper; where that fails, the first of the following that finds room is drawn.
   */
  readonly end: (position: number) => readonly (readonly string[])[];
  /** Letters in the symbol of a device. */
  readonly symbol: (position: number) => string;
  readonly street: string;
  /** A floor by its position among the levels of the job. */
  readonly floor: (level: number) => string;
  /** A round step for the marks of a scale up to this length, m. */
  readonly markStep: (longest: number) => number;
  /** A mark of the scale at a developed length, m. */
  readonly mark: (length: number) => string;
  readonly key: Readonly<Record<KeyLine['what'], string>>;
}
