import type { Network } from '../network/network.ts';
import { lineStep, type Spot, textSize, type WantedText } from './place-texts.ts';
import type { Box, DrawingWords, Point, SymbolShape } from './placed.ts';
import { type EndSide, spotsAround, spotsAtEnd } from './spots.ts';
import { barBox, moved, shapeOf, symbolBox } from './symbols.ts';
import { textWidth } from './text-width.ts';

/** Clear paper between a bare end of a pipe and the text at it, points. */
const bareReach = 4;

/** What stands at the end of a run: a device's symbol, and the words of a fixture or a device. */
export interface AtEnd {
  readonly shape: SymbolShape | undefined;
  readonly letters: string;
  /** The symbol about (0, 0); undefined where the pipe ends bare or goes on. */
  readonly symbol: Box | undefined;
  /** Nothing goes on from here. */
  readonly last: boolean;
  readonly wordings: readonly (readonly string[])[];
}

export function atEnds(network: Network, words: DrawingWords): AtEnd[] {
  return network.runs.map(({ end }, at): AtEnd => {
    const device = end !== undefined && 'device' in end ? end : undefined;
    const shape = device === undefined ? undefined : shapeOf(device);
    const letters = shape === undefined || shape === 'bar' ? '' : words.symbol(at);
    return {
      shape,
      letters,
      symbol: shape === undefined ? undefined : shape === 'bar' ? barBox(0) : symbolBox(shape, letters),
      last: network.subtreeEnd[at] === at + 1,
      wordings: end === undefined ? [] : words.end(at),
    };
  });
}

/** Whether the text at the end of a run also names the run, so that its pipe needs no name of its own. */
export function namesItsRun({ last, wordings }: AtEnd): boolean {
  return last && wordings.length > 0;
}

/** Where the text at the last end of a run is wished: the first of its spots, about (0, 0). */
export function wishedBox({ wordings, symbol }: AtEnd, fromAbove: boolean, bold: boolean): Box | undefined {
  const lines = wordings[0];
  if (lines === undefined) return undefined;
  const width = widest(lines, bold);
  const height = lines.length * lineStep;
  const reach = reachOf(symbol);
  return fromAbove
    ? { left: -height / 2 - 1, right: height / 2 + 1, top: reach, bottom: reach + width + 1 }
    : { left: -height / 2 - 1, right: height / 2 + 1, top: -reach - width - 1, bottom: -reach };
}

/** The text at the end of a run with its places. */
export function wantedAtEnd(
  run: number,
  end: AtEnd,
  at: Point,
  symbol: Box | undefined,
  side: EndSide,
  bold: boolean,
): WantedText {
  const spots = (width: number, lines: number): readonly Spot[] =>
    end.last || symbol === undefined
      ? spotsAtEnd(at, side === 'right' ? aheadOf(end.symbol) : reachOf(end.symbol), side, width, lines)
      : spotsAround(symbol, width, lines);
  return { role: 'end', run, bold, wordings: end.wordings, spots };
}

/** Letters in the middle of a symbol: they need no search. */
export function lettersIn(box: Box, letters: string): Point {
  return {
    x: (box.left + box.right) / 2 - textWidth(letters, textSize, true) / 2,
    y: (box.top + box.bottom) / 2 + textSize * 0.36,
  };
}

export function symbolAt(end: AtEnd, at: Point, barReach: number): Box | undefined {
  if (end.symbol === undefined) return undefined;
  return moved(end.shape === 'bar' ? barBox(barReach) : end.symbol, at.x, at.y);
}

function reachOf(symbol: Box | undefined): number {
  return symbol === undefined ? bareReach : symbol.bottom + 2;
}

function aheadOf(symbol: Box | undefined): number {
  return symbol === undefined ? bareReach : symbol.right + 2;
}

function widest(lines: readonly string[], bold: boolean): number {
  return lines.reduce((width, line) => Math.max(width, textWidth(line, textSize, bold)), 0);
}
