import type { Edited } from '../edits/edited.ts';
import type { FormFields } from '../forms/form-fields.ts';
import { type SavedSeen, saveSeen } from '../workbench/save-seen.ts';
import type { OpenJob } from '../workbench/workbench.tsx';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';

/** Makes a posted change to a job, on the revision that the page showed, merged with what was saved since. */
export async function changeJob(
  context: AppContext,
  id: string,
  { revision }: FormFields,
  edit: (shown: OpenJob) => Edited | Promise<Edited>,
): Promise<SavedSeen> {
  const now = await openOrRefuse(context, id);
  const seen = revision === undefined ? undefined : Number(revision);
  const { saved } = await saveSeen({ ...context, time: context.now() }, now, seen, edit);
  return saved;
}
