import type { Job } from '../../engine/job/job.ts';
import {
  AfterFields,
  DeleteRunFields,
  RunEditFields,
  RunLineFields,
  UnderFields,
} from '../../views/parts/run-fields.tsx';
import {
  addRunForm as addRunFormId,
  afterForm,
  deleteForm,
  fieldsForm,
  lineForm,
  moveForm as moveFormId,
  runPanel,
  runRowId,
  underForm as underFormId,
} from '../../views/parts/run-ids.ts';
import { AddRunFields } from '../../views/parts/run-list.tsx';
import { MoveFields, type runMoves } from '../../views/parts/run-moves.tsx';
import type { RunRow, Workbench } from '../../views/workbench.ts';
import { chosenScheme, type Edited, refused } from '../edits/edited.ts';
import { addRun, removeRun, replaceRun, replaceRunLine } from '../edits/run-edits.ts';
import { addAfter, duplicate, indent, moveDown, moveUp, outdent } from '../edits/tree-edits.ts';
import { readForm } from '../forms/read-form.ts';
import {
  addRunForm,
  lineForm as lineSchema,
  moveForm,
  readRunFields,
  underForm,
} from '../forms/run-forms.ts';
import { type EditAction, withForm } from './edit-action.ts';

function rowOf(bench: Workbench, run: string): RunRow | undefined {
  return bench.rows.find((row) => row.run.id === run);
}

const moves: Readonly<Record<keyof typeof runMoves, (job: Job, run: string) => Edited>> = {
  up: moveUp,
  down: moveDown,
  in: indent,
  out: outdent,
  copy: duplicate,
};

/** The forms of the layout. */
export const runActions: readonly EditAction[] = [
  {
    path: '/runs',
    apply: (job, fields) => withForm(readForm(addRunForm, fields), (form) => addRun(job, form)),
    fields: (_bench, _place, refusal) => (<AddRunFields refused={refusal} />) as string,
    form: () => addRunFormId,
    anchor: () => addRunFormId,
  },
  {
    path: '/runs/:place/line',
    apply: (job, fields, run) =>
      withForm(readForm(lineSchema, fields), ({ line }) => replaceRunLine(job, run, line)),
    fields: (bench, run, refusal) => {
      const row = rowOf(bench, run);
      return row === undefined ? undefined : ((<RunLineFields row={row} refused={refusal} />) as string);
    },
    form: lineForm,
    anchor: runRowId,
  },
  {
    path: '/runs/:place',
    apply: (job, fields, run) => {
      const previous = chosenScheme(job).runs.find(({ id }) => id === run);
      if (previous === undefined) return refused({ '': `There is no run ${run}.` });
      return withForm(readRunFields(fields, job.units, previous), (value) => replaceRun(job, run, value));
    },
    fields: (bench, run, refusal) => {
      const row = rowOf(bench, run);
      if (row === undefined) return undefined;
      return (<RunEditFields row={row} system={bench.job.units} refused={refusal} />) as string;
    },
    form: fieldsForm,
    panel: runPanel,
    anchor: runRowId,
  },
  {
    path: '/runs/:place/under',
    apply: (job, fields, run) =>
      withForm(readForm(underForm, fields), (form) => addRun(job, { ...form, from: run, id: '' })),
    fields: (bench, run, refusal) =>
      rowOf(bench, run) === undefined ? undefined : ((<UnderFields run={run} refused={refusal} />) as string),
    form: underFormId,
    panel: runPanel,
    anchor: runRowId,
  },
  {
    path: '/runs/:place/after',
    apply: (job, fields, run) =>
      withForm(readForm(lineSchema, fields), ({ line }) => addAfter(job, run, line)),
    fields: (bench, run, refusal) =>
      rowOf(bench, run) === undefined ? undefined : ((<AfterFields run={run} refused={refusal} />) as string),
    form: afterForm,
    panel: runPanel,
    anchor: runRowId,
  },
  {
    path: '/runs/:place/move',
    apply: (job, fields, run) => withForm(readForm(moveForm, fields), ({ move }) => moves[move](job, run)),
    fields: (bench, run, refusal) =>
      rowOf(bench, run) === undefined ? undefined : ((<MoveFields run={run} refused={refusal} />) as string),
    form: moveFormId,
    panel: runPanel,
    anchor: runRowId,
  },
  {
    path: '/runs/:place/delete',
    apply: (job, _fields, run) => removeRun(job, run),
    fields: (bench, run, refusal) =>
      rowOf(bench, run) === undefined
        ? undefined
        : ((<DeleteRunFields run={run} refused={refusal} />) as string),
    form: deleteForm,
    panel: runPanel,
    anchor: () => 'layout',
  },
];
