import { type InletResult, ledger } from '../../engine/index.ts';
import type { Part } from '../../views/part.ts';
import { PathPanel, pathPanelId } from '../../views/parts/path-panel.tsx';
import { remembered } from '../../views/remembered.ts';
import { type Beside, pathKey, type ShownPath, type Workbench } from '../../views/workbench.ts';
import { type PartList, partList } from '../parts/part-list.tsx';
import type { ComputedJob } from './compute-job.ts';

/** One revision of a kept job, read and computed. */
export interface OpenJob extends ComputedJob {
  /** Its address behind `/jobs/`: see `views/job-address.ts`. */
  readonly id: string;
  readonly revision: number;
  /** As it stands in the store. */
  readonly document: string;
  /** Left out for a job as it is. */
  readonly beside?: Beside;
}

/** The workbench with a chosen path; the worst fixture's where `path` names none. */
export function workbenchOf({ id, job, report, rows, beside }: OpenJob, path: string): Workbench {
  return {
    id,
    job,
    report,
    rows,
    path: shownPath(report, path),
    ...(beside === undefined ? {} : { beside }),
  };
}

const made = new WeakMap<OpenJob, PartList>();

/** All parts that do not depend on the path; made once for a revision. */
export function partsOf(open: OpenJob): PartList {
  const known = made.get(open);
  if (known !== undefined) return known;
  const parts = partList(workbenchOf(open, ''));
  made.set(open, parts);
  return parts;
}

const madePath = remembered((open: OpenJob, path: string) => <PathPanel bench={workbenchOf(open, path)} />);

export function pathPartOf(open: OpenJob, path: string): Part {
  return { id: pathPanelId, html: madePath(open, path) };
}

function shownPath(report: OpenJob['report'], path: string): ShownPath | undefined {
  const chosen =
    report.inlets.find(({ inlet }) => pathKey(inlet.fixture.id, inlet.side) === path) ?? report.worst;
  return chosen && pathOf(report, chosen);
}

/** The path from the street to an inlet of a report. */
export function pathOf(report: OpenJob['report'], { inlet, residual, margin }: InletResult): ShownPath {
  return {
    fixture: inlet.fixture,
    side: inlet.side,
    residual,
    required: inlet.requiredPressure,
    margin,
    run: inlet.run,
    lines: ledger(report.network, report.solution, inlet.run),
  };
}
