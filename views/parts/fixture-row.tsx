import type { Fixture, InletSide, Job } from '../../engine/job/job.ts';
import { fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { figurePart } from '../components/figure-link.tsx';
import { PanelLink } from '../components/panel.tsx';
import type { Part, Text } from '../part.ts';
import { remembered } from '../remembered.ts';
import { figure, signedPressure, unitSymbol } from '../text/figure.ts';
import type { Workbench } from '../workbench.ts';
import { fixtureAction, fixturePanel, fixtureRowId } from './fixture-ids.ts';

/** What is left at one inlet, and by how much that is over or under its need. */
interface InletFigures {
  readonly side: InletSide;
  readonly short: boolean;
  readonly left: Text;
  readonly margin: Text;
}

function inletFigures(fixture: Fixture, { id: job, report, job: { units } }: Workbench): InletFigures[] {
  return report.inlets
    .filter(({ inlet }) => inlet.fixture.id === fixture.id)
    .sort((a, b) => a.inlet.side.localeCompare(b.inlet.side))
    .map(({ inlet: { side, run }, residual, margin }) => {
      const id = `${fixtureRowId(fixture.id)}:${side}`;
      const over = signedPressure(margin, units);
      const words = margin < 0 ? `SHORT ${over}` : over;
      return {
        side,
        short: margin < 0,
        left: figurePart({
          id,
          job,
          of: report.network.runs[run]!.id,
          quantity: 'residual',
          text: figure(residual, 'pressure', units),
          label: `what is left at ${fixture.name}, ${side},`,
        }),
        margin: {
          id: `${id}:margin`,
          text: words,
          html: () =>
            (
              <span id={`${id}:margin`} safe>
                {words}
              </span>
            ) as string,
        },
      };
    });
}

function FigureCells({ figures, unit }: { figures: readonly InletFigures[]; unit: string }): JSX.Element {
  return (
    <dl class="figures">
      {figures.map(({ side, short, left, margin }) => (
        <div class={short ? 'short' : undefined}>
          <dt safe>{`${side} left, ${unit}`}</dt>
          <dd>
            {left.html() as 'safe'} {margin.html() as 'safe'}
          </dd>
        </div>
      ))}
    </dl>
  );
}

const headOf = remembered((fixture: Fixture, levels: Job['levels'], groups: Job['groups']) => {
  const { id, count, kind, use, room } = fixture;
  const words = [
    id,
    ...(count === 1 ? [] : [`${count} of them`]),
    fixtureKinds[kind].label,
    ...(use === 'public' ? ['public'] : []),
    levels.find((level) => level.id === fixture.level)?.name,
    room,
    groups.find((group) => group.id === fixture.group)?.name,
  ].filter((word) => word !== undefined && word !== '');
  return (
    <p id={`${fixtureRowId(id)}:name`} class="fixture-name">
      <strong safe>{fixture.name}</strong> <span safe>{words.join(', ')}</span>
    </p>
  );
});

/** One line of the schedule: the fixture, what is left at its inlets, and the way to its fields. */
export function fixtureRowPart(fixture: Fixture, bench: Workbench): Part {
  const id = fixtureRowId(fixture.id);
  const { levels, groups } = bench.job;
  const head = headOf(fixture, levels, groups);
  const figures = inletFigures(fixture, bench);
  const unit = unitSymbol('pressure', bench.job.units);
  return {
    id,
    frame: `${unit} ${figures.map(({ side, short }) => `${side} ${short}`).join(' ')}`,
    children: [{ id: `${id}:name`, html: head }, ...figures.flatMap(({ left, margin }) => [left, margin])],
    html: () =>
      (
        <li id={id} class="fixture">
          {head as 'safe'}
          <FigureCells figures={figures} unit={unit} />
          <PanelLink
            id={fixturePanel(fixture.id)}
            href={fixtureAction(bench.id, fixture.id)}
            of={`of ${fixture.name}`}
          />
        </li>
      ) as string,
  };
}
