import type { Basis, UnitSystem } from '../../engine/job/job.ts';
import { AreaField, SelectField, TextField } from '../components/field.tsx';
import { demandNames } from '../text/demand-text.ts';
import { unitSymbol } from '../text/figure.ts';
import type { Refused } from '../workbench.ts';

const choices: readonly (readonly [string, string])[] = [
  ['', 'as the code has it'],
  ...Object.entries(demandNames),
];

/** The demand method of the basis and what it leaves open; of the other methods nothing is asked. */
export function DemandFields(props: {
  readonly form: string;
  readonly basis: Basis;
  readonly units: UnitSystem;
  readonly refused: Refused | undefined;
}): JSX.Element {
  const { form, basis, units, refused } = props;
  const { demand } = basis;
  const common = { form, refused };
  return (
    <>
      <SelectField
        {...common}
        name="demandMethod"
        label="Demand"
        value={demand?.method ?? ''}
        choices={choices}
      />
      {demand?.method === 'own-table' ? (
        <>
          <TextField {...common} name="demandTableName" label="Name of the table" value={demand.name} />
          <AreaField
            {...common}
            name="demandTable"
            label={`Fixture units and flow, ${unitSymbol('flow', units)}`}
            value={demand.points.map(({ units, flow }) => `${units} ${flow.typed}`).join('\n')}
            hint="a row on each line, for the fixture units of the code above"
          />
        </>
      ) : (
        ''
      )}
    </>
  );
}
