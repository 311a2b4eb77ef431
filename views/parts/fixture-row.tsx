import type { Fixture, Job } from '../../engine/job/job.ts';
import { EditForm, formPartId } from '../components/edit-form.tsx';
import { FigureLink } from '../components/figure-link.tsx';
import type { Part } from '../part.ts';
import { remembered } from '../remembered.ts';
import { figure, signedPressure, unitSymbol } from '../text/figure.ts';
import type { Workbench } from '../workbench.ts';
import {
  DeleteFixtureFields,
  deleteFixtureForm,
  FixtureFields,
  fixtureForm,
  fixtureRowId,
} from './fixture-fields.tsx';

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
