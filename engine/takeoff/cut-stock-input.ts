import type { PackOptions, Piece, StockLength, TooLong } from './cut-stock-model.ts';

const isLength = (length: number): boolean => Number.isSafeInteger(length) && length > 0;

/**
 * Holds a cut list to what packing can work with.
 *
 * @returns every piece that fits no stock and may not be spliced
 * @throws RangeError naming what is not a whole number, or stock with prices only in part
 */
export function checkCutList(
  pieces: readonly Piece[],
  stock: readonly StockLength[],
  { perCut = 0, shortestPart = 1 }: PackOptions,
): TooLong[] {
  if (stock.length === 0) throw new RangeError('stock is empty; expected one stock length or more');
  stock.forEach(({ length, price }, at) => {
    if (!isLength(length))
      throw new RangeError(`stock[${at}].length is ${length}; expected a whole number above 0`);
    if (price !== undefined && !isLength(price))
      throw new RangeError(`stock[${at}].price is ${price}; expected a whole number above 0`);
  });
  if (stock.some(({ price }) => price === undefined) && stock.some(({ price }) => price !== undefined))
    throw new RangeError('stock has prices in part; expected a price for every stock length or for none');
  if (!Number.isSafeInteger(perCut) || perCut < 0)
    throw new RangeError(`perCut is ${perCut}; expected a whole number, 0 or more`);
  if (!isLength(shortestPart))
    throw new RangeError(`shortestPart is ${shortestPart}; expected a whole number above 0`);
  const longestStock = Math.max(...stock.map(({ length }) => length));
  return pieces.flatMap(({ id, length, spliceable }, piece) => {
    if (!isLength(length))
      throw new RangeError(
        `pieces[${piece}].length is ${length} for run ${id}; expected a whole number above 0`,
      );
    return length > longestStock && !spliceable ? [{ id, piece, length, longestStock }] : [];
  });
}
