import { noSuchJob, Refusal } from '../http/refusal.ts';
import type { OpenJob } from '../workbench/workbench.tsx';
import type { AppContext } from './context.ts';

/**
 * The job of an address, read and computed.
 *
 * @throws a refusal in words where there is none, or where its kept document does not compute
 */
export async function openOrRefuse({ jobs }: AppContext, id: string): Promise<OpenJob> {
  const opened = await jobs.open(id);
  if (opened.ok) return opened.open;
  if (opened.why === 'missing') throw noSuchJob();
  throw new Refusal(
    409,
    'This job does not compute',
    `${opened.sentences.join(' ')} Its file can still be downloaded from the list of jobs, mended, and uploaded again.`,
  );
}
