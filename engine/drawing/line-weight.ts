/** Width of the line of a pipe, points, by its bore, m: so that each size in stock is told from the next. */
export function lineWeight(bore: number): number {
  return Math.min(7, 0.3 + 100 * bore);
}
