import type { Job } from '../../engine/job/job.ts';
import { profiles } from '../../tables/profiles.ts';
import { EditForm, FormFields, formPartId } from '../components/edit-form.tsx';
import { SelectField, TextField } from '../components/field.tsx';
import type { Part } from '../part.ts';
import { unitSymbol } from '../text/figure.ts';
import type { Refused, Workbench } from '../workbench.ts';
import { DemandFields } from './demand-fields.tsx';

export const basisForm = 'basis';

const profileChoices = Object.entries(profiles).map(
  ([id, profile]) => [id, `${profile.title} ${profile.edition}`] as const,
);

export function BasisFields({ job, refused }: { job: Job; refused?: Refused | undefined }): JSX.Element {
  const { basis, units } = job;
  const common = { form: basisForm, refused };
  return (
    <FormFields id={basisForm} refused={refused} button="Save" live>
      <SelectField {...common} name="profile" label="Code" value={basis.profile} choices={profileChoices} />
      <DemandFields form={basisForm} basis={basis} units={units} refused={refused} />
      <SelectField
        {...common}
        name="between"
        label="Between table rows"
        value={basis.between}
        choices={[
          ['interpolate', 'straight line'],
          ['round-up', 'next row up'],
        ]}
      />
      <SelectField
        {...common}
        name="friction"
        label="Friction"
        value={basis.friction}
        choices={[
          ['hazen-williams', 'Hazen-Williams'],
          ['darcy-weisbach', 'Darcy-Weisbach'],
        ]}
      />
      <TextField
        {...common}
        name="coldTemperature"
        label={`Cold water, ${unitSymbol('temperature', units)}`}
        value={basis.coldTemperature.typed}
        required
      />
      <TextField
        {...common}
        name="hotTemperature"
        label={`Hot water, ${unitSymbol('temperature', units)}`}
        value={basis.hotTemperature.typed}
        required
        hint="hot water can scald"
      />
      <TextField
        {...common}
        name="elevationFactor"
        label={`Pressure by height, ${units === 'us' ? 'psi/ft' : 'kPa/m'}`}
        value={basis.elevationFactor?.typed ?? ''}
        hint="left empty, density × g"
      />
      <SelectField
        {...common}
        name="fittings"
        label="Fittings lose by"
        value={basis.fittings ?? 'equivalent-length'}
        choices={[
          ['equivalent-length', 'equivalent length'],
          ['loss-coefficient', 'loss coefficient K'],
        ]}
        hint="where one is not printed, the other"
      />
      <TextField
        {...common}
        name="fittingAllowancePercent"
        label="Fittings, % of length"
        value={basis.fittingAllowancePercent === undefined ? '' : String(basis.fittingAllowancePercent)}
        hint="left empty, the fittings drawn are counted"
        numeric
      />
      <TextField
        {...common}
        name="velocityCold"
        label={`Velocity limit cold, ${unitSymbol('velocity', units)}`}
        value={basis.velocityCold?.typed ?? ''}
        hint="left empty, the profile’s"
      />
      <TextField
        {...common}
        name="velocityHot"
        label={`Velocity limit hot, ${unitSymbol('velocity', units)}`}
        value={basis.velocityHot?.typed ?? ''}
        hint="left empty, the profile’s"
      />
      <SelectField
        {...common}
        name="units"
        label="Figures shown in"
        value={units}
        choices={[
          ['us', 'psi, gpm, feet'],
          ['si', 'kPa, L/s, metres'],
        ]}
      />
    </FormFields>
  );
}

export function basisPart(bench: Workbench): Part {
  return { id: formPartId(basisForm), html: (<BasisFields job={bench.job} />) as string };
}

export function BasisForm({ bench }: { bench: Workbench }): JSX.Element {
  return (
    <EditForm id={basisForm} action={`/jobs/${bench.id}/basis`} live>
      <BasisFields job={bench.job} />
    </EditForm>
  );
}
