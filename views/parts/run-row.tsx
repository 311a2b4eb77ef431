import type { Run, UnitSystem } from '../../engine/job/job.ts';
import { EditForm, formPartId } from '../components/edit-form.tsx';
import { FigureLink } from '../components/figure-link.tsx';
import type { Part } from '../part.ts';
import { remembered } from '../remembered.ts';
import { figure, fixed, unitSymbol } from '../text/figure.ts';
import type { RunRow, Workbench } from '../workbench.ts';
import { DeleteRunFields, RunEditFields, RunLineFields, UnderFields } from './run-fields.tsx';
import { deleteForm, fieldsForm, lineForm, runRowId, underForm } from './run-ids.ts';

function runAction(job: string, run: string): string {
  return `/jobs/${job}/runs/${encodeURIComponent(run)}`;
}

function RunFigures({ row, bench }: { row: RunRow; bench: Workbench }): JSX.Element {
  const { solution } = bench.report;
  const at = row.position;
  const system = bench.job.units;
  const id = row.run.id;
  const loss = solution.pipeLoss[at]! + solution.fittingLoss[at]! + solution.deviceLoss[at]!;
  const cells: readonly (readonly [quantity: string, label: string, unit: string, text: string])[] = [
    ['units', 'fixture units', 'WSFU', fixed(solution.units[at]!, 1)],
    ['flow', 'flow', unitSymbol('flow', system), figure(solution.flow[at]!, 'flow', system)],
    [
      'velocity',
      'velocity',
      unitSymbol('velocity', system),
      figure(solution.velocity[at]!, 'velocity', system),
    ],
    ['loss', 'loss', `loss, ${unitSymbol('pressure', system)}`, figure(loss, 'pressure', system)],
    [
      'residual',
      'pressure left',
      `left, ${unitSymbol('pressure', system)}`,
      figure(solution.residual[at]!, 'pressure', system),
    ],
  ];
  return (
    <dl class="figures" id={`${runRowId(id)}:figures`}>
      {cells.map(([quantity, label, unit, text]) => (
        <div>
          <dt safe>{unit}</dt>
          <dd>
            <FigureLink
              id={`${runRowId(id)}:${quantity}`}
              job={bench.id}
              of={id}
              quantity={quantity}
              text={text}
              label={`the ${label} of run ${id}`}
            />
          </dd>
        </div>
      ))}
    </dl>
  );
}

const lineOf = remembered((run: Run, line: string) => <RunLineFields row={{ run, line }} />);
const fieldsOf = remembered((run: Run, fittings: string, end: string, system: UnitSystem) => (
  <RunEditFields row={{ run, fittings, end }} system={system} />
));

/** One run: name, line, figures; behind a fold its fields, a run under it, and its removal. */
export function runRowPart(row: RunRow, bench: Workbench): Part {
  const run = row.run.id;
  const id = runRowId(run);
  const side = bench.report.network.hot[row.position] === 1 ? 'hot' : 'cold';
  const head = (
    <p class="run-name" id={`${id}:name`}>
      <strong safe>{run}</strong>
      <span class={side}>{side}</span>
    </p>
  ) as string;
  const figures = (<RunFigures row={row} bench={bench} />) as string;
  const line = lineOf(row.run, row.line);
  const fields = fieldsOf(row.run, row.fittings, row.end, bench.job.units);
  return {
    id,
    frame: `${row.depth}`,
    children: [
      { id: `${id}:name`, html: head },
      { id: formPartId(lineForm(run)), html: line },
      { id: `${id}:figures`, html: figures },
      { id: formPartId(fieldsForm(run)), html: fields },
    ],
    html: () =>
      (
        <RunItem job={bench.id} row={row} head={head} figures={figures} line={line} fields={fields} />
      ) as string,
  };
}

interface RunItemProps {
  readonly job: string;
  readonly row: RunRow;
  readonly head: string;
  readonly figures: string;
  readonly line: string;
  readonly fields: string;
}

function RunItem({ job, row, head, figures, line, fields }: RunItemProps): JSX.Element {
  const run = row.run.id;
  const id = runRowId(run);
  const action = runAction(job, run);
  return (
    <li id={id} class={`run depth-${Math.min(row.depth, 12)}`}>
      {head as 'safe'}
      <EditForm id={lineForm(run)} action={`${action}/line`} live class="edit line">
        {line as 'safe'}
      </EditForm>
      {figures as 'safe'}
      <details id={`${id}:more`} class="more">
        <summary id={`${id}:more:summary`}>
          Fields<span class="visually-hidden" safe>{` of run ${run}`}</span>
        </summary>
        <EditForm id={fieldsForm(run)} action={action} live>
          {fields as 'safe'}
        </EditForm>
        <EditForm id={underForm(run)} action={`${action}/under`}>
          <UnderFields run={run} />
        </EditForm>
        <EditForm id={deleteForm(run)} action={`${action}/delete`} class="edit slight">
          <DeleteRunFields run={run} />
        </EditForm>
      </details>
    </li>
  );
}
