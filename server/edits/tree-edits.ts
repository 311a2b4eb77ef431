import type { Job, Run } from '../../engine/job/job.ts';
import { nextId } from '../../engine/job/next-id.ts';
import { parseRunLine } from '../../engine/job/parse-run-line.ts';
import { orderRuns } from '../../engine/network/order-runs.ts';
import { changed, chosenScheme, type Edited, refused, withRuns } from './edited.ts';

/** A run in the outline: what stands at and below it is one stretch of the list. */
interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** The chosen scheme's runs as the outline shows them, from the street outwards. */
interface Outline {
  readonly runs: readonly Run[];
  /** `undefined` where there is no such run. */
  readonly stretchOf: (id: string) => Stretch | undefined;
}

function outlineOf(job: Job): Outline {
  const scheme = chosenScheme(job);
  const ordered = orderRuns(scheme);
  if (!ordered.ok) throw new Error(`the runs of scheme ${scheme.id} make no tree`);
  const { indexAt, subtreeEnd } = ordered.order;
  const runs = Array.from(indexAt, (index) => scheme.runs[index]!);
  return {
    runs,
    stretchOf: (id) => {
      const start = runs.findIndex((run) => run.id === id);
      return start < 0 ? undefined : { start, end: subtreeEnd[start]! };
    },
  };
}

/** What one of the moves below does to the runs, or why it cannot. */
type Move = (outline: Outline, run: Run, at: Stretch) => readonly Run[] | string;

function movedBy(move: Move): (job: Job, id: string) => Edited {
  return (job, id) => {
    const outline = outlineOf(job);
    const at = outline.stretchOf(id);
    if (at === undefined) return refused({ '': `There is no run ${id}.` });
    const runs = move(outline, outline.runs[at.start]!, at);
    return typeof runs === 'string' ? refused({ '': runs }) : changed(withRuns(job, runs));
  };
}

/** The run fed by the same one that stands next before (-1) or after (1) a run. */
function sibling({ runs }: Outline, run: Run, step: 1 | -1): Run | undefined {
  const siblings = runs.filter(({ from }) => from === run.from);
  return siblings[siblings.indexOf(run) + step];
}

/** Whether nothing can follow a run: it ends at a fixture's inlet, an expansion tank or an arrester. */
function isClosed({ end }: Run): boolean {
  if (end === undefined) return false;
  return 'fixture' in end || end.device === 'expansion-tank' || end.device === 'arrester';
}

/** Two stretches of the list, one right behind the other, in each other's place. */
function swap(runs: readonly Run[], first: Stretch, second: Stretch): readonly Run[] {
  return [
    ...runs.slice(0, first.start),
    ...runs.slice(second.start, second.end),
    ...runs.slice(first.start, first.end),
    ...runs.slice(second.end),
  ];
}

/** Puts a run with what hangs on it before the one that stands before it on the same run. */
export const moveUp = movedBy((outline, run, at) => {
  const before = sibling(outline, run, -1);
  if (before === undefined) return `Run ${run.id} is the first that ${run.from} feeds.`;
  return swap(outline.runs, outline.stretchOf(before.id)!, at);
});

/** Puts a run with what hangs on it behind the one that follows it on the same run. */
export const moveDown = movedBy((outline, run, at) => {
  const after = sibling(outline, run, 1);
  if (after === undefined) return `Run ${run.id} is the last that ${run.from} feeds.`;
  return swap(outline.runs, at, outline.stretchOf(after.id)!);
});

/** Hangs a run, with what hangs on it, on the one that stands before it on the same run. */
export const indent = movedBy((outline, run) => {
  const before = sibling(outline, run, -1);
  if (before === undefined)
    return `Run ${run.id} is the first that ${run.from} feeds; there is none before it to hang it on.`;
  if (isClosed(before)) {
    return `Run ${before.id}, before ${run.id}, ends at a fixture, an expansion tank or an arrester; nothing can follow there.`;
  }
  return outline.runs.map((other) => (other === run ? { ...run, from: before.id } : other));
});

/** Hangs a run, with what hangs on it, on the run that feeds its own, right behind that. */
export const outdent = movedBy((outline, run, at) => {
  const parent = outline.runs.find(({ id }) => id === run.from);
  if (parent === undefined) return `Run ${run.id} comes from the street already.`;
  if (parent.from === 'street')
    return `Run ${run.id} hangs on the service, ${parent.id}; there is one service from the street.`;
  const { end } = outline.stretchOf(parent.id)!;
  const [head, ...below] = outline.runs.slice(at.start, at.end);
  return [
    ...outline.runs.slice(0, at.start),
    ...outline.runs.slice(at.end, end),
    { ...head!, from: parent.from },
    ...below,
    ...outline.runs.slice(end),
  ];
});

/**
 * Copies a run with what hangs on it, behind it and under new names. An inlet has one run: copies of runs that end at
 * a fixture are left open.
 */
export const duplicate = movedBy(({ runs }, run, at) => {
  if (run.from === 'street') return `Run ${run.id} is the service; there is one service from the street.`;
  const taken = new Set(runs.map(({ id }) => id));
  const names = new Map<string, string>();
  const copies = runs.slice(at.start, at.end).map((original): Run => {
    const id = nextId('R', taken);
    taken.add(id);
    names.set(original.id, id);
    const { end, ...open } = original;
    const copy = { ...open, id, from: names.get(original.from) ?? original.from };
    return end === undefined || 'fixture' in end ? copy : { ...copy, end };
  });
  return [...runs.slice(0, at.end), ...copies, ...runs.slice(at.end)];
});

/** Adds a run behind another and what hangs on it, fed by the same run, under the next free name. */
export function addAfter(job: Job, id: string, line: string): Edited {
  const parsed = parseRunLine(line);
  if (!parsed.ok) return refused({ line: `${parsed.problem}.` });
  return movedBy(({ runs }, { from }, { end }) => {
    if (from === 'street') return `Run ${id} is the service; there is one service from the street.`;
    const name = nextId(
      'R',
      runs.map((run) => run.id),
    );
    return [...runs.slice(0, end), { id: name, from, ...parsed.run }, ...runs.slice(end)];
  })(job, id);
}
