import { attribute } from '../components/attribute.ts';
import { EditForm } from '../components/edit-form.tsx';
import type { RunRow, Workbench } from '../workbench.ts';
import { drawnRunAddress } from './run-address.ts';
import { DeleteRunFields, RunEditFields, UnderFields } from './run-fields.tsx';
import { deleteForm, fieldsForm, runAction, underForm } from './run-ids.ts';

/** All that can be done to one run: its fields, a run under it, its removal. */
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
      <EditForm id={deleteForm(run)} action={`${action}/delete`} class="edit slight">
        <DeleteRunFields run={run} />
      </EditForm>
    </>
  );
}
