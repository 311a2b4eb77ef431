import type { Run, UnitSystem } from '../../engine/job/job.ts';
import { joints, jointsOf, materials } from '../../tables/pipe/names.ts';
import { EditForm, FormFields, formPartId } from '../components/edit-form.tsx';
import { SelectField, TextField, TickField } from '../components/field.tsx';
import { FigureLink } from '../components/figure-link.tsx';
import type { Part } from '../part.ts';
import { remembered } from '../remembered.ts';
import { figure, fixed, unitSymbol } from '../text/figure.ts';
import type { Refused, RunRow, Workbench } from '../workbench.ts';

export const runsId = 'runs';
export const addRunForm = 'add-run';
export const runNamesId = 'run-names';
export const runEndsId = 'run-ends';

export function runRowId(run: string): string {
  return `run:${run}`;
}

export function lineForm(run: string): string {
  return `run:${run}:line`;
}

export function fieldsForm(run: string): string {
  return `run:${run}:edit`;
}

export function underForm(run: string): string {
  return `run:${run}:under`;
}

function runAction(job: string, run: string): string {
  return `/jobs/${job}/runs/${encodeURIComponent(run)}`;
}

/** The one line of a run's shorthand. */
export function RunLineFields({
  row,
  refused,
}: {
  row: Pick<RunRow, 'run' | 'line'>;
  refused?: Refused | undefined;
}): JSX.Element {
  return (
    <FormFields id={lineForm(row.run.id)} refused={refused} button="Save" live>
      <TextField
        form={lineForm(row.run.id)}
        name="line"
        label={`Run ${row.run.id} as a line`}
        hiddenLabel
        value={row.line}
        refused={refused}
        required
        wide
      />
    </FormFields>
  );
}

/** The same run in separate fields. */
export function RunEditFields(props: {
  readonly row: Pick<RunRow, 'run' | 'fittings' | 'end'>;
  readonly system: UnitSystem;
  readonly refused?: Refused | undefined;
}): JSX.Element {
  const { run, fittings, end } = props.row;
  const form = fieldsForm(run.id);
  const refused = props.refused;
  const length = unitSymbol('length', props.system);
  const usual: readonly string[] = jointsOf[run.material];
  return (
    <FormFields id={form} refused={refused} button="Save" live>
      <TextField form={form} name="id" label="Name" value={run.id} refused={refused} required />
      <TextField
        form={form}
        name="from"
        label="Comes from"
        value={run.from}
        list={runNamesId}
        refused={refused}
        required
      />
      <TextField form={form} name="size" label="Size, in." value={run.size} refused={refused} required />
      <SelectField
        form={form}
        name="material"
        label="Material"
        value={run.material}
        refused={refused}
        choices={materialChoices}
      />
      <SelectField
        form={form}
        name="joint"
        label="Joints"
        value={run.joint ?? ''}
        refused={refused}
        choices={[
          ['', `the usual: ${joints[jointsOf[run.material][0]]}`],
          ...Object.entries(joints).filter(([joint]) => usual.includes(joint)),
        ]}
      />
      <TextField
        form={form}
        name="length"
        label={`Length, ${length}`}
        value={run.length.typed}
        refused={refused}
        required
      />
      <TextField
        form={form}
        name="rise"
        label={`Rise, ${length}`}
        value={run.rise?.typed ?? ''}
        refused={refused}
        hint="minus where it goes down"
      />
      <TextField form={form} name="fittings" label="Fittings" value={fittings} refused={refused} wide />
      <TextField form={form} name="end" label="Ends at" value={end} list={runEndsId} refused={refused} wide />
      <TextField form={form} name="note" label="Note" value={run.note ?? ''} refused={refused} wide />
    </FormFields>
  );
}

const materialChoices = Object.entries(materials);

export function UnderFields({ run, refused }: { run: string; refused?: Refused | undefined }): JSX.Element {
  const form = underForm(run);
  return (
    <FormFields id={form} refused={refused} button="Add the run">
      <TextField
        form={form}
        name="line"
        label={`New run fed by ${run}`}
        value=""
        refused={refused}
        required
        wide
        hint="e.g. 3/4 PEX 18' up 9' 2 ells"
      />
      <TickField
        form={form}
        name="insert"
        label={`put it between ${run} and what ${run} feeds`}
        value={refused?.values.insert ?? ''}
      />
    </FormFields>
  );
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

export function deleteForm(run: string): string {
  return `run:${run}:delete`;
}

export function DeleteRunFields({
  run,
  refused,
}: {
  run: string;
  refused?: Refused | undefined;
}): JSX.Element {
  return (
    <FormFields id={deleteForm(run)} refused={refused} button={`Delete run ${run}`}>
      <p class="hint">What it feeds will come from the run before it.</p>
    </FormFields>
  );
}
