/** How much room the cells of a column ask for: unbroken, and with every line broken as short as words allow. */
export interface ColumnNeed {
  readonly widest: number;
  readonly least: number;
  /** A column of words may take room that is left over and give room that is missing. */
  readonly words: boolean;
}

/**
 * Shares the room of a table among its columns. Where everything fits unbroken, columns of words grow alike into what is left
 * over; where it does not, each gives in proportion to what it could give; where even the longest words do not fit,
 * all are narrowed alike and words are broken.
 */
export function columnWidths(needs: readonly ColumnNeed[], room: number): number[] {
  const widest = sum(needs.map((need) => need.widest));
  const least = sum(needs.map((need) => need.least));
  if (widest <= room) {
    const words = sum(needs.map((need) => (need.words ? need.widest : 0)));
    const more = words === 0 ? 0 : (room - widest) / words;
    return needs.map((need) => need.widest * (need.words ? 1 + more : 1));
  }
  if (least <= room) {
    const share = (room - least) / (widest - least);
    return needs.map((need) => need.least + share * (need.widest - need.least));
  }
  return needs.map((need) => (need.least * room) / least);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
