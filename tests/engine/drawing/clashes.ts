import { overlap } from '../../../engine/drawing/box.ts';
import type { Box, PlacedDrawing } from '../../../engine/drawing/placed.ts';

/** Pairs of boxes that share paper: texts with each other, with symbols of others, and with pipes. */
export function clashes(drawing: PlacedDrawing): string[] {
  const { texts, symbols, pipes } = drawing;
  const found: string[] = [];
  const meet = (text: string, box: Box, other: string, otherBox: Box): void => {
    if (overlap(box, otherBox)) found.push(`${text} on ${other}`);
  };
  texts.forEach(({ text, box, role }, at) => {
    for (const other of texts.slice(at + 1)) meet(text, box, other.text, other.box);
    if (role === 'symbol') return;
    for (const symbol of symbols) meet(text, box, `symbol of ${symbol.run}`, symbol.box);
    for (const { way, weight, run: of } of pipes) {
      for (let part = 1; part < way.length; part++) {
        const [from, to] = [way[part - 1]!, way[part]!];
        meet(text, box, `pipe ${of}`, {
          left: Math.min(from.x, to.x) - weight / 2,
          right: Math.max(from.x, to.x) + weight / 2,
          top: Math.min(from.y, to.y) - weight / 2,
          bottom: Math.max(from.y, to.y) + weight / 2,
        });
      }
    }
  });
  return found;
}

/** Boxes that reach over the edge of the paper. */
export function outside({ texts, symbols, width, height }: PlacedDrawing): Box[] {
  return [...texts, ...symbols]
    .map(({ box }) => box)
    .filter(({ left, top, right, bottom }) => left < 0 || top < 0 || right > width || bottom > height);
}
