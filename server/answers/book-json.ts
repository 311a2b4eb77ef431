import type { PriceBook } from '../../engine/index.ts';
import type { BookAnswer } from './schema-common.ts';

/** Whose prices an answer rests on, for programs. */
export function bookJson({ name, invented, currency, effective, source }: PriceBook): BookAnswer {
  return { name, invented, currency, effective, source };
}
