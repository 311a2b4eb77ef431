import type { Article } from './article.ts';

/** What a price of a part is for: two prices with the same key are for the same parts. */
export function partKey({
  kind,
  material,
  joint,
  sizes = [],
}: Pick<Article, 'kind' | 'material' | 'joint'> & { readonly sizes?: readonly string[] }): string {
  return JSON.stringify([kind, material, joint, sizes]);
}
