import type { Job } from '../../engine/job/job.ts';
import { EditForm, FormFields, formPartId } from '../components/edit-form.tsx';
import { SelectField, TextField } from '../components/field.tsx';
import { markupOf, type Part } from '../part.ts';
import type { Refused, Workbench } from '../workbench.ts';
import { kindChoices, levelChoices } from './fixture-fields.tsx';
import { fixtureRowPart } from './fixture-row.tsx';
import { runNamesId } from './run-ids.ts';

export const fixturesId = 'fixture-list';
export const addFixtureForm = 'add-fixture';

/** The fixture schedule. */
export function fixtureListPart(bench: Workbench): Part {
  const children = bench.job.fixtures.map((fixture) => fixtureRowPart(fixture, bench));
  return {
    id: fixturesId,
    frame: children.map((child) => child.id).join(' '),
    children,
    list: true,
    html: () =>
      (
        <ol id={fixturesId} class="fixtures">
          {children.map((child) => markupOf(child) as 'safe')}
        </ol>
      ) as string,
  };
}

/** A new fixture comes with the runs that serve it, so that no inlet is ever left unserved. */
export function AddFixtureFields({ job, refused }: { job: Job; refused?: Refused | undefined }): JSX.Element {
  const form = addFixtureForm;
  const of = (
    name: string,
    label: string,
    more: { list?: string; hint?: string; required?: boolean } = {},
  ) => <TextField form={form} name={name} label={label} value="" refused={refused} {...more} />;
  return (
    <FormFields id={form} refused={refused} button="Add the fixture">
      {of('name', 'Name', { required: true })}
      <SelectField
        form={form}
        name="kind"
        label="Kind"
        value="lavatory"
        refused={refused}
        choices={kindChoices}
      />
      <SelectField
        form={form}
        name="level"
        label="Level"
        value=""
        refused={refused}
        choices={levelChoices(job)}
      />
      {of('room', 'Room')}
      {of('coldFrom', 'Cold comes from run', { list: runNamesId })}
      {of('coldLine', 'by the run', { hint: "e.g. 1/2 PEX 10'" })}
      {of('hotFrom', 'Hot comes from run', { list: runNamesId })}
      {of('hotLine', 'by the run', { hint: "e.g. 1/2 PEX 12' 1 ell" })}
    </FormFields>
  );
}

export const addFixturePartId: string = formPartId(addFixtureForm);

export function addFixturePart(bench: Workbench): Part {
  return { id: addFixturePartId, html: (<AddFixtureFields job={bench.job} />) as string };
}

export function AddFixtureForm({ bench }: { bench: Workbench }): JSX.Element {
  return (
    <EditForm id={addFixtureForm} action={`/jobs/${bench.id}/fixtures`}>
      <AddFixtureFields job={bench.job} />
    </EditForm>
  );
}
