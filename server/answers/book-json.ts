import type { PriceBook } from '../../engine/index.ts';

/** Whose prices an answer rests on, for programs. */
export function bookJson({ name, invented, currency, effective, source }: PriceBook): object {
  return { name, invented, currency, effective, source };
}
