import { materials } from '../../tables/pipe/names.ts';
import { FormProblem, SelectField, TextField, TickField } from '../components/field.tsx';
import type { Comparison } from '../schemes.ts';
import type { Refused } from '../workbench.ts';
import { ComparedFields } from './scheme-actions.tsx';

const form = 'draw-up';

const kinds = [
  ['trunk', 'Trunk and branch'],
  ['home-run', 'Home runs from one pair of manifolds'],
  ['zones', 'Zone manifolds'],
] as const;

/** Draws up another scheme from the schedule and the places of the job. */
export function DrawUpForm(props: {
  readonly comparison: Comparison;
  readonly refused: Refused | undefined;
}): JSX.Element {
  const { comparison, refused } = props;
  const ticked = (name: string, usual: string) =>
    refused === undefined ? usual : (refused.values[name] ?? '');
  return (
    <form id={form} method="post" action={`/jobs/${comparison.id}/schemes`} class="edit">
      <ComparedFields comparison={comparison} />
      <div class="fields">
        <FormProblem refused={refused} />
        <SelectField form={form} name="kind" label="Layout" value="trunk" choices={kinds} refused={refused} />
        <SelectField
          form={form}
          name="material"
          label="Pipe behind the service"
          value=""
          choices={[['', 'PEX, as usual'], ...Object.entries(materials)]}
          refused={refused}
        />
        <SelectField
          form={form}
          name="heaters"
          label="With halves"
          value=""
          choices={[
            ['', 'two heaters'],
            ['one', 'one heater'],
          ]}
          refused={refused}
        />
        <TextField
          form={form}
          name="name"
          label="Name"
          value=""
          hint="or nothing, for the layout's own"
          refused={refused}
        />
        <TickField
          form={form}
          name="halves"
          label="Split into two halves"
          value={ticked('halves', '')}
          refused={refused}
        />
        <TickField
          form={form}
          name="least"
          label="Size it at least cost"
          value={ticked('least', 'yes')}
          refused={refused}
        />
        <button type="submit" class="act">
          Draw it up
        </button>
      </div>
    </form>
  );
}
