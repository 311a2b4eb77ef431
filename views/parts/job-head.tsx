import type { Job } from '../../engine/job/job.ts';
import { EditForm, FormFields, formPartId } from '../components/edit-form.tsx';
import { SelectField, TextField } from '../components/field.tsx';
import type { Part } from '../part.ts';
import type { Refused, Workbench } from '../workbench.ts';

export const jobTitleId = 'job-title';
export const jobForm = 'job';

/** A note of more than a line or two is folded, so that the staircase is seen at once. */
const longNote = 160;

export function JobTitle({ job }: { job: Job }): JSX.Element {
  return (
    <div id={jobTitleId} class="title">
      <h1 safe>{job.name}</h1>
      <JobNote note={job.note} />
    </div>
  );
}

function JobNote({ note }: { note: string | undefined }): JSX.Element {
  if (note === undefined) return '';
  const text = (
    <p class="job-note" safe>
      {note}
    </p>
  );
  if (note.length <= longNote) return text;
  return (
    <details id="about">
      <summary id="about:summary">About this job</summary>
      {text as 'safe'}
    </details>
  );
}

export function JobFields({ job, refused }: { job: Job; refused?: Refused | undefined }): JSX.Element {
  return (
    <FormFields id={jobForm} refused={refused} button="Save" live>
      <TextField
        form={jobForm}
        name="name"
        label="Name of the job"
        value={job.name}
        refused={refused}
        required
        wide
      />
      <TextField form={jobForm} name="note" label="Note" value={job.note ?? ''} refused={refused} wide />
      <SelectField
        form={jobForm}
        name="chosen"
        label="Scheme"
        value={job.chosen}
        refused={refused}
        choices={job.schemes.map((scheme) => [scheme.id, scheme.name] as const)}
      />
    </FormFields>
  );
}

export function jobFieldsPart(bench: Workbench): Part {
  return { id: formPartId(jobForm), html: (<JobFields job={bench.job} />) as string };
}

export function JobForm({ bench }: { bench: Workbench }): JSX.Element {
  return (
    <EditForm id={jobForm} action={`/jobs/${bench.id}/job`} live>
      <JobFields job={bench.job} />
    </EditForm>
  );
}
