import type { Edited } from '../edits/edited.ts';
import type { FormFields } from '../forms/form-fields.ts';
import { type SavedEdit, saveEdit } from '../workbench/save-edit.ts';
import type { OpenJob } from '../workbench/workbench.tsx';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';

export const clashText =
  'Nothing was changed: this job was changed elsewhere since this page was loaded. It is shown as it is now; try again.';

/** Makes a posted change to a job, if the page that posted it showed the job as it is. */
export async function changeJob(
  context: AppContext,
  id: string,
  { revision }: FormFields,
  edit: (before: OpenJob) => Edited | Promise<Edited>,
): Promise<SavedEdit> {
  const before = await openOrRefuse(context, id);
  const expected = revision === undefined ? before.revision : Number(revision);
  if (expected !== before.revision) return { ok: false, why: 'clash' };
  const edited = await edit(before);
  return await saveEdit(context.store, context.jobs, before, expected, edited, context.now());
}
