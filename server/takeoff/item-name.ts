import type { TakeOffLine } from '../../engine/index.ts';
import { articleName } from '../../engine/takeoff/article.ts';

type Article = TakeOffLine['article'];

/** The sizes of an article with their unit: `1 x 1 x 3/4 in`; an arrester's size is a letter, all others are inches. */
export function sizesText(sizes: readonly string[]): string {
  const inches = sizes.some((size) => /^\d/.test(size)) ? ' in' : '';
  return `${sizes.join(' x ')}${inches}`;
}

/** An article where a count stands beside it, which its size must not be taken for: `2 in pipe, copper type K`. */
export function itemName(article: Article): string {
  return `${sizesText(article.sizes)} ${articleName({ ...article, sizes: [] })}`.trim();
}
