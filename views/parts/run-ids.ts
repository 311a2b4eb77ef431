export const runsId = 'runs';
export const addRunForm = 'add-run';
export const runNamesId = 'run-names';
export const runEndsId = 'run-ends';
export const sizesId = 'pipe-sizes';
export const runLinesId = 'run-lines';

export function runRowId(run: string): string {
  return `run:${run}`;
}

export function lineForm(run: string): string {
  return `run:${run}:line`;
}

export function fieldsForm(run: string): string {
  return `run:${run}:edit`;
}

export function underForm(run: string): string {
  return `run:${run}:under`;
}

export function afterForm(run: string): string {
  return `run:${run}:after`;
}

export function moveForm(run: string): string {
  return `run:${run}:move`;
}

export function deleteForm(run: string): string {
  return `run:${run}:delete`;
}

export function runPanel(run: string): string {
  return `run:${run}:panel`;
}

/** Address of a run: its fields as a page, and behind it the forms that change it. */
export function runAction(job: string, run: string): string {
  return `/jobs/${job}/runs/${encodeURIComponent(run)}`;
}
