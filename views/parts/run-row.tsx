import type { Run } from '../../engine/job/job.ts';
import { EditForm, formPartId } from '../components/edit-form.tsx';
import { figurePart } from '../components/figure-link.tsx';
import { PanelLink } from '../components/panel.tsx';
import type { Part, Text } from '../part.ts';
import { remembered } from '../remembered.ts';
import { figure, fixed, unitSymbol } from '../text/figure.ts';
import type { RunRow, Workbench } from '../workbench.ts';
import { RunLineFields } from './run-fields.tsx';
import { lineForm, runAction, runPanel, runRowId } from './run-ids.ts';

interface Cell {
  /** What stands over the figure. */
  readonly head: string;
  readonly figure: Text;
}

function cellsOf(row: RunRow, bench: Workbench): readonly Cell[] {
  const { solution } = bench.report;
  const at = row.position;
  const system = bench.job.units;
  const id = row.run.id;
  const loss = solution.pipeLoss[at]! + solution.fittingLoss[at]! + solution.deviceLoss[at]!;
  const cells: readonly (readonly [quantity: string, label: string, head: string, text: string])[] = [
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
  return cells.map(([quantity, label, head, text]) => ({
    head,
    figure: figurePart({
      id: `${runRowId(id)}:${quantity}`,
      job: bench.id,
      of: id,
      quantity,
      text,
      label: `the ${label} of run ${id}`,
    }),
  }));
}

const lineOf = remembered((run: Run, line: string) => <RunLineFields row={{ run, line }} />);

/** One run: name, line, figures, and the way to its fields. */
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
  const cells = cellsOf(row, bench);
  const line = lineOf(row.run, row.line);
  return {
    id,
    frame: `${row.depth} ${bench.job.units}`,
    children: [
      { id: `${id}:name`, html: head },
      { id: formPartId(lineForm(run)), html: line },
      ...cells.map((cell) => cell.figure),
    ],
    html: () => (<RunItem job={bench.id} row={row} head={head} cells={cells} line={line} />) as string,
  };
}

interface RunItemProps {
  readonly job: string;
  readonly row: RunRow;
  readonly head: string;
  readonly cells: readonly Cell[];
  readonly line: string;
}

function RunItem({ job, row, head, cells, line }: RunItemProps): JSX.Element {
  const run = row.run.id;
  const id = runRowId(run);
  const action = runAction(job, run);
  return (
    <li id={id} class={`run depth-${Math.min(row.depth, 12)}`}>
      {head as 'safe'}
      <EditForm id={lineForm(run)} action={`${action}/line`} live class="edit line">
        {line as 'safe'}
      </EditForm>
      <dl class="figures">
        {cells.map((cell) => (
          <div>
            <dt safe>{cell.head}</dt>
            <dd>{cell.figure.html() as 'safe'}</dd>
          </div>
        ))}
      </dl>
      <PanelLink id={runPanel(run)} href={action} of={`of run ${run}`} />
    </li>
  );
}
