import { DeleteFixtureFields, FixtureFields } from '../../views/parts/fixture-fields.tsx';
import {
  deleteFixtureForm,
  fixtureForm as fixtureFormId,
  fixturePanel,
  fixtureRowId,
} from '../../views/parts/fixture-ids.ts';
import { AddFixtureFields, addFixtureForm as addFixtureFormId } from '../../views/parts/fixture-list.tsx';
import type { Workbench } from '../../views/workbench.ts';
import { addFixture, changeFixture, removeFixture } from '../edits/fixture-edits.ts';
import { addFixtureForm, fixtureForm } from '../forms/fixture-forms.ts';
import { readForm } from '../forms/read-form.ts';
import { type EditAction, withForm } from './edit-action.ts';

function fixtureOf(bench: Workbench, id: string) {
  return bench.job.fixtures.find((fixture) => fixture.id === id);
}

/** The forms of the fixture schedule. */
export const fixtureActions: readonly EditAction[] = [
  {
    path: '/fixtures',
    apply: (job, fields) => withForm(readForm(addFixtureForm, fields), (form) => addFixture(job, form)),
    fields: (bench, _place, refusal) => (<AddFixtureFields job={bench.job} refused={refusal} />) as string,
    form: () => addFixtureFormId,
    anchor: () => addFixtureFormId,
  },
  {
    path: '/fixtures/:place',
    apply: (job, fields, id) =>
      withForm(readForm(fixtureForm(job.units), fields), (form) => changeFixture(job, id, form)),
    fields: (bench, id, refusal) => {
      const fixture = fixtureOf(bench, id);
      if (fixture === undefined) return undefined;
      return (<FixtureFields fixture={fixture} job={bench.job} refused={refusal} />) as string;
    },
    form: fixtureFormId,
    panel: fixturePanel,
    anchor: fixtureRowId,
  },
  {
    path: '/fixtures/:place/delete',
    apply: (job, _fields, id) => removeFixture(job, id),
    fields: (bench, id, refusal) => {
      const fixture = fixtureOf(bench, id);
      return fixture === undefined
        ? undefined
        : ((<DeleteFixtureFields fixture={fixture} refused={refusal} />) as string);
    },
    form: deleteFixtureForm,
    panel: fixturePanel,
    anchor: () => 'fixtures',
  },
];
