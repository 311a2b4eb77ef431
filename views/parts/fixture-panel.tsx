import type { Fixture } from '../../engine/job/job.ts';
import { EditForm } from '../components/edit-form.tsx';
import type { Workbench } from '../workbench.ts';
import { DeleteFixtureFields, FixtureFields } from './fixture-fields.tsx';
import { deleteFixtureForm, fixtureAction, fixtureForm } from './fixture-ids.ts';

/** All that can be done to one fixture: its fields and its removal. */
export function FixturePanel({ fixture, bench }: { fixture: Fixture; bench: Workbench }): JSX.Element {
  const action = fixtureAction(bench.id, fixture.id);
  return (
    <>
      <EditForm id={fixtureForm(fixture.id)} action={action} live>
        <FixtureFields fixture={fixture} job={bench.job} />
      </EditForm>
      <EditForm id={deleteFixtureForm(fixture.id)} action={`${action}/delete`} class="edit slight">
        <DeleteFixtureFields fixture={fixture} />
      </EditForm>
    </>
  );
}
