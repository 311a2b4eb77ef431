import type { Job } from '../../engine/job/job.ts';
import type { Refused, Workbench } from '../../views/workbench.ts';
import type { Edited } from '../edits/edited.ts';
import type { FormFields } from '../forms/form-fields.ts';
import type { FormResult } from '../forms/read-form.ts';

/** The thing that an address names: a run, a fixture, a level, a group; empty where it names none. */
export type Place = string;

/** One form of the workbench: where it posts, what it changes, and how it looks when it is refused. */
export interface EditAction {
  /** Behind `/jobs/:id`; `:place` stands for the thing. */
  readonly path: string;
  readonly apply: (job: Job, fields: FormFields, place: Place) => Edited;
  /** The form's swapped inside; `undefined` where the thing is gone. */
  readonly fields: (bench: Workbench, place: Place, refused?: Refused) => string | undefined;
  /** Id of the form. */
  readonly form: (place: Place) => string;
  /** Id of the panel that the form stands in, to be unfolded where the form is refused. */
  readonly panel?: (place: Place) => string;
  /** Where a page without the script goes on. */
  readonly anchor: (place: Place) => string;
}

/** Goes on with a checked form, or hands its problems back. */
export function withForm<T>(result: FormResult<T>, edit: (value: T) => Edited): Edited {
  return result.ok ? edit(result.value) : result;
}
