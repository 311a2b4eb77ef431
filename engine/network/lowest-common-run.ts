/**
 * Answers which run is the last one that feeds both of two runs. Heavy paths: preparation takes time in proportion
 * to the runs, a question in proportion to the logarithm of their number, at any depth.
 *
 * @param parent position of the feeding run, which stands before it; -1 for the first
 * @param subtreeEnd one past the last position fed by each run
 */
export function lowestCommonRun(
  parent: Int32Array,
  subtreeEnd: Int32Array,
): (one: number, other: number) => number {
  const size = parent.length;
  const heavy = new Int32Array(size).fill(-1);
  for (let at = 1; at < size; at++) {
    const above = parent[at]!;
    const rival = heavy[above]!;
    if (rival === -1 || subtreeEnd[at]! - at > subtreeEnd[rival]! - rival) heavy[above] = at;
  }
  const head = new Int32Array(size);
  for (let at = 0; at < size; at++) {
    const above = parent[at]!;
    head[at] = above >= 0 && heavy[above] === at ? head[above]! : at;
  }
  return (one, other) => {
    let a = one;
    let b = other;
    while (head[a] !== head[b]) {
      // A head that stands later cannot feed the other run, so the answer lies above it.
      if (head[a]! > head[b]!) a = parent[head[a]!]!;
      else b = parent[head[b]!]!;
    }
    return Math.min(a, b);
  };
}
