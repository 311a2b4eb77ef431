import type { Fixture, Job } from '../../engine/job/job.ts';
import { type FixtureKind, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { FormFields } from '../components/edit-form.tsx';
import { SelectField, TextField, TickField } from '../components/field.tsx';
import { unitSymbol } from '../text/figure.ts';
import type { Refused } from '../workbench.ts';
import { deleteFixtureForm, fixtureForm } from './fixture-ids.ts';
import { runNamesId } from './run-ids.ts';

export const kindChoices: readonly (readonly [string, string])[] = Object.entries(fixtureKinds)
  .map(([kind, { label }]) => [kind, label] as const)
  .sort((a, b) => a[1].localeCompare(b[1]));

export function levelChoices(job: Pick<Job, 'levels'>): readonly (readonly [string, string])[] {
  return [['', 'none'], ...job.levels.map((level) => [level.id, level.name] as const)];
}

export function groupChoices(job: Pick<Job, 'groups'>): readonly (readonly [string, string])[] {
  return [['', 'none'], ...job.groups.map((group) => [group.id, group.name] as const)];
}

/** All that a schedule says of one fixture. */
export function FixtureFields(props: {
  readonly fixture: Fixture;
  readonly job: Pick<Job, 'levels' | 'groups' | 'units'>;
  readonly refused?: Refused | undefined;
}): JSX.Element {
  const { fixture, job, refused } = props;
  const form = fixtureForm(fixture.id);
  const unit = (dimension: 'length' | 'flow' | 'pressure') => unitSymbol(dimension, job.units);
  return (
    <FormFields id={form} refused={refused} button="Save" live>
      <TextField form={form} name="name" label="Name" value={fixture.name} refused={refused} required />
      <SelectField
        form={form}
        name="kind"
        label="Kind"
        value={fixture.kind}
        refused={refused}
        choices={kindChoices}
      />
      <TextField
        form={form}
        name="count"
        label="Count"
        value={String(fixture.count)}
        refused={refused}
        required
        numeric
      />
      <SelectField
        form={form}
        name="use"
        label="Use"
        value={fixture.use}
        refused={refused}
        choices={[
          ['private', 'private'],
          ['public', 'public'],
        ]}
      />
      <SelectField
        form={form}
        name="level"
        label="Level"
        value={fixture.level ?? ''}
        refused={refused}
        choices={levelChoices(job)}
      />
      <TextField form={form} name="id" label="Short name" value={fixture.id} refused={refused} required />
      <TextField form={form} name="room" label="Room" value={fixture.room ?? ''} refused={refused} />
      <SelectField
        form={form}
        name="group"
        label="Group"
        value={fixture.group ?? ''}
        refused={refused}
        choices={groupChoices(job)}
      />
      <TextField
        form={form}
        name="height"
        label={`Inlet above floor, ${unit('length')}`}
        value={fixture.height?.typed ?? ''}
        refused={refused}
      />
      <TextField
        form={form}
        name="flow"
        label={`Maker’s flow, ${unit('flow')}`}
        value={fixture.flow?.typed ?? ''}
        refused={refused}
        hint="left empty, the code’s"
      />
      <TextField
        form={form}
        name="pressure"
        label={`Maker’s pressure, ${unit('pressure')}`}
        value={fixture.pressure?.typed ?? ''}
        refused={refused}
        hint="left empty, the code’s"
      />
      <SelectField
        form={form}
        name="inlets"
        label="Piped"
        value={fixture.inlets ?? ''}
        refused={refused}
        choices={[
          ['', `as its kind: ${sidesText(fixtureKinds[fixture.kind].inlets)}`],
          ['both', 'cold and hot'],
          ['cold', 'cold only'],
          ['hot', 'hot only'],
        ]}
      />
      <TickField
        form={form}
        name="continuous"
        label="runs for long: counted as flow"
        value={(fixture.continuous ?? (fixtureKinds[fixture.kind] as FixtureKind).continuous) ? 'yes' : ''}
        refused={refused}
      />
      <TextField
        form={form}
        name="newFrom"
        label="A newly piped side comes from"
        value=""
        list={runNamesId}
        refused={refused}
      />
      <TextField
        form={form}
        name="newLine"
        label="by the run"
        value=""
        refused={refused}
        hint="e.g. 1/2 PEX 10'"
      />
    </FormFields>
  );
}

function sidesText(inlets: 'both' | 'cold' | 'hot'): string {
  return inlets === 'both' ? 'cold and hot' : `${inlets} only`;
}

export function DeleteFixtureFields({
  fixture,
  refused,
}: {
  fixture: Fixture;
  refused?: Refused | undefined;
}): JSX.Element {
  return (
    <FormFields id={deleteFixtureForm(fixture.id)} refused={refused} button={`Delete ${fixture.id}`}>
      {''}
    </FormFields>
  );
}
