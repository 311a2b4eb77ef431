import type { Run } from '../../engine/job/job.ts';
import type { LedgerLine } from '../../engine/network/report.ts';

/** A ledger, and the runs that its lines point to. */
export interface PathLines {
  readonly lines: readonly LedgerLine[];
  readonly runs: readonly Run[];
}

/** One loss of a run on two paths, by its place in each ledger; -1 where that path has none. */
export interface PairedLine {
  readonly run: string;
  readonly what: LedgerLine['what'];
  readonly first: number;
  readonly second: number;
  /** What the second loses more than the first, Pa; a path without this step loses nothing by it. */
  readonly difference: number;
}

/**
 * Two ledgers as one, in the order of water: losses of the same kind in a run of the same id stand on one line. All
 * differences together are what the second path loses more than the first.
 */
export function pairLines(first: PathLines, second: PathLines): readonly PairedLine[] {
  const paired: PairedLine[] = [];
  const places = new Map(second.lines.map((line, at) => [keyOf(second, line), at]));
  let next = 0;
  const onlySecond = (until: number): void => {
    for (; next < until; next++) paired.push(pairOf(first, -1, second, next));
  };
  first.lines.forEach((line, at) => {
    const place = places.get(keyOf(first, line)) ?? -1;
    // A run that two layouts pass in another order is told twice, once for each.
    const met = place >= next ? place : -1;
    if (met >= 0) onlySecond(met);
    paired.push(pairOf(first, at, second, met));
    if (met >= 0) next = met + 1;
  });
  onlySecond(second.lines.length);
  return paired;
}

function keyOf({ runs }: PathLines, { run, what }: LedgerLine): string {
  return `${what} ${runs[run]!.id}`;
}

function pairOf(one: PathLines, first: number, other: PathLines, second: number): PairedLine {
  const before = one.lines[first];
  const after = other.lines[second];
  const line = before ?? after!;
  const { runs } = before === undefined ? other : one;
  return {
    run: runs[line.run]!.id,
    what: line.what,
    first,
    second,
    difference: (after?.loss ?? 0) - (before?.loss ?? 0),
  };
}
