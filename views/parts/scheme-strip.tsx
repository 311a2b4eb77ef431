import type { Job } from '../../engine/job/job.ts';
import { EditForm, FormFields, formPartId } from '../components/edit-form.tsx';
import { FormProblem, SelectField } from '../components/field.tsx';
import type { Part } from '../part.ts';
import type { Refused, Workbench } from '../workbench.ts';

export const schemeForm = 'scheme';

/** Which scheme the workbench edits; a choice where there are several. */
export function SchemeFields({ job, refused }: { job: Job; refused?: Refused | undefined }): JSX.Element {
  if (job.schemes.length === 1) {
    return (
      <div id={formPartId(schemeForm)}>
        Scheme <strong safe>{job.schemes[0]!.name}</strong>
        <FormProblem refused={refused} />
      </div>
    );
  }
  return (
    <FormFields id={schemeForm} refused={refused} button="Switch" live>
      <SelectField
        form={schemeForm}
        name="chosen"
        label="Scheme on this page"
        value={job.chosen}
        refused={refused}
        choices={job.schemes.map((scheme) => [scheme.id, scheme.name] as const)}
      />
    </FormFields>
  );
}

export function schemePart(bench: Workbench): Part {
  return { id: formPartId(schemeForm), html: (<SchemeFields job={bench.job} />) as string };
}

/** The scheme on the page. */
export function SchemeStrip({ bench }: { bench: Workbench }): JSX.Element {
  return (
    <div class="scheme-strip">
      <EditForm id={schemeForm} action={`/jobs/${bench.id}/scheme`} live>
        <SchemeFields job={bench.job} />
      </EditForm>
    </div>
  );
}
