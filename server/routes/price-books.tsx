import type { FastifyInstance } from 'fastify';
import type { PriceBook } from '../../engine/index.ts';
import { DeleteBookPage } from '../../views/pages/delete-book-page.tsx';
import { PricesPage } from '../../views/pages/prices-page.tsx';
import type { BookSummary } from '../../views/prices.ts';
import type { Problems, Refused } from '../../views/workbench.ts';
import { readPrices } from '../document/read-prices.ts';
import { writePrices } from '../document/write-prices.ts';
import { formFields } from '../forms/form-fields.ts';
import { newBookForm } from '../forms/price-book-forms.ts';
import { readForm } from '../forms/read-form.ts';
import { sendHtml } from '../http/html.ts';
import { noSuchJob, Refusal } from '../http/refusal.ts';
import { safeFileName } from '../http/safe-file-name.ts';
import { shippedId } from '../prices/price-books.ts';
import { pricesCsv } from '../prices/prices-csv.ts';
import { byteOrderMark } from '../spreadsheet/csv-text.ts';
import { putInBin } from '../storage/bin-store.ts';
import {
  createPriceBook,
  listJobBooks,
  listPriceBooks,
  readPriceBookRow,
  useBook,
} from '../storage/price-book-store.ts';
import type { AppContext } from './context.ts';
import { openBookOrRefuse } from './open-book-or-refuse.ts';
import { readUpload } from './read-upload.ts';

interface Place {
  Params: { id: string };
}

/** The list of price books: making, uploading, downloading and deleting them, and which job uses which. */
export function registerPriceBooks(app: FastifyInstance, context: AppContext): void {
  const { store, now } = context;

  async function listPage(refused?: Refused, problems: Problems = {}): Promise<string> {
    const shipped = await openBookOrRefuse(context, shippedId);
    const kept = await listPriceBooks(store);
    const books: BookSummary[] = [
      {
        id: shippedId,
        name: shipped.book.name,
        kept: false,
        about: 'ships with Hightap, read-only; invented',
      },
      ...kept.map(({ id, name, updated_at }) => {
        return { id, name, kept: true, about: `changed ${updated_at.slice(0, 10)}` };
      }),
    ];
    const jobs = (await listJobBooks(store)).map(({ id, name, price_book }) => {
      return { id, name, book: price_book ?? shippedId };
    });
    return await (<PricesPage books={books} jobs={jobs} refused={refused} problems={problems} />);
  }

  app.get('/prices', async (_request, reply) => sendHtml(reply, await listPage()));

  app.post('/prices', async (request, reply) => {
    const fields = formFields(request.body);
    const form = readForm(newBookForm, fields);
    if (!form.ok) return sendHtml(reply, await listPage({ values: fields, problems: form.problems }), 422);
    const { name, start } = form.value;
    const from = start === 'empty' ? emptyBook(now()) : (await openBookOrRefuse(context, start)).book;
    const id = await createPriceBook(store, name, writePrices({ ...from, name }), now());
    return reply.redirect(`/prices/${id}`, 303);
  });

  app.post('/prices/upload', async (request, reply) => {
    const file = await readUpload(request);
    if (!file.ok) return sendHtml(reply, await listPage(undefined, { file: file.problem }), file.status);
    const read = await readPrices(file.bytes);
    if (!read.ok) {
      const problem = `This file is no price book, and nothing was kept: ${read.problems.join('; ')}.`;
      return sendHtml(reply, await listPage(undefined, { file: problem }), 422);
    }
    const id = await createPriceBook(store, read.book.name, writePrices(read.book), now());
    return reply.redirect(`/prices/${id}`, 303);
  });

  app.get<Place>('/prices/:id/file.json', async (request, reply) => {
    const { book } = await openBookOrRefuse(context, request.params.id);
    return reply
      .type('application/json; charset=utf-8')
      .header('content-disposition', `attachment; filename="${fileName(book, '.prices.json')}"`)
      .header('cache-control', 'no-store')
      .send(writePrices(book));
  });

  app.get<Place>('/prices/:id/file.csv', async (request, reply) => {
    const { book } = await openBookOrRefuse(context, request.params.id);
    return reply
      .type('text/csv; charset=utf-8')
      .header('content-disposition', `attachment; filename="${fileName(book, '.prices.csv')}"`)
      .header('cache-control', 'no-store')
      .send(byteOrderMark + pricesCsv(book));
  });

  app.get<Place>('/prices/:id/delete', async (request, reply) => {
    const { id } = request.params;
    const row = await readPriceBookRow(store, id);
    if (row === undefined) throw noSuchBookToDelete(id);
    const usedBy = (await listJobBooks(store)).filter((job) => job.price_book === id).map(({ name }) => name);
    return sendHtml(reply, await (<DeleteBookPage id={id} name={row.name} usedBy={usedBy} />));
  });

  app.post<Place>('/prices/:id/delete', async (request, reply) => {
    const { id } = request.params;
    if (!(await putInBin(store, 'price_book', id, now()))) throw noSuchBookToDelete(id);
    return reply.redirect('/prices', 303);
  });

  app.post<Place>('/jobs/:id/prices', async (request, reply) => {
    const { book = '' } = formFields(request.body);
    const { id } = await openBookOrRefuse(context, book);
    if (!(await useBook(store, request.params.id, id === shippedId ? null : id))) throw noSuchJob();
    return reply.redirect('/prices#use-title', 303);
  });
}

function emptyBook(now: Date): PriceBook {
  return {
    format: 'hightap-prices',
    version: 1,
    name: 'New book',
    invented: false,
    currency: 'USD',
    effective: now.toISOString().slice(0, 10),
    source: 'Not stated yet',
    pipe: [],
    fittings: [],
    devices: [],
  };
}

function fileName({ name, invented }: PriceBook, ending: string): string {
  return safeFileName(invented && !/invented/i.test(name) ? `Invented ${name}` : name, ending);
}

function noSuchBookToDelete(id: string): Refusal {
  return id === shippedId
    ? new Refusal(403, 'Read-only', 'The book that ships with Hightap stays. Nothing was changed.')
    : new Refusal(
        404,
        'No such price book',
        'There is no price book at this address. It may have been deleted.',
      );
}
