import type { FastifyInstance, FastifyReply } from 'fastify';
import type { PriceBook } from '../../engine/index.ts';
import { mergePrices, removePrice } from '../../engine/takeoff/merge-prices.ts';
import { lineKey } from '../../engine/takeoff/price-line.ts';
import { PriceBookPage } from '../../views/pages/price-book-page.tsx';
import type { BookView } from '../../views/prices.ts';
import { writePrices } from '../document/write-prices.ts';
import { type FormFields, formFields } from '../forms/form-fields.ts';
import { aboutBookForm } from '../forms/price-book-forms.ts';
import { readForm } from '../forms/read-form.ts';
import { sendHtml } from '../http/html.ts';
import { Refusal } from '../http/refusal.ts';
import { editPrice } from '../prices/edit-price.ts';
import { type BookQuestion, isPriceList, listOf, viewBook } from '../prices/view-book.ts';
import { savePriceBook } from '../storage/price-book-store.ts';
import type { AppContext } from './context.ts';
import { openBookOrRefuse, openKeptOrRefuse } from './open-book-or-refuse.ts';
import { type Query, queryText } from './query-text.ts';

export const bookClash =
  'Nothing was changed: this book was changed elsewhere since this page was loaded. It is shown as it is now; try again.';

interface Item {
  readonly id: string;
  readonly list: string;
  readonly at: string;
}

/** One price book: its items, one price changed or removed, its head. */
export function registerPriceBook(app: FastifyInstance, context: AppContext): void {
  async function send(
    reply: FastifyReply,
    id: string,
    question: BookQuestion,
    more: Partial<BookView> & { readonly notice?: string; readonly status?: number } = {},
  ): Promise<FastifyReply> {
    const { notice = '', status = 200, ...parts } = more;
    const view = { ...viewBook(await openBookOrRefuse(context, id), question), ...parts };
    return sendHtml(reply, await (<PriceBookPage view={view} notice={notice} />), status);
  }

  /** Keeps a changed book if it is still the one that the page showed. */
  async function keep(id: string, fields: FormFields, revision: number, book: PriceBook): Promise<boolean> {
    if (fields.revision !== undefined && Number(fields.revision) !== revision) return false;
    const saved = await savePriceBook(
      context.store,
      id,
      revision,
      book.name,
      writePrices(book),
      context.now(),
    );
    return saved.ok;
  }

  app.get<{ Params: { id: string }; Querystring: Query }>('/prices/:id', async ({ params, query }, reply) =>
    send(reply, params.id, questionOf(queryText(query.list), queryText(query.text), queryText(query.page))),
  );

  app.post<{ Params: Item }>('/prices/:id/items/:list/:at', async (request, reply) => {
    const { id, list, at } = request.params;
    const fields = formFields(request.body);
    const question = questionOf(list, fields.text, fields.page);
    const { revision, book } = await openKeptOrRefuse(context, id);
    const line = isPriceList(list) && /^\d{1,6}$/.test(at) ? listOf(book, list)[Number(at)] : undefined;
    if (line === undefined) {
      throw new Refusal(404, 'No such price', 'There is no such price in this book. Nothing was changed.');
    }
    let changed: PriceBook;
    if (fields.do === 'remove') changed = removePrice(book, lineKey(line));
    else {
      const edited = editPrice(line, fields);
      if (!edited.ok) {
        const refused = { values: fields, problems: edited.problems };
        const notice = `Nothing was changed: ${Object.values(edited.problems).join('; ')}.`;
        return send(reply, id, question, { refusedRow: { at: Number(at), refused }, notice, status: 422 });
      }
      changed = mergePrices(book, [edited.line]);
    }
    if (!(await keep(id, fields, revision, changed))) {
      return send(reply, id, question, { notice: bookClash, status: 409 });
    }
    const { text, page } = question;
    const query = new URLSearchParams({ list, text, page: `${page}` });
    const anchor = fields.do === 'remove' ? 'items' : `item:${list}:${at}`;
    return reply.redirect(`/prices/${id}?${query}#${anchor}`, 303);
  });

  app.post<{ Params: { id: string } }>('/prices/:id/about', async (request, reply) => {
    const { id } = request.params;
    const fields = formFields(request.body);
    const { revision, book } = await openKeptOrRefuse(context, id);
    const form = readForm(aboutBookForm, fields);
    if (!form.ok) {
      const refusedAbout = { values: fields, problems: form.problems };
      return send(reply, id, questionOf(), { refusedAbout, notice: 'Nothing was changed.', status: 422 });
    }
    if (!(await keep(id, fields, revision, { ...book, ...form.value }))) {
      return send(reply, id, questionOf(), { notice: bookClash, status: 409 });
    }
    return reply.redirect(`/prices/${id}#about`, 303);
  });
}

export function questionOf(list = '', text = '', page = ''): BookQuestion {
  return {
    list: isPriceList(list) ? list : 'pipe',
    text: text.trim().slice(0, 100),
    page: /^\d{1,4}$/.test(page) ? Number(page) : 1,
  };
}
