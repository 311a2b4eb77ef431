/**
 * The order of a merged list. Who moved things gives the order; what the other added stands behind the thing that it
 * stood behind there. Where both moved things, `mine` decides.
 *
 * @param ids of everything that is in the merged list
 */
export function mergeOrder(
  base: readonly string[],
  mine: readonly string[],
  theirs: readonly string[],
  ids: ReadonlySet<string>,
): readonly string[] {
  const [trunk, other] = keepsOrder(base, mine) ? [theirs, mine] : [mine, theirs];
  const order = trunk.filter((id) => ids.has(id));
  const placed = new Set(order);
  other.forEach((id, index) => {
    if (!ids.has(id) || placed.has(id)) return;
    const before = other.slice(0, index).findLast((candidate) => placed.has(candidate));
    order.splice(before === undefined ? 0 : order.indexOf(before) + 1, 0, id);
    placed.add(id);
  });
  return order;
}

/** Whether what is left of the base stands in the same order. */
function keepsOrder(base: readonly string[], list: readonly string[]): boolean {
  const kept = new Set(list);
  const had = new Set(base);
  const was = base.filter((id) => kept.has(id));
  const is = list.filter((id) => had.has(id));
  return was.every((id, index) => id === is[index]);
}
