/** The columns of a price book as a table, in the order in which they are written, with what stands in each. */
export const priceColumns = {
  item: 'pipe, fitting, device or part',
  kind: 'which fitting, device or part, by its key; empty for pipe',
  material: 'key of the pipe’s material; of a part, empty for any',
  joint: 'key of the way of joining; for fittings, and for parts of one material',
  size: 'nominal size, such as 3/4 in; of a tee 1 in x 3/4 in x 1/2 in; of a device its size, type or name',
  valved: 'yes or no, for a manifold only',
  unit: 'ft or each, as the item is sold; empty means the item’s own',
  price: 'money with a point and at most 4 decimals, no sign and no commas; never empty',
  hours: 'hours of labor for one unit, from 0 to 1000; never empty',
  'price per port': 'for a manifold only',
  'hours per port': 'for a manifold only',
  currency: 'three letters; where it is given it must be the book’s',
  book: 'the book’s name; not read, but a line that starts with INVENTED is kept in an invented book only',
} as const;

export type PriceColumn = keyof typeof priceColumns;

/** Before the name of an invented book wherever its prices leave the program. */
export const inventedMark = 'INVENTED: ';
