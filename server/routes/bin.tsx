import type { FastifyInstance } from 'fastify';
import { BinPage } from '../../views/pages/bin-page.tsx';
import { sendHtml } from '../http/html.ts';
import { Refusal } from '../http/refusal.ts';
import { type Binnable, deleteForGood, lastDay, listBin, takeFromBin } from '../storage/bin-store.ts';
import type { AppContext } from './context.ts';

interface Place {
  Params: { kind: string; id: string };
}

/** The words of the addresses. */
const kinds: Readonly<Record<string, Binnable>> = { jobs: 'job', prices: 'price_book' };

/** The bin: what was deleted in the last thirty days, to be restored or deleted for good. */
export function registerBin(app: FastifyInstance, { store }: AppContext): void {
  app.get('/bin', async (_request, reply) => {
    const things = (await listBin(store)).map(({ kind, id, name, binned_at }) => ({
      place: `/bin/${kind === 'job' ? 'jobs' : 'prices'}/${id}`,
      what: kind === 'job' ? 'Job' : 'Price book',
      name,
      deleted: binned_at.slice(0, 10),
      until: lastDay(binned_at).toISOString().slice(0, 10),
    }));
    return sendHtml(reply, await (<BinPage things={things} />));
  });

  app.post<Place>('/bin/:kind/:id/restore', async (request, reply) => {
    const { kind, id } = placeOf(request.params);
    if (!(await takeFromBin(store, kind, id))) throw notInBin();
    return reply.redirect(kind === 'job' ? `/jobs/${id}` : `/prices/${id}`, 303);
  });

  app.post<Place>('/bin/:kind/:id/delete', async (request, reply) => {
    const { kind, id } = placeOf(request.params);
    if (!(await deleteForGood(store, kind, id))) throw notInBin();
    return reply.redirect('/bin', 303);
  });
}

function placeOf({ kind, id }: Place['Params']): { kind: Binnable; id: string } {
  const known = Object.hasOwn(kinds, kind) ? kinds[kind] : undefined;
  if (known === undefined) throw notInBin();
  return { kind: known, id };
}

function notInBin(): Refusal {
  return new Refusal(
    404,
    'Not in the bin',
    'This is not in the bin. It may have been restored, or deleted for good.',
  );
}
