import { setTimeout } from 'node:timers/promises';
import type { FastifyInstance, FastifyReply } from 'fastify';
import { mergePrices } from '../../engine/takeoff/merge-prices.ts';
import { ImportPage, ReadingPage } from '../../views/pages/import-page.tsx';
import { PriceBookPage } from '../../views/pages/price-book-page.tsx';
import { writePrices } from '../document/write-prices.ts';
import { sendHtml } from '../http/html.ts';
import { Refusal } from '../http/refusal.ts';
import { viewBook, viewPreview } from '../prices/view-book.ts';
import { type WaitingImport, waitingImports } from '../prices/waiting-imports.ts';
import { savePriceBook } from '../storage/price-book-store.ts';
import type { AppContext } from './context.ts';
import { openKeptOrRefuse } from './open-book-or-refuse.ts';
import { bookClash, questionOf } from './price-book.tsx';
import { readUpload } from './read-upload.ts';

interface Place {
  Params: { id: string; token: string };
}

/** A file of up to some ten thousand lines is waited for; of a larger one the answer shows how far it is read. */
const shortFileBytes = 1_000_000;
const patience = 700;

/** Reading a file of prices into a book: uploaded, shown, and kept when the reader says so. */
export function registerPriceImports(app: FastifyInstance, context: AppContext): void {
  const { store, now } = context;
  const waiting = waitingImports();

  async function bookPage(reply: FastifyReply, id: string, problem: string, status: number) {
    const view = viewBook(await openKeptOrRefuse(context, id), questionOf());
    const notice = `Nothing was changed. ${problem}`;
    return sendHtml(reply, await (<PriceBookPage view={view} notice={notice} problem={problem} />), status);
  }

  function find(token: string, id: string): WaitingImport {
    const found = waiting.find(token, id, now());
    if (found !== undefined) return found;
    throw new Refusal(
      404,
      'No longer kept',
      'This preview is no longer kept. Nothing was changed; upload the file again.',
    );
  }

  app.post<{ Params: { id: string } }>('/prices/:id/imports', async (request, reply) => {
    const { id } = request.params;
    const { book, revision } = await openKeptOrRefuse(context, id);
    const file = await readUpload(request);
    if (!file.ok) return bookPage(reply, id, file.problem, file.status);
    const started = waiting.start(file.bytes, id, revision, now(), book);
    if (file.bytes.length <= shortFileBytes) {
      await Promise.race([started.done, setTimeout(patience, undefined, { ref: false })]);
    }
    if (started.result?.ok === false) {
      waiting.forget(started.token);
      return bookPage(reply, id, started.result.problems.join(' '), 422);
    }
    return reply.redirect(`/prices/${id}/imports/${started.token}`, 303);
  });

  app.get<Place>('/prices/:id/imports/:token', async (request, reply) => {
    const { id, token } = request.params;
    const head = await openKeptOrRefuse(context, id);
    const found = find(token, id);
    const { result, share, lines } = found;
    if (result === undefined) {
      reply.header('refresh', '1');
      return sendHtml(reply, await (<ReadingPage {...head} token={token} share={share} lines={lines} />));
    }
    if (!result.ok) return bookPage(reply, id, result.problems.join(' '), 422);
    if (found.revision !== head.revision) return bookPage(reply, id, bookClash, 409);
    return sendHtml(reply, await (<ImportPage view={viewPreview(head, token, result.preview)} />));
  });

  app.post<Place>('/prices/:id/imports/:token', async (request, reply) => {
    const { id, token } = request.params;
    const { book, revision } = await openKeptOrRefuse(context, id);
    const { result, revision: seen } = find(token, id);
    if (result?.ok !== true)
      throw new Refusal(409, 'Not read yet', 'The file is not read yet. Nothing was changed.');
    const merged = mergePrices(book, result.preview.lines);
    // The preview was of the book as it was; of a changed one it may be wrong.
    const saved =
      seen === revision
        ? await savePriceBook(store, id, revision, merged.name, writePrices(merged), now())
        : undefined;
    if (saved?.ok !== true) return bookPage(reply, id, bookClash, 409);
    waiting.forget(token);
    return reply.redirect(`/prices/${id}`, 303);
  });
}
