import type { Run } from '../../engine/job/job.ts';
import type { LedgerLine } from '../../engine/network/report.ts';
import { endWord } from '../text/loss-step.ts';

/** One step of the staircase: what it stands for, pressure before and after, Pa, and the ledger lines it gathers. */
export interface Stair {
  readonly label: readonly [run: string, what: string];
  readonly before: number;
  readonly after: number;
  readonly lines: readonly number[];
}

const mostSteps = 14;

/** Below this a loss is not seen: 0.01 psi. */
const negligible = 69;

/**
 * The steps that a path is drawn with. Pipe and fittings of a run make one step, its device and its rise one each;
 * on a long path the smallest neighbours are merged until the steps can be read.
 */
export function stairsOf(lines: readonly LedgerLine[], runs: readonly Run[]): readonly Stair[] {
  const steps: Stair[] = [];
  lines.forEach((line, index) => {
    const run = runs[line.run]!;
    const last = steps.at(-1);
    if (
      line.what === 'fittings' &&
      last !== undefined &&
      last.label[0] === run.id &&
      last.label[1] === 'pipe'
    ) {
      steps[steps.length - 1] = { ...last, after: line.after, lines: [...last.lines, index] };
      return;
    }
    steps.push({
      label: [run.id, wordFor(line, run)],
      before: line.before,
      after: line.after,
      lines: [index],
    });
  });
  const seen = steps.filter((step) => Math.abs(step.before - step.after) >= negligible);
  while (seen.length > mostSteps) mergeSmallest(seen);
  return seen;
}

function wordFor(line: LedgerLine, run: Run): string {
  switch (line.what) {
    case 'pipe':
    case 'fittings':
      return 'pipe';
    case 'device':
      return endWord(run);
    case 'elevation':
      return line.loss < 0 ? 'drop' : 'rise';
  }
}

/** `pipe, rise`; from three kinds on they are only counted. */
function together(first: string, second: string): string {
  if (/^\d+ kinds$/.test(first)) return first;
  const kinds = new Set([...first.split(', '), ...second.split(', ')]);
  return kinds.size > 2 ? `${kinds.size} kinds` : [...kinds].join(', ');
}

function mergeSmallest(steps: Stair[]): void {
  let at = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 1 < steps.length; i++) {
    const size =
      Math.abs(steps[i]!.before - steps[i]!.after) + Math.abs(steps[i + 1]!.before - steps[i + 1]!.after);
    if (size < least) {
      least = size;
      at = i;
    }
  }
  const first = steps[at]!;
  const second = steps[at + 1]!;
  const from = first.label[0].split('–')[0]!;
  const to = second.label[0].split('–').at(-1)!;
  steps.splice(at, 2, {
    label: [from === to ? from : `${from}–${to}`, together(first.label[1], second.label[1])],
    before: first.before,
    after: second.after,
    lines: [...first.lines, ...second.lines],
  });
}
