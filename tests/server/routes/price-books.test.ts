import { describe, expect, it } from 'vitest';
import { writePrices } from '../../../server/document/write-prices.ts';
import { pricesCsv } from '../../../server/prices/prices-csv.ts';
import { shippedPrices } from '../../../server/prices/shipped-prices.ts';
import { createPriceBook, readPriceBookRow } from '../../../server/storage/price-book-store.ts';
import { smallBook } from '../../engine/takeoff/small-book.ts';
import { placedDocument } from '../placed-job.ts';
import { manyPrices } from '../prices/many-prices.ts';
import { noon, type TestApp, testApp } from '../test-app.ts';
import { upload } from '../upload.ts';

const plain = (body: string) =>
  body
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ')
    .replaceAll('&#34;', '"');
const heading = 'item,kind,material,joint,size,unit,price,hours';

interface BookApp extends TestApp {
  readonly book: string;
  readonly kept: () => Promise<string>;
}

/** The app with one more price book in its store. */
async function bookApp(document?: string): Promise<BookApp> {
  const test = await testApp(document);
  const book = await createPriceBook(test.store, smallBook.name, writePrices(smallBook), noon);
  return { ...test, book, kept: async () => (await readPriceBookRow(test.store, book))?.document ?? '' };
}

/** Uploads a table and gives the page of what it would change. */
async function preview({ app, book }: BookApp, table: string) {
  const answer = await app.inject(upload(`/prices/${book}/imports`, table));
  expect(answer.statusCode).toBe(303);
  const { location } = answer.headers;
  let page = await app.inject(location!);
  while (page.headers.refresh !== undefined) {
    await new Promise((resolve) => setTimeout(resolve, 50));
    page = await app.inject(location!);
  }
  return { address: location!, page, text: plain(page.body) };
}

describe('the list of price books', () => {
  it('always has the one that ships, which nobody can change or delete', async () => {
    const { app, post } = await testApp();
    expect(plain((await app.inject('/prices')).body)).toContain('Invented prices 2026 ships with Hightap');
    const page = await app.inject('/prices/shipped');
    expect(page.body).toContain('Invented prices.');
    expect(page.body).not.toContain('name="price"');
    expect((await post('/prices/shipped/items/pipe/0', { price: '1', hours: '1' })).statusCode).toBe(403);
    expect((await post('/prices/shipped/about', { name: 'x' })).statusCode).toBe(403);
    expect((await post('/prices/shipped/delete', {})).statusCode).toBe(403);
    expect((await app.inject(upload('/prices/shipped/imports', 'x'))).statusCode).toBe(403);
  });

  it('gives a copy, an empty book, and one that was uploaded', async () => {
    const { app, post } = await testApp();
    const copy = await post('/prices', { name: 'My <prices>', start: 'shipped' });
    expect(copy.statusCode).toBe(303);
    const page = (await app.inject(copy.headers.location!)).body;
    expect(page).toContain('<h1>My &lt;prices></h1>');
    expect(page).toContain('Invented prices.');
    const empty = await post('/prices', { name: 'Empty', start: 'empty' });
    expect((await app.inject(empty.headers.location!)).body).toContain('No prices in this list yet.');
    const sent = await app.inject(upload('/prices/upload', writePrices(smallBook), 'a.json'));
    const file = await app.inject(`${sent.headers.location!}/file.json`);
    expect(file.body).toBe(writePrices(smallBook));
    expect((await post('/prices', { name: ' ', start: 'empty' })).statusCode).toBe(422);
    expect((await post('/prices', { name: 'x', start: 'gone' })).statusCode).toBe(404);
    const bad = await app.inject(upload('/prices/upload', '{"format":"hightap-prices"}', 'a.json'));
    expect(bad.statusCode).toBe(422);
    expect(bad.body).toContain('This file is no price book, and nothing was kept');
    expect((await app.inject('/prices')).body.match(/file\.csv/g)).toHaveLength(4);
  });

  it('lets a job use a book, until it is deleted', async () => {
    const { app, post, id, book } = await bookApp(placedDocument());
    const compared = async () => plain((await app.inject(`/jobs/${id}/compare`)).body);
    expect(await compared()).toContain('Invented prices 2026');
    expect((await post(`/jobs/${id}/prices`, { book })).statusCode).toBe(303);
    expect(await compared()).toContain('A few prices, USD');
    expect(await compared()).not.toContain('Invented prices 2026');
    expect(plain((await app.inject(`/jobs/${id}/sizing`)).body)).toContain('A few prices');
    expect((await post(`/jobs/${id}/prices`, { book: 'gone' })).statusCode).toBe(404);
    expect((await post('/jobs/gone/prices', { book })).statusCode).toBe(404);
    const question = await app.inject(`/prices/${book}/delete`);
    expect(question.body).toContain('These jobs use it');
    expect((await post(`/prices/${book}/delete`, {})).statusCode).toBe(303);
    expect((await app.inject(`/prices/${book}`)).statusCode).toBe(404);
    expect(await compared()).toContain('Invented prices 2026');
  });

  it('gives each book as a file', async () => {
    const { app } = await testApp();
    const { book } = await shippedPrices();
    const csv = await app.inject('/prices/shipped/file.csv');
    expect(csv.body).toBe(`\ufeff${pricesCsv(book)}`);
    expect(csv.headers['content-disposition']).toBe('attachment; filename="Invented prices 2026.prices.csv"');
    expect((await app.inject('/prices/shipped/file.json')).body).toBe(writePrices(book));
  });
});

describe.each([
  ['without js', {}],
  ['with js', { 'hx-request': 'true' }],
])('one price, %s', (_how, headers) => {
  it('is edited and removed where it stands', async () => {
    const { app, post, book, kept } = await bookApp();
    const answer = await post(
      `/prices/${book}/items/pipe/1`,
      { revision: '1', price: ' 0.9050 ', hours: '0.04', text: 'pex', page: '1' },
      headers,
    );
    expect(answer.statusCode).toBe(303);
    expect(answer.headers.location).toBe(`/prices/${book}?list=pipe&text=pex&page=1#item:pipe:1`);
    expect(await kept()).toContain('"size": "3/4", "perFoot": "0.9050", "hoursPerFoot": 0.04');
    const ports = { revision: '2', price: '34', hours: '1', portPrice: '15', portHours: '0.2' };
    expect((await post(`/prices/${book}/items/devices/3`, ports, headers)).statusCode).toBe(303);
    expect(await kept()).toContain('"each": "34", "perPort": "15", "hours": 1, "hoursPerPort": 0.2');
    expect((await post(`/prices/${book}/items/pipe/0`, { do: 'remove' }, headers)).statusCode).toBe(303);
    expect(await kept()).not.toContain('"material": "pex", "size": "1/2", "perFoot"');
    expect((await app.inject(`/prices/${book}`)).body).not.toContain('1/2 PEX SDR-9 pipe');
  });

  it.each([
    [{ price: '', hours: '1' }, 'is missing; expected price of a foot'],
    [{ price: '0.12345', hours: '1' }, 'at most 4 decimals'],
    [{ price: '-1', hours: '1' }, 'came; expected price of a foot'],
    [{ price: '1', hours: 'soon' }, 'came; expected hours of labour'],
  ])('%j is refused in words beside it', async (fields, says) => {
    const { post, book, kept } = await bookApp();
    const before = await kept();
    const answer = await post(`/prices/${book}/items/pipe/1`, { revision: '1', ...fields }, headers);
    expect(answer.statusCode).toBe(422);
    expect(plain(answer.body)).toContain(says);
    expect(answer.body).toMatch(/id="row:pipe:1:(price|hours):problem"/);
    expect(await kept()).toBe(before);
  });

  it('is not changed from a page that is no longer true', async () => {
    const { post, book, kept } = await bookApp();
    await post(`/prices/${book}/items/pipe/1`, { revision: '1', price: '2', hours: '1' }, headers);
    const before = await kept();
    const late = await post(
      `/prices/${book}/items/pipe/1`,
      { revision: '1', price: '3', hours: '1' },
      headers,
    );
    expect(late.statusCode).toBe(409);
    expect(late.body).toContain('this book was changed elsewhere');
    expect(
      (await post(`/prices/${book}/items/pipe/99`, { price: '3', hours: '1' }, headers)).statusCode,
    ).toBe(404);
    expect((await post(`/prices/${book}/items/none/0`, { price: '3', hours: '1' }, headers)).statusCode).toBe(
      404,
    );
    expect(await kept()).toBe(before);
  });
});

describe('one book', () => {
  it('shows the items that have the words asked for, a page at a time', async () => {
    const { app } = await testApp();
    const { book } = await shippedPrices();
    const shown = (body: string) =>
      [...body.matchAll(/class="price-name"[^>]*>([^<]*)</g)].map(([, name]) => name!);
    const rows = shown((await app.inject('/prices/shipped?list=pipe&text=PEX 3/4')).body);
    expect(rows).toEqual(['3/4 PEX SDR-9 pipe']);
    const all: string[] = [];
    for (let page = 1; page <= Math.ceil(book.fittings.length / 100); page++) {
      all.push(...shown((await app.inject(`/prices/shipped?list=fittings&page=${page}`)).body));
    }
    expect(new Set(all).size).toBe(book.fittings.length);
    expect((await app.inject('/prices/shipped?list=x&page=-1&text=<b>')).body).toContain(
      'No item has these words.',
    );
  });

  it('has a head that is edited', async () => {
    const { post, book, kept } = await bookApp();
    const head = {
      name: 'Ours',
      source: 'Our yard',
      currency: 'EUR',
      effective: '2026-02-01',
      revision: '1',
    };
    expect((await post(`/prices/${book}/about`, head)).statusCode).toBe(303);
    expect(await kept()).toContain('"name": "Ours"');
    expect(await kept()).toContain('"invented": false,\n  "currency": "EUR",\n  "effective": "2026-02-01"');
    const before = await kept();
    for (const wrong of [{ name: '' }, { currency: 'euro' }, { effective: 'soon' }, { source: '' }]) {
      expect((await post(`/prices/${book}/about`, { ...head, revision: '2', ...wrong })).statusCode).toBe(
        422,
      );
    }
    expect(await kept()).toBe(before);
  });
});

describe('an import', () => {
  const table = [
    heading,
    'pipe,,pex,,3/4 in,ft,0.90,0.03',
    'pipe,,pex,,1/2 in,ft,0.10,0.02',
    'pipe,,pex,,1 in,ft,1.50,0.03',
    'pipe,,pex,,7/8 in,ft,1.50,0.03',
    'fitting,ell,pex,insert-brass,1 in,each,,0.1',
  ].join('\n');

  it('is shown before anything is kept, and then kept without its bad lines', async () => {
    const test = await bookApp();
    const before = await test.kept();
    const { address, text } = await preview(test, table);
    expect(text).toContain('1 new, 1 changed, 1 the same; 2 lines cannot be read; 10 prices of the book');
    expect(text).toContain('Line 5 size: "7/8" is no size of PEX SDR-9');
    expect(text).toContain('Line 6 price is empty, and a missing figure is never taken as zero');
    expect(text).toMatch(/3\/4 PEX SDR-9 pipe 0\.85, 0\.03 h → 0\.90, 0\.03 h/);
    expect(text).toContain('Keep 2 lines, leave 2 out');
    expect(await test.kept()).toBe(before);
    expect((await test.post(address, {})).statusCode).toBe(303);
    expect(await test.kept()).toContain('"size": "3/4", "perFoot": "0.90"');
    expect(await test.kept()).toContain('{ "material": "pex", "size": "1", "perFoot": "1.50"');
    // Kept once; the preview is gone.
    expect((await test.post(address, {})).statusCode).toBe(404);
  });

  it('takes a whole book as JSON as well', async () => {
    const test = await bookApp();
    const json = writePrices({ ...smallBook, pipe: [{ ...smallBook.pipe[0]!, perFoot: '0.2' }] });
    const { text } = await preview(test, json);
    expect(text).toContain('0 new, 1 changed, 9 the same; no line is wrong; 2 prices');
  });

  it.each([
    ['a table of something else', 'a,b\n1,2', 'there is no heading item'],
    ['an open quote', `${heading}\npipe,"pex`, 'a quote is opened and never closed'],
    ['too many columns', `${heading}${','.repeat(100)}\n`, 'more than the 40 cells'],
    ['no text', Buffer.from([0x50, 0x4b, 3, 4, 0xff, 0xfe]), 'not UTF-8'],
    ['half a book', '{"format":"hightap-prices","version":1}', 'is missing'],
    ['a book in another currency', writePrices({ ...smallBook, currency: 'EUR' }), 'this book is in USD'],
    ['nothing', '', 'The file is empty'],
  ])('of %s is refused in words and changes nothing', async (_what, content, says) => {
    const { app, book, kept } = await bookApp();
    const before = await kept();
    const answer = await app.inject(upload(`/prices/${book}/imports`, content));
    expect(answer.statusCode).toBe(422);
    expect(plain(answer.body)).toContain(says);
    expect(answer.body).toContain('id="import-form:file:problem"');
    expect(await kept()).toBe(before);
  });

  it('does not overwrite what was changed since', async () => {
    const test = await bookApp();
    const { address } = await preview(test, table);
    await test.post(`/prices/${test.book}/items/pipe/1`, { revision: '1', price: '7', hours: '1' });
    const before = await test.kept();
    expect((await test.post(address, {})).statusCode).toBe(409);
    expect((await test.app.inject(address)).statusCode).toBe(409);
    expect(await test.kept()).toBe(before);
  });

  it('belongs to the book into which it was read', async () => {
    const test = await bookApp();
    const { address } = await preview(test, table);
    const other = await createPriceBook(test.store, 'Other', writePrices(smallBook), noon);
    expect((await test.post(address.replace(test.book, other), {})).statusCode).toBe(404);
    expect((await test.app.inject(`/prices/${test.book}/imports/none`)).statusCode).toBe(404);
  });

  it('of many lines shows how far it is, then what it changes', async () => {
    const test = await bookApp();
    const { book } = await shippedPrices();
    // The same lines four times: those that come again are bad, so that the file is longer than a list may be.
    const lines = manyPrices(book, 19_000).trimEnd().split('\r\n');
    const table = [...lines, ...lines.slice(1), ...lines.slice(1), ...lines.slice(1)].join('\r\n');
    const answer = await test.app.inject(upload(`/prices/${test.book}/imports`, table));
    expect(answer.statusCode).toBe(303);
    const address = answer.headers.location!;
    const reading = await test.app.inject(address);
    expect(reading.headers.refresh).toBe('1');
    expect(plain(reading.body)).toMatch(/\d+ lines, \d+ % of the file/);
    expect((await test.post(address, {})).statusCode).toBe(409);
    const { text } = await preview(test, table);
    const { pipe, fittings, devices } = smallBook;
    const [, added, changed, same] = /(\d+) new, (\d+) changed, (\d+) the same/.exec(text)!;
    expect(Number(added) + Number(changed) + Number(same)).toBe(19_000);
    expect(Number(changed) + Number(same)).toBeLessThanOrEqual(
      pipe.length + fittings.length + devices.length,
    );
    expect(text).toContain('57000 lines cannot be read');
  });
});
