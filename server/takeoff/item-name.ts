import type { TakeOffLine } from '../../engine/index.ts';
import { articleName } from '../../engine/takeoff/article.ts';
import { sizeUnit } from '../../views/text/size-text.ts';

type Article = TakeOffLine['article'];

/**
 * The sizes of an article with their unit: `1 x 1 x 3/4 in`, `22x1 x 15x1 mm`, `3/4 in x 22x1 mm`; an arrester's size
 * is a letter and has none.
 */
export function sizesText(sizes: readonly string[]): string {
  return sizes
    .map((size, at) => {
      const unit = /^\d/.test(size) ? sizeUnit(size) : '';
      const next = sizes[at + 1];
      return unit === '' || (next !== undefined && sizeUnit(next) === unit) ? size : `${size} ${unit}`;
    })
    .join(' x ');
}

/** An article where a count stands beside it, which its size must not be taken for: `2 in pipe, copper type K`. */
export function itemName(article: Article): string {
  return `${sizesText(article.sizes)} ${articleName({ ...article, sizes: [] })}`.trim();
}
