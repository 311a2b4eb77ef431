/** Table values have two decimals; sums of them are brought back from the noise of binary fractions. */
const grain = 1e6;

/**
 * Sums what each run adds over all the runs that it feeds, in one pass from the taps to the street.
 *
 * @param parent position of the feeding run, which stands before it; -1 for the first
 */
export function sumAlong(parent: Int32Array, added: Float64Array): Float64Array {
  const sums = Float64Array.from(added);
  for (let at = parent.length - 1; at > 0; at--) sums[parent[at]!]! += sums[at]!;
  return sums;
}

/** The same for values that a table prints, each sum without the noise of binary fractions. */
export function sumPrinted(parent: Int32Array, added: Float64Array): Float64Array {
  const sums = Float64Array.from(added);
  for (let at = parent.length - 1; at >= 0; at--) {
    sums[at] = Math.round(sums[at]! * grain) / grain;
    if (at > 0) sums[parent[at]!]! += sums[at]!;
  }
  return sums;
}

/** The largest of what each run has and what the runs that it feeds have. */
export function largestAlong<T extends Float64Array | Uint8Array>(parent: Int32Array, own: T): T {
  const largest = own.slice() as T;
  for (let at = parent.length - 1; at > 0; at--) {
    const above = parent[at]!;
    if (largest[at]! > largest[above]!) largest[above] = largest[at]!;
  }
  return largest;
}
