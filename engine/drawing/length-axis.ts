/** What an axis of developed lengths is laid out from, by position in the network. */
export interface AxisTask {
  readonly parent: ArrayLike<number>;
  /** Developed length from the street to the end of each run, m. */
  readonly reach: ArrayLike<number>;
  /** Least length of each run on paper, points. */
  readonly least: ArrayLike<number>;
}

/**
 * Places of developed lengths on paper, points: rising with length, one place for one length, and stretched over the
 * stretches where a run is too short on the scale for what stands on it. The street is at 0.
 *
 * @param scale points per metre where nothing is stretched
 */
export function lengthAxis({ parent, reach, least }: AxisTask, scale: number): (length: number) => number {
  const order = [...Array.from(reach).keys()].sort((one, other) => reach[one]! - reach[other]!);
  const places = new Map<number, number>([[0, 0]]);
  const lengths = [0];
  for (const at of order) {
    const length = reach[at]!;
    const last = lengths.at(-1)!;
    const before = parent[at]! < 0 ? 0 : reach[parent[at]!]!;
    const wished = places.get(before)! + least[at]!;
    const onScale = places.get(last)! + (length - last) * scale;
    places.set(length, Math.max(places.get(length) ?? 0, wished, onScale));
    if (length > last) lengths.push(length);
  }
  return (length) => {
    const next = lengths.findIndex((one) => one >= length);
    if (next < 0) return places.get(lengths.at(-1)!)! + (length - lengths.at(-1)!) * scale;
    const to = lengths[next]!;
    if (to === length) return places.get(length)!;
    const from = lengths[next - 1]!;
    const share = (length - from) / (to - from);
    return places.get(from)! + share * (places.get(to)! - places.get(from)!);
  };
}
