import type { Job, Quantity, Supply } from '../../engine/job/job.ts';
import { EditForm, FormFields, formPartId } from '../components/edit-form.tsx';
import { SelectField, TextField } from '../components/field.tsx';
import type { Part } from '../part.ts';
import { unitSymbol } from '../text/figure.ts';
import type { Refused, Workbench } from '../workbench.ts';

export const supplyForm = 'supply';

interface SupplyField {
  readonly name: string;
  readonly label: string;
  readonly dimension: 'pressure' | 'flow' | 'length';
  readonly required: boolean;
}

/** The fields of each kind of supply, in the order in which they are filled in. */
export const supplyFields: { readonly [kind in Supply['kind']]: readonly SupplyField[] } = {
  static: [
    { name: 'low', label: 'Static, daily low', dimension: 'pressure', required: true },
    { name: 'high', label: 'Static, daily high', dimension: 'pressure', required: true },
  ],
  'flow-test': [
    { name: 'static', label: 'Static during the test', dimension: 'pressure', required: true },
    { name: 'residual', label: 'Residual', dimension: 'pressure', required: true },
    { name: 'flow', label: 'at a flow of', dimension: 'flow', required: true },
    { name: 'low', label: 'Static, daily low', dimension: 'pressure', required: false },
    { name: 'high', label: 'Static, daily high', dimension: 'pressure', required: false },
  ],
  well: [
    { name: 'cutIn', label: 'Cut-in', dimension: 'pressure', required: true },
    { name: 'cutOut', label: 'Cut-out', dimension: 'pressure', required: true },
    { name: 'pumpFlow', label: 'Pump gives', dimension: 'flow', required: false },
  ],
};

export const supplyKinds: readonly (readonly [Supply['kind'], string])[] = [
  ['static', 'street main, static pressures'],
  ['flow-test', 'street main, two-point flow test'],
  ['well', 'well pump with pressure tank'],
];

export function isSupplyKind(text: string): text is Supply['kind'] {
  return Object.hasOwn(supplyFields, text);
}

export function SupplyFields({ job, refused }: { job: Job; refused?: Refused | undefined }): JSX.Element {
  const chosen = refused?.values.kind ?? '';
  const kind = isSupplyKind(chosen) ? chosen : job.supply.kind;
  const typed = job.supply as unknown as Readonly<Record<string, Quantity | undefined>>;
  return (
    <FormFields id={supplyForm} refused={refused} button="Save" live>
      <SelectField
        form={supplyForm}
        name="kind"
        label="Source"
        value={kind}
        refused={refused}
        choices={supplyKinds}
      />
      {supplyFields[kind].map(({ name, label, dimension, required }) => (
        <TextField
          form={supplyForm}
          name={name}
          label={`${label}, ${unitSymbol(dimension, job.units)}`}
          value={typed[name]?.typed ?? ''}
          refused={refused}
          required={required}
        />
      ))}
      <TextField
        form={supplyForm}
        name="elevation"
        label={`Height of that point, ${unitSymbol('length', job.units)}`}
        value={job.supply.elevation.typed}
        refused={refused}
        required
        hint="on the same datum as the levels"
      />
    </FormFields>
  );
}

export function supplyPart(bench: Workbench): Part {
  return { id: formPartId(supplyForm), html: (<SupplyFields job={bench.job} />) as string };
}

export function SupplyForm({ bench }: { bench: Workbench }): JSX.Element {
  return (
    <EditForm id={supplyForm} action={`/jobs/${bench.id}/supply`} live>
      <SupplyFields job={bench.job} />
    </EditForm>
  );
}
