import { jobChanges } from '../../engine/index.ts';
import { readAddress } from '../../views/job-address.ts';
import { changeSummary } from '../../views/text/change-text.ts';
import type { Store } from '../storage/database.ts';
import type { Moved } from '../storage/job-head.ts';
import { redoTrial, undoTrial } from '../storage/trial-store.ts';
import { redoJob, turnsOf, undoJob } from '../storage/undo-store.ts';
import type { OpenJob } from './workbench.tsx';

/** Undo or redo. */
export type Turn = 'undo' | 'redo';

const moves = {
  undo: { job: undoJob, trial: undoTrial },
  redo: { job: redoJob, trial: redoTrial },
} as const;

/** Moves a job, or a trial, one revision back or forth from the one that is open; an earlier revision never moves. */
export async function turnJob(
  store: Store,
  turn: Turn,
  { id, revision }: OpenJob,
  now: Date,
): Promise<Moved> {
  const address = readAddress(id);
  switch (address.at) {
    case 'job':
      return await moves[turn].job(store, address.job, revision, now);
    case 'trial':
      return await moves[turn].trial(store, address.trial, revision);
    case 'revision':
      return { ok: false, clash: false };
  }
}

const done = { undo: 'Undone', redo: 'Redone' } as const;
const nothing = {
  undo: 'There is nothing to undo: this is how it began.',
  redo: 'There is nothing to redo.',
} as const;

/** What a turn took back or brought back: `Undone: Run ER: 1 becomes 3/4`. */
export function turnText(turn: Turn, before: OpenJob, after: OpenJob): string {
  const [was, is] = turn === 'undo' ? [after.job, before.job] : [before.job, after.job];
  return `${done[turn]}: ${changeSummary(jobChanges(was, is), is.chosen)}.`;
}

export function nothingText(turn: Turn): string {
  return nothing[turn];
}

const trialDone = new Map([
  ['keep', 'Kept: what was tried is saved. Undo takes it back.'],
  ['drop', 'Dropped: the job is as it was before the trial.'],
]);

/** What was just done, for a page that was loaded after it; nothing where the word is none. */
export async function doneText(store: Store, done: string, open: OpenJob): Promise<string> {
  return done === 'undo' || done === 'redo'
    ? await turnedText(store, done, open)
    : (trialDone.get(done) ?? '');
}

/** The same for a page that was loaded after a turn: what redo, or undo, would do now. */
async function turnedText(store: Store, turn: Turn, { id }: OpenJob): Promise<string> {
  const turns = await turnsOf(store, id);
  const change = turn === 'undo' ? turns?.redo?.change : turns?.undo?.change;
  return change == null ? `${done[turn]}.` : `${done[turn]}: ${change}.`;
}
