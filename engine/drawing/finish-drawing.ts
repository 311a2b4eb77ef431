import { lineBox, textBox } from './box.ts';
import { lineStep, textSize } from './place-texts.ts';
import type { Box, DrawingWords, KeyLine, PlacedDrawing, PlacedText, Point } from './placed.ts';
import { moved } from './symbols.ts';
import { textWidth } from './text-width.ts';

/** A drawing about some origin of its own, before its paper is cut. */
export type Loose = Omit<PlacedDrawing, 'width' | 'height' | 'keys'>;

const margin = 6;
const sample = 26;

/** Cuts the paper around a drawing and sets the key below it. */
export function finishDrawing(loose: Loose, words: DrawingWords): PlacedDrawing {
  const around = boundsOf(loose);
  const across = margin - around.left;
  const down = margin - around.top;
  const drawn = shifted(loose, across, down);
  const key = keyBelow(drawn, words, around.right + across, around.bottom + down + 14);
  return {
    ...drawn,
    width: Math.ceil(Math.max(around.right + across, key.right) + margin),
    height: Math.ceil(key.bottom + margin),
    keys: key.keys,
    texts: [...drawn.texts, ...key.texts],
  };
}

function boundsOf({ sheetLines, pipes, symbols, leaders, texts }: Loose): Box {
  const boxes = [
    ...sheetLines.map(({ from, to }) => lineBox(from, to, 1)),
    ...leaders.map(({ from, to }) => lineBox(from, to, 1)),
    ...pipes.flatMap(({ way, weight }) => way.map((point) => lineBox(point, point, weight + 6))),
    ...symbols.map(({ box }) => box),
    ...texts.map(({ box }) => box),
  ];
  return boxes.reduce((one, other) => ({
    left: Math.min(one.left, other.left),
    top: Math.min(one.top, other.top),
    right: Math.max(one.right, other.right),
    bottom: Math.max(one.bottom, other.bottom),
  }));
}

function shifted(loose: Loose, x: number, y: number): Loose {
  const at = <P extends Point>(point: P): P => ({ ...point, x: point.x + x, y: point.y + y });
  const line = <L extends { readonly from: Point; readonly to: Point }>(one: L): L => ({
    ...one,
    from: at(one.from),
    to: at(one.to),
  });
  const boxed = <B extends { readonly box: Box }>(one: B): B => ({ ...one, box: moved(one.box, x, y) });
  return {
    ...loose,
    datum: loose.datum + (loose.view === 'riser' ? y : x),
    sheetLines: loose.sheetLines.map(line),
    bands: loose.bands.map((band) => band.map(at)),
    pipes: loose.pipes.map((pipe) => ({
      ...pipe,
      way: pipe.way.map(at),
      pieces: pipe.pieces.map((piece) => piece.map(at)),
    })),
    joints: loose.joints.map(at),
    symbols: loose.symbols.map(boxed),
    leaders: loose.leaders.map(line),
    texts: loose.texts.map((text) => boxed(at(text))),
  };
}

/** Sample lines with their words in rows as wide as the drawing. */
function keyBelow({ pipes }: Loose, words: DrawingWords, right: number, top: number) {
  const shown: KeyLine['what'][] = [
    'cold',
    ...(pipes.some(({ hot }) => hot) ? (['hot'] as const) : []),
    ...(pipes.some(({ worst }) => worst) ? (['worst'] as const) : []),
  ];
  const keys: KeyLine[] = [];
  const texts: PlacedText[] = [];
  let x = margin;
  let y = top + lineStep;
  let widest = 0;
  for (const what of shown) {
    const text = words.key[what];
    const width = sample + 6 + textWidth(text, textSize, false);
    if (x > margin && x + width > right) {
      x = margin;
      y += lineStep + 3;
    }
    keys.push({
      what,
      from: { x, y: y - textSize * 0.3 },
      to: { x: x + sample, y: y - textSize * 0.3 },
      weight: 2.4,
    });
    const start = { x: x + sample + 6, y };
    texts.push({
      role: 'key',
      run: -1,
      text,
      ...start,
      turned: false,
      size: textSize,
      bold: false,
      box: textBox(start, text, textSize, false, false),
    });
    x += width + 18;
    widest = Math.max(widest, x - 18);
  }
  return { keys, texts, right: widest, bottom: y + 4 };
}
