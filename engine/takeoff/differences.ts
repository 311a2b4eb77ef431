import type { Decimal } from 'decimal.js';
import { type Article, articleKey } from './article.ts';
import { articleOrder } from './gather-lines.ts';
import { nothing } from './money.ts';
import type { TakeOff, TakeOffLine } from './take-off.ts';

/** How much of an article one take-off has, and another. */
export interface Difference {
  readonly article: Article;
  readonly unit: TakeOffLine['unit'];
  readonly before: Decimal;
  readonly after: Decimal;
  /** What is added, or dropped; over zero. */
  readonly by: Decimal;
}

export interface Differences {
  readonly added: readonly Difference[];
  readonly dropped: readonly Difference[];
}

/**
 * What is added and what is dropped from one take-off to another: by article, over all phases, areas and services, as
 * it is bought. A tee that changes a size is one tee dropped and another added.
 */
export function differences(before: Pick<TakeOff, 'lines'>, after: Pick<TakeOff, 'lines'>): Differences {
  const was = totals(before);
  const is = totals(after);
  const added: Difference[] = [];
  const dropped: Difference[] = [];
  for (const [key, { article, unit }] of new Map([...was, ...is])) {
    const one = was.get(key)?.quantity ?? nothing;
    const other = is.get(key)?.quantity ?? nothing;
    const more = other.minus(one);
    if (more.isZero()) continue;
    const difference = { article, unit, before: one, after: other, by: more.abs() };
    (more.isNegative() ? dropped : added).push(difference);
  }
  const inOrder = (one: Difference, other: Difference): number => articleOrder(one.article, other.article);
  return { added: added.sort(inOrder), dropped: dropped.sort(inOrder) };
}

/** How much of each article there is in all. */
export interface ArticleTotal {
  readonly article: Article;
  readonly unit: TakeOffLine['unit'];
  readonly quantity: Decimal;
}

/** A take-off by article key, over all phases, areas and services, in the order of its lines. */
export function totals({ lines }: Pick<TakeOff, 'lines'>): ReadonlyMap<string, ArticleTotal> {
  const sums = new Map<string, ArticleTotal>();
  for (const { article, unit, quantity } of lines) {
    const key = articleKey(article);
    sums.set(key, { article, unit, quantity: quantity.plus(sums.get(key)?.quantity ?? 0) });
  }
  return sums;
}
