import { type Article, articleKey } from '../../../engine/takeoff/article.ts';
import type { Piece } from '../../../engine/takeoff/piece.ts';
import type { TakeOff, TakeOffLine } from '../../../engine/takeoff/take-off.ts';

/** An article in few words: `tee 1 x 1 x 3/4 pex`. */
export function short({ kind, sizes, material, to, type, ports }: Article): string {
  const words = [
    kind,
    sizes.join(' x '),
    material,
    to && `to ${to.material}`,
    type,
    ports && `${ports} ports`,
  ];
  return words.filter((word) => word !== undefined && word !== '').join(' ');
}

/** Quantities by article in few words, over the lines that are asked for. */
export function counted(
  { lines }: Pick<TakeOff, 'lines'>,
  wanted: (line: TakeOffLine) => boolean = () => true,
): Record<string, number> {
  const sums: Record<string, number> = {};
  for (const line of lines.filter(wanted)) {
    const key = short(line.article);
    sums[key] = (sums[key] ?? 0) + line.quantity.toNumber();
  }
  return sums;
}

/** Pieces of one rule, as `2 x ell 1/2 pex`. */
export function inWords(pieces: readonly Piece[]): string[] {
  return pieces.map(({ article, count }) => `${count} x ${short(article)}`);
}

/** Whether no article stands in two lines of one phase, area and service. */
export function isGathered({ lines }: Pick<TakeOff, 'lines'>): boolean {
  const keys = lines.map(
    ({ article, phase, area, service }) =>
      `${articleKey(article)} ${phase} ${JSON.stringify(area)} ${service}`,
  );
  return new Set(keys).size === keys.length;
}
