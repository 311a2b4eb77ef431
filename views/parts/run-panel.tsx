import { attribute } from '../components/attribute.ts';
import { EditForm } from '../components/edit-form.tsx';
import type { RunRow, Workbench } from '../workbench.ts';
import { drawnRunAddress } from './run-address.ts';
import { AfterFields, DeleteRunFields, RunEditFields, UnderFields } from './run-fields.tsx';
import { afterForm, deleteForm, fieldsForm, moveForm, runAction, underForm } from './run-ids.ts';
import { MoveFields } from './run-moves.tsx';

/** All that can be done to one run: its fields, its place in the outline, a run under or after it, its removal. */
export function RunPanel({ row, bench }: { row: RunRow; bench: Workbench }): JSX.Element {
  const run = row.run.id;
  const action = runAction(bench.id, run);
  return (
    <>
      <p>
        <a href={attribute(drawnRunAddress(bench.id, run))}>On the riser</a>
      </p>
      <EditForm id={fieldsForm(run)} action={action} live>
        <RunEditFields row={row} system={bench.job.units} />
      </EditForm>
      <EditForm id={underForm(run)} action={`${action}/under`}>
        <UnderFields run={run} />
      </EditForm>
      <EditForm id={afterForm(run)} action={`${action}/after`}>
        <AfterFields run={run} />
      </EditForm>
      <EditForm id={moveForm(run)} action={`${action}/move`} class="edit slight">
        <MoveFields run={run} />
      </EditForm>
      <EditForm id={deleteForm(run)} action={`${action}/delete`} class="edit slight">
        <DeleteRunFields run={run} />
      </EditForm>
    </>
  );
}
