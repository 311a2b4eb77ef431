import type { Job, Run } from '../../engine/job/job.ts';
import { nextId } from '../../engine/job/next-id.ts';
import { parseRunLine } from '../../engine/job/parse-run-line.ts';
import { idPattern } from '../../engine/job/words.ts';
import type { PastedRun } from '../../views/pages/add-runs-page.tsx';
import { changed, chosenScheme, type Edited, refused, withRuns } from './edited.ts';

/** Most lines that are read at once. */
export const mostPastedLines = 2000;

/** A line cut into what it says; `indent` counts the spaces before it. */
interface Cut {
  readonly number: number;
  readonly indent: number;
  readonly cells: readonly string[];
}

function cutLines(text: string): readonly Cut[] {
  return text.split(/\r?\n/).flatMap((line, index) => {
    if (line.trim() === '') return [];
    const indent = line.length - line.replace(/^ +/, '').length;
    return [{ number: index + 1, indent, cells: line.split(/[\t;]/).map((cell) => cell.trim()) }];
  });
}

/** Name, feeding run and shorthand, each empty where the line leaves it out. */
function partsOf(cells: readonly string[]): { id: string; from: string; line: string } | undefined {
  const [first = '', second = '', third = ''] = cells;
  if (cells.length === 1) return { id: '', from: '', line: first };
  if (cells.length === 2) return { id: first, from: '', line: second };
  return cells.length === 3 ? { id: first, from: second, line: third } : undefined;
}

/**
 * Reads runs of which each stands on a line: `line`, `name; line` or `name; from; line`, parted by semicolon or tab.
 * A run without a name gets the next free one. A run that names none it comes from hangs on the nearest line above
 * that has fewer spaces before it, or else on `from`.
 *
 * @returns every line that is not blank, with its run or with what is wrong with it
 */
export function readPastedRuns(job: Job, from: string, text: string): readonly PastedRun[] {
  const known = new Set(chosenScheme(job).runs.map(({ id }) => id));
  const cuts = cutLines(text);
  const named = cuts.flatMap(({ cells }) => partsOf(cells)?.id ?? []).filter((id) => id !== '');
  const reserved = new Set([...known, ...named]);
  const taken = new Set(known);
  const above: { readonly indent: number; readonly id: string }[] = [];
  return cuts.map(({ number, indent, cells }): PastedRun => {
    const parts = partsOf(cells);
    if (parts === undefined) {
      const problem = `${cells.length} parts, where a name, the run that it comes from and the line were expected.`;
      return { number, id: '', from: '', line: cells.join('; '), problem };
    }
    const id = parts.id === '' ? nextId('R', reserved) : parts.id;
    while ((above.at(-1)?.indent ?? -1) >= indent) above.pop();
    const feeder = parts.from === '' ? (above.at(-1)?.id ?? from) : parts.from;
    const wrong = { number, id, from: feeder, line: parts.line };
    above.push({ indent, id });
    reserved.add(id);
    if (!idPattern.test(id))
      return { ...wrong, problem: `${id} is no name: letters, digits, - and _, 64 at most.` };
    if (taken.has(id)) return { ...wrong, problem: `There is a run ${id} already.` };
    taken.add(id);
    if (feeder === '') return { ...wrong, problem: 'It does not say which run it comes from.' };
    if (feeder !== 'street' && !reserved.has(feeder))
      return { ...wrong, problem: `There is no run ${feeder}.` };
    const parsed = parseRunLine(parts.line);
    if (!parsed.ok) return { ...wrong, problem: `${parsed.problem}.` };
    return { ...wrong, run: { id, from: feeder, ...parsed.run } };
  });
}

/** Adds every run that was pasted behind those there are, or none where one line will not do. */
export function pasteRuns(job: Job, from: string, text: string): Edited {
  const pasted = readPastedRuns(job, from, text);
  if (pasted.length === 0) return refused({ lines: 'Give at least one line.' });
  if (pasted.length > mostPastedLines)
    return refused({ lines: `${pasted.length} lines; at most ${mostPastedLines} are read at once.` });
  const bad = pasted.filter(({ run }) => run === undefined);
  if (bad.length > 0)
    return refused({ lines: `${bad.length} of ${pasted.length} lines will not do; each says why below.` });
  const runs = pasted.flatMap(({ run }): readonly Run[] => (run === undefined ? [] : [run]));
  return changed(withRuns(job, [...chosenScheme(job).runs, ...runs]));
}
