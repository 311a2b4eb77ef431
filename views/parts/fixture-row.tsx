import type { Fixture, Job } from '../../engine/job/job.ts';
import { type FixtureKindId, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { EditForm, FormFields, formPartId } from '../components/edit-form.tsx';
import { SelectField, TextField, TickField } from '../components/field.tsx';
import { FigureLink } from '../components/figure-link.tsx';
import type { Part } from '../part.ts';
import { remembered } from '../remembered.ts';
import { figure, signedPressure, unitSymbol } from '../text/figure.ts';
import type { Refused, Workbench } from '../workbench.ts';
import { runNamesId } from './run-row.tsx';

export const kindChoices: readonly (readonly [string, string])[] = Object.entries(fixtureKinds)
  .map(([kind, { label }]) => [kind, label] as const)
  .sort((a, b) => a[1].localeCompare(b[1]));

export function fixtureRowId(fixture: string): string {
  return `fixture:${fixture}`;
}

export function fixtureForm(fixture: string): string {
  return `fixture:${fixture}:edit`;
}

export function deleteFixtureForm(fixture: string): string {
  return `fixture:${fixture}:delete`;
}

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
      <details id={`${form}:more`} class="more" open={refused !== undefined}>
        <summary id={`${form}:more:summary`}>
          More<span class="visually-hidden" safe>{` on ${fixture.name}`}</span>
        </summary>
        <div class="fields">
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
              ['', `as its kind: ${sidesText(fixtureKinds[fixture.kind as FixtureKindId].inlets)}`],
              ['both', 'cold and hot'],
              ['cold', 'cold only'],
              ['hot', 'hot only'],
            ]}
          />
          <TickField
            form={form}
            name="continuous"
            label="runs for long: counted as flow"
            value={fixture.continuous === true ? 'yes' : ''}
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
        </div>
      </details>
    </FormFields>
  );
}

function sidesText(inlets: 'both' | 'cold' | 'hot'): string {
  return inlets === 'both' ? 'cold and hot' : `${inlets} only`;
}

function FixtureFigures({ fixture, bench }: { fixture: Fixture; bench: Workbench }): JSX.Element {
  const { report, job } = bench;
  const results = report.inlets
    .filter(({ inlet }) => inlet.fixture.id === fixture.id)
    .sort((a, b) => a.inlet.side.localeCompare(b.inlet.side));
  return (
    <dl class="figures" id={`${fixtureRowId(fixture.id)}:figures`}>
      {results.map(({ inlet, residual, margin }) => {
        const run = report.network.runs[inlet.run]!.id;
        return (
          <div class={margin < 0 ? 'short' : undefined}>
            <dt safe>{`${inlet.side} left, ${unitSymbol('pressure', job.units)}`}</dt>
            <dd>
              <FigureLink
                id={`${fixtureRowId(fixture.id)}:${inlet.side}`}
                job={bench.id}
                of={run}
                quantity="residual"
                text={figure(residual, 'pressure', job.units)}
                label={`what is left at ${fixture.name}, ${inlet.side},`}
              />{' '}
              <span safe>
                {margin < 0
                  ? `SHORT ${signedPressure(margin, job.units)}`
                  : signedPressure(margin, job.units)}
              </span>
            </dd>
          </div>
        );
      })}
    </dl>
  );
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

const fieldsOf = remembered(
  (fixture: Fixture, levels: Job['levels'], groups: Job['groups'], units: Job['units']) => (
    <FixtureFields fixture={fixture} job={{ levels, groups, units }} />
  ),
);

/** One line of the schedule: the fixture, what is left at its inlets, and its removal. */
export function fixtureRowPart(fixture: Fixture, bench: Workbench): Part {
  const id = fixtureRowId(fixture.id);
  const action = `/jobs/${bench.id}/fixtures/${encodeURIComponent(fixture.id)}`;
  const { levels, groups, units } = bench.job;
  const fields = fieldsOf(fixture, levels, groups, units);
  const figures = (<FixtureFigures fixture={fixture} bench={bench} />) as string;
  const removal = (<DeleteFixtureFields fixture={fixture} />) as string;
  return {
    id,
    frame: '',
    children: [
      { id: formPartId(fixtureForm(fixture.id)), html: fields },
      { id: `${id}:figures`, html: figures },
      { id: formPartId(deleteFixtureForm(fixture.id)), html: removal },
    ],
    html: () =>
      (
        <li id={id} class="fixture">
          <EditForm id={fixtureForm(fixture.id)} action={action} live>
            {fields as 'safe'}
          </EditForm>
          {figures as 'safe'}
          <EditForm id={deleteFixtureForm(fixture.id)} action={`${action}/delete`} class="edit slight">
            {removal as 'safe'}
          </EditForm>
        </li>
      ) as string,
  };
}
