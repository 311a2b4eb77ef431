import type { UnitSystem } from '../../engine/job/job.ts';
import { joints, jointsOf, materials } from '../../tables/pipe/names.ts';
import { FormFields } from '../components/edit-form.tsx';
import { SelectField, TextField, TickField } from '../components/field.tsx';
import { unitSymbol } from '../text/figure.ts';
import type { Refused, RunRow } from '../workbench.ts';
import {
  afterForm,
  deleteForm,
  fieldsForm,
  lineForm,
  runEndsId,
  runLinesId,
  runNamesId,
  sizesId,
  underForm,
} from './run-ids.ts';

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
      <TextField
        form={form}
        name="size"
        label="Size"
        value={run.size}
        list={sizesId}
        refused={refused}
        required
      />
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
        list={runLinesId}
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

export function AfterFields({ run, refused }: { run: string; refused?: Refused | undefined }): JSX.Element {
  const form = afterForm(run);
  return (
    <FormFields id={form} refused={refused} button="Add the run after it">
      <TextField
        form={form}
        name="line"
        label={`New run after ${run}, fed by the same run`}
        value=""
        list={runLinesId}
        refused={refused}
        required
        wide
      />
    </FormFields>
  );
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
