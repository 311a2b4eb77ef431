import type { Scheme } from '../job/job.ts';
import type { Defect } from './defect.ts';

/** Runs in an order where every run comes after the one that feeds it, a subtree being one stretch of positions. */
export interface Order {
  /** Index in the scheme's list, by position. */
  readonly indexAt: Int32Array;
  readonly parent: Int32Array;
  readonly subtreeEnd: Int32Array;
}

/**
 * Puts a scheme's flat list of runs, in whatever order it stands, into the order of the tree; siblings keep the
 * order of the list. Without recursion, so that depth has no limit; time grows with the number of runs.
 *
 * @returns the order, or every defect that keeps the list from being one tree
 */
export function orderRuns(scheme: Scheme): { ok: true; order: Order } | { ok: false; defects: Defect[] } {
  const { runs } = scheme;
  if (runs.length === 0) return { ok: false, defects: [{ code: 'no-runs', scheme: scheme.id }] };
  const defects: Defect[] = [];
  const indexOf = new Map<string, number>();
  runs.forEach((run, index) => {
    // Left out of the names: what comes from `street` comes from the street.
    if (run.id === 'street') defects.push({ code: 'run-named-street', run: run.id });
    else if (indexOf.has(run.id)) defects.push({ code: 'run-twice', run: run.id });
    else indexOf.set(run.id, index);
  });

  const firstChild = new Int32Array(runs.length).fill(-1);
  const nextSibling = new Int32Array(runs.length).fill(-1);
  const roots: number[] = [];
  for (let index = runs.length - 1; index >= 0; index--) {
    const run = runs[index]!;
    if (run.from === 'street') {
      roots.unshift(index);
      continue;
    }
    const from = indexOf.get(run.from);
    if (from === undefined) {
      defects.push({ code: 'parent-missing', run: run.id, from: run.from });
      continue;
    }
    nextSibling[index] = firstChild[from]!;
    firstChild[from] = index;
  }
  if (roots.length > 1) {
    defects.push({ code: 'several-services', runs: roots.map((index) => runs[index]!.id) });
  }
  for (const loop of findLoops(scheme, indexOf)) defects.push({ code: 'loop', runs: loop });
  if (defects.length > 0) return { ok: false, defects };
  // Runs of which none comes from the street, and all from each other, hold a loop: here there is a first one.
  return { ok: true, order: walk(roots[0]!, firstChild, nextSibling) };
}

function walk(root: number, firstChild: Int32Array, nextSibling: Int32Array): Order {
  const size = firstChild.length;
  const indexAt = new Int32Array(size);
  const parent = new Int32Array(size);
  const subtreeEnd = new Int32Array(size);
  const pendingIndex = new Int32Array(size);
  const pendingParent = new Int32Array(size);
  let pending = 0;
  pendingIndex[pending] = root;
  pendingParent[pending++] = -1;
  let position = 0;
  while (pending > 0) {
    const index = pendingIndex[--pending]!;
    indexAt[position] = index;
    parent[position] = pendingParent[pending]!;
    let children = 0;
    for (let child = firstChild[index]!; child !== -1; child = nextSibling[child]!) {
      pendingIndex[pending + children] = child;
      pendingParent[pending + children] = position;
      children++;
    }
    // The stack gives back the last first; turned round, siblings keep the order of the list.
    pendingIndex.subarray(pending, pending + children).reverse();
    pending += children;
    position++;
  }
  subtreeEnd.fill(0);
  for (let at = size - 1; at >= 0; at--) {
    if (subtreeEnd[at] === 0) subtreeEnd[at] = at + 1;
    const above = parent[at]!;
    if (above >= 0 && subtreeEnd[above]! < subtreeEnd[at]!) subtreeEnd[above] = subtreeEnd[at]!;
  }
  return { indexAt, parent, subtreeEnd };
}

/** The runs of every loop, each in order of flow. */
function findLoops(scheme: Scheme, indexOf: ReadonlyMap<string, number>): string[][] {
  const { runs } = scheme;
  const loops: string[][] = [];
  const seenOnWalk = new Int32Array(runs.length).fill(-1);
  for (let start = 0; start < runs.length; start++) {
    let at: number | undefined = start;
    while (at !== undefined && seenOnWalk[at] === -1) {
      seenOnWalk[at] = start;
      at = indexOf.get(runs[at]!.from);
    }
    if (at === undefined || seenOnWalk[at] !== start) continue;
    const loop: string[] = [];
    for (let member = at; loop.length === 0 || member !== at; member = indexOf.get(runs[member]!.from)!) {
      loop.push(runs[member]!.id);
    }
    loops.push(loop.reverse());
  }
  return loops;
}
