export const runsId = 'runs';
export const addRunForm = 'add-run';
export const runNamesId = 'run-names';
export const runEndsId = 'run-ends';

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

export function deleteForm(run: string): string {
  return `run:${run}:delete`;
}
