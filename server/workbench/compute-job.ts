import { buildNetwork, type Job, type Report, type Run, report } from '../../engine/index.ts';
import { printRunLine } from '../../engine/job/print-run-line.ts';
import { defectText } from '../../views/text/defect-text.ts';
import type { RunRow } from '../../views/workbench.ts';

/** A document that was read and computed. */
export interface ComputedJob {
  readonly job: Job;
  readonly report: Report;
  readonly rows: readonly RunRow[];
}

export type Computed =
  | { readonly ok: true; readonly computed: ComputedJob }
  | { readonly ok: false; readonly sentences: readonly string[] };

/** Builds and solves the chosen scheme, or says in sentences why it makes no tree. */
export function computeJob(job: Job): Computed {
  const built = buildNetwork(job, job.chosen);
  if (!built.ok)
    return { ok: false, sentences: built.defects.map((defect) => defectText(defect, job.units)) };
  const { network } = built;
  const depths = new Int32Array(network.size);
  const rows = network.runs.map((run, position): RunRow => {
    const parent = network.parent[position]!;
    depths[position] = parent < 0 ? 0 : depths[parent]! + 1;
    return { run, position, depth: depths[position]!, ...wordsOf(run) };
  });
  return { ok: true, computed: { job, report: report(network), rows } };
}

/** The words of runs that were printed before: an edit leaves most runs as they were. */
const printed = new WeakMap<Run, Pick<RunRow, 'line' | 'fittings' | 'end'>>();

function wordsOf(run: Run): Pick<RunRow, 'line' | 'fittings' | 'end'> {
  const known = printed.get(run);
  if (known !== undefined) return known;
  const { end: _end, rise: _rise, ...piped } = run;
  const bare = printRunLine({ ...piped, fittings: [] });
  const withoutEnd = printRunLine(piped);
  const withoutFittings = printRunLine(
    run.end === undefined ? { ...piped, fittings: [] } : { ...piped, fittings: [], end: run.end },
  );
  const words = {
    line: printRunLine(run),
    fittings: withoutEnd.slice(bare.length).trim(),
    end: withoutFittings.slice(bare.length).trim(),
  };
  printed.set(run, words);
  return words;
}
