import type { Network } from '../network/network.ts';
import { type AtEnd, lettersIn, namesItsRun, wantedAtEnd } from './at-ends.ts';
import { lineBox, textBox } from './box.ts';
import { piecesSeen } from './crossings.ts';
import type { Loose } from './finish-drawing.ts';
import { placeTexts, textSize, type WantedText } from './place-texts.ts';
import type { Box, DrawingWords, PlacedJoint, PlacedSymbol, PlacedText, Point } from './placed.ts';
import { spotsAlong, spotsAround } from './spots.ts';
import { nothingTaken, take, takeWay } from './taken.ts';

/** A drawing whose pipes and symbols have their places and whose texts have not. */
export interface Laid {
  readonly network: Network;
  readonly ends: readonly AtEnd[];
  /** Symbols where they stand. */
  readonly symbols: readonly (Box | undefined)[];
  readonly street: { readonly at: Point; readonly box: Box };
  readonly ways: readonly (readonly Point[])[];
  readonly weight: ArrayLike<number>;
  /** Runs of the worst path, and the last of them. */
  readonly worst: ReadonlySet<number>;
  readonly last: number | undefined;
  /** Pipes come level to their ends from the left: their names stand there, what they end at to the right. */
  readonly ahead?: boolean;
}

export interface Lettered {
  readonly parts: Pick<Loose, 'bands' | 'pipes' | 'joints' | 'symbols' | 'leaders' | 'texts' | 'leftOut'>;
  /** Boxes of texts and symbols. */
  readonly standing: readonly Box[];
  /** Boxes of the pipes' straight parts. */
  readonly pipeBoxes: readonly Box[];
  readonly content: Pick<Box, 'left' | 'right'>;
}

/**
 * Sets the texts of a drawing: what the runs end at first, then the names of the runs, those of the worst path before
 * the others and those that carry much before those that carry little.
 */
export function letterDrawing(laid: Laid, flow: ArrayLike<number>, words: DrawingWords): Lettered {
  const { network, ways, weight, worst } = laid;
  const taken = nothingTaken();
  for (const [at, way] of ways.entries()) takeWay(taken, way, weight[at]!);
  const symbols = symbolsOf(laid);
  for (const { box } of symbols) take(taken, box);
  const wanted = [streetText(laid, words), ...endTexts(laid), ...runTexts(laid, flow, words)];
  const placed = placeTexts(
    wanted,
    taken,
    symbols.map(({ box }) => box),
  );
  const texts = [...lettersOf(laid), ...placed.texts];
  const pieces = piecesSeen(ways, weight);
  const standing = [...symbols.map(({ box }) => box), ...texts.map(({ box }) => box)];
  const pipes = ways.map((way, run) => ({
    run,
    hot: network.hot[run] === 1,
    worst: worst.has(run),
    weight: weight[run]!,
    way,
    pieces: pieces[run]!,
  }));
  const pipeBoxes = ways.flatMap((way, at) =>
    way.slice(1).map((to, index) => lineBox(way[index]!, to, weight[at]!)),
  );
  return {
    parts: {
      bands: pipes.filter((pipe) => pipe.worst).map(({ way }) => way),
      pipes,
      joints: jointsOf(laid),
      symbols,
      leaders: placed.leaders,
      texts,
      leftOut: placed.leftOut,
    },
    standing,
    pipeBoxes,
    content: between([...standing, ...pipeBoxes]),
  };
}

function symbolsOf({ ends, symbols, street }: Laid): PlacedSymbol[] {
  const devices = symbols.flatMap((box, run) =>
    box === undefined ? [] : [{ run, shape: ends[run]!.shape!, box }],
  );
  return [{ run: -1, shape: 'street', box: street.box }, ...devices];
}

function lettersOf({ ends, symbols }: Laid): PlacedText[] {
  return symbols.flatMap((box, run) => {
    const { letters } = ends[run]!;
    if (box === undefined || letters === '') return [];
    const at = lettersIn(box, letters);
    const own = textBox(at, letters, textSize, true, false);
    return [
      {
        role: 'symbol' as const,
        run,
        text: letters,
        ...at,
        turned: false,
        size: textSize,
        bold: true,
        box: own,
      },
    ];
  });
}

/** Dots where a pipe branches; a manifold's bar needs none. */
function jointsOf({ network, ends, ways, weight }: Laid): PlacedJoint[] {
  const fed = new Int32Array(network.size);
  for (const above of network.parent) if (above >= 0) fed[above]!++;
  return ways.flatMap((way, run) => {
    const end = way.at(-1);
    if (end === undefined || fed[run]! < 2 || ends[run]!.symbol !== undefined) return [];
    return [{ run, ...end, radius: weight[run]! / 2 + 1.1 }];
  });
}

function streetText({ street }: Laid, words: DrawingWords): WantedText {
  return {
    role: 'end',
    run: -1,
    bold: false,
    wordings: [[words.street]],
    spots: (width, lines) => spotsAround(street.box, width, lines),
  };
}

function endTexts({ ends, ways, symbols, last, ahead = false }: Laid): WantedText[] {
  const wanted = ends.flatMap((end, run) => {
    if (end.wordings.length === 0) return [];
    const way = ways[run]!;
    const at = way.at(-1)!;
    const side = ahead ? 'right' : way[0]!.y < at.y ? 'below' : 'above';
    return [wantedAtEnd(run, end, at, symbols[run], side, run === last)];
  });
  return wanted.sort((one, other) => Number(other.run === last) - Number(one.run === last));
}

function runTexts(
  { ends, ways, weight, worst, ahead = false }: Laid,
  flow: ArrayLike<number>,
  words: DrawingWords,
): WantedText[] {
  return [...ways.keys()]
    .filter((run) => !namesItsRun(ends[run]!))
    .sort((one, other) => Number(worst.has(other)) - Number(worst.has(one)) || flow[other]! - flow[one]!)
    .map((run) => ({
      role: 'run',
      run,
      bold: worst.has(run),
      wordings: words.run(run).map((wording) => [wording]),
      spots: (width, lines) =>
        spotsAlong(ahead ? ways[run]!.slice(-2) : ways[run]!, weight[run]!, width, lines),
    }));
}

function between(boxes: readonly Pick<Box, 'left' | 'right'>[]): Pick<Box, 'left' | 'right'> {
  let [left, right] = [Infinity, -Infinity];
  for (const box of boxes) {
    left = Math.min(left, box.left);
    right = Math.max(right, box.right);
  }
  return { left, right };
}
