import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { indexPrices } from '../../../engine/index.ts';
import { buildApp } from '../../../server/app.tsx';
import { shippedPrices } from '../../../server/prices/shipped-prices.ts';
import { openStore } from '../../../server/storage/database.ts';
import { createJob } from '../../../server/storage/job-store.ts';
import { smallBook } from '../../engine/takeoff/small-book.ts';
import { exampleFiles, run } from '../cli/run.ts';
import { placedDocument } from '../placed-job.ts';
import { smallDocument } from '../small-job.ts';
import { readCsv } from '../spreadsheet/read-csv.ts';
import { readXlsx } from '../spreadsheet/read-xlsx.ts';
import { noon, type TestApp, testApp } from '../test-app.ts';

const large = exampleFiles().find((path) => path.endsWith('large-house.json'))!;

const plain = (body: string): string => body.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ');

async function body({ app, id }: Pick<TestApp, 'app' | 'id'>, query = ''): Promise<string> {
  const page = await app.inject(`/jobs/${id}/takeoff${query}`);
  expect(page.statusCode).toBe(200);
  return page.body;
}

/** Figures in cents from money as the page writes it. */
function cents(text: string): number[] {
  return [...text.matchAll(/\$([\d,]+\.\d\d)/g)].map(([, money]) =>
    Math.round(Number(money!.replaceAll(',', '')) * 100),
  );
}

interface Json {
  readonly total: string;
  readonly labor_h: number;
  readonly lines: readonly { readonly count?: number; readonly length_ft?: string }[];
}

async function fromTerminal(...args: readonly string[]): Promise<Json> {
  return JSON.parse((await run(['takeoff', large, ...args, '--json'])).stdout) as Json;
}

describe('the page of a take-off', () => {
  it('has the totals of the terminal, whatever the grouping', async () => {
    const test = await testApp(readFileSync(large, 'utf8'));
    const json = await fromTerminal('--scheme', 'zones');
    const total = Math.round(Number(json.total) * 100);
    for (const by of ['size', 'area', 'phase']) {
      const page = await body(test, `?scheme=zones&by=${by}`);
      const sums = [...page.matchAll(/<tr class="total">(.*?)<\/tr>/gs)].map(([row]) => plain(row));
      expect(sums.length).toBeGreaterThan(1);
      expect(sums.flatMap(cents).reduce((sum, one) => sum + one)).toBe(total);
      const answer = plain(/<p class="sum">.*?<\/p>/s.exec(page)![0]);
      expect(cents(answer)).toEqual([total]);
      expect(answer).toContain(`${json.labor_h.toFixed(2)} h of labor`);
      const rows = [
        ...page.matchAll(/<td class="numeric">(\$[\d,.]+)<\/td><td class="numeric">[\d.]+ h<\/td><\/tr>/g),
      ];
      // Every row and every sum of a group: all cents twice.
      expect(rows.flatMap(([, money]) => cents(money!)).reduce((sum, one) => sum + one)).toBe(2 * total);
    }
  });

  it('lists the chosen scheme by diameter where nothing is asked', async () => {
    const test = await testApp(placedDocument());
    const page = await body(test);
    expect(page).toContain('List by diameter');
    expect(page).toBe(await body(test, '?by=nonsense'));
    expect(page).toContain('<caption>1/2 in</caption>');
    expect(page).not.toContain('id="differences"');
  });

  it('says at every price that it is invented', async () => {
    const test = await testApp(placedDocument());
    const sections = (await body(test, '?against=home-run'))
      .split('<section')
      .filter((section) => section.includes('$'));
    expect(sections.length).toBeGreaterThan(1);
    for (const section of sections) expect(section).toContain('Invented prices.');
    for (const table of sections.flatMap(
      (section) => section.match(/<table class="parts">.*?<\/table>/gs) ?? [],
    )) {
      expect(table).toContain('Price (invented)');
    }
  });

  it('cuts as much as it measures, and shows each cut', async () => {
    const test = await testApp(readFileSync(large, 'utf8'));
    const page = await body(test, '?scheme=home-run');
    const [, service] = /<h3>1-1\/4 in PE service.*?<h3>|<h3>1-1\/4 in PE service.*$/s
      .exec(page)![0]
      .split('<tbody>');
    // The service as drawn: 70 ft in one piece, off a coil of 100.
    expect(plain(service!)).toMatch(/1: coil 100 ft .*70 ft .*30 ft/);
    expect(page).toContain('most of these are from memory');
  });

  it('buys pipe with an allowance instead, and shows no cuts then', async () => {
    const test = await testApp(readFileSync(large, 'utf8'));
    const page = await body(test, '?scheme=home-run&pipe=allow-10');
    const service = plain(/<h3>1-1\/4 in PE service.*?<\/div>/s.exec(page)![0]);
    // 70 ft and a tenth.
    expect(service).toMatch(/1 coil of 100 ft 100 ft for 77 ft with 10 % for waste/);
    expect(service).toContain('may not all come whole');
    expect(page).not.toContain('class="cuts"');
    const file = await test.app.inject(`/jobs/${test.id}/takeoff.xlsx?scheme=home-run&pipe=allow-10`);
    const { sheets } = readXlsx(file.rawPayload);
    expect(sheets.get('Pipe cuts')).toHaveLength(1);
    expect(sheets.get('Pipe lengths')!.at(-1)).toEqual([
      'PE service tube SDR-9',
      '1-1/4 in',
      'coil',
      100,
      1,
      100,
    ]);
  });

  it('buys less where off-cuts are coupled', async () => {
    const test = await testApp(readFileSync(large, 'utf8'));
    const bought: Record<string, number> = {};
    for (const plan of ['whole', 'coupled']) {
      const file = await test.app.inject(`/jobs/${test.id}/takeoff.xlsx?scheme=zones&pipe=${plan}`);
      const [head, ...rows] = readXlsx(file.rawPayload).sheets.get('Pipe lengths')!;
      bought[plan] = rows.reduce((sum, row) => sum + Number(row[head!.indexOf('bought ft')]), 0);
    }
    expect(bought.coupled).toBeLessThan(bought.whole!);
    const page = plain(await body(test, '?scheme=zones&pipe=coupled'));
    expect(page).toMatch(/\d+ couplings? where a piece is made of parts/);
    expect(page).not.toContain('without more couplings');
  });

  it('tells what is added and dropped against another scheme', async () => {
    const test = await testApp(readFileSync(large, 'utf8'));
    const page = await body(test, '?scheme=home-run&against=trunk');
    const part = page.split('id="differences"')[1]!;
    const one = await fromTerminal('--scheme', 'home-run');
    const other = await fromTerminal('--scheme', 'trunk');
    const more = Math.round((Number(one.total) - Number(other.total)) * 100);
    expect(cents(plain(part))).toContain(Math.abs(more));
    expect(part).toContain(more < 0 ? ' less.' : ' more.');
    const back = (await body(test, '?scheme=trunk&against=home-run')).split('id="differences"')[1]!;
    const rows = (text: string, title: string) =>
      [
        ...text
          .split(`<caption>${title}`)[1]!
          .split('</table>')[0]!
          .matchAll(/<th scope="row">(.*?)<\/th>/g),
      ].map((m) => m[1]);
    expect(rows(part, 'Added').length).toBeGreaterThan(5);
    expect(rows(back, 'Dropped')).toEqual(rows(part, 'Added'));
    expect(rows(back, 'Added')).toEqual(rows(part, 'Dropped'));
    expect(plain((await body(test, '?scheme=trunk&against=trunk')).split('id="differences"')[1]!)).toMatch(
      /Added: nothing\. Dropped: nothing\./,
    );
  });

  it('asks where drawing and tree disagree', async () => {
    const page = plain(
      await body(await testApp(smallDocument.replace('1 tee 1 ell to WC cold', '1 ell to WC cold'))),
    );
    expect(page).toMatch(/Questions about the drawing \(\d+\)/);
    expect(page).toContain('WCC leaves RC where others do, and no tee is drawn in it; the tee is counted.');
  });

  it('lists prices that are missing, and has no total then', async () => {
    const store = await openStore(':memory:');
    const id = await createJob(store, 'Small', smallDocument, noon);
    const app = await buildApp({ store, now: () => noon, prices: async () => indexPrices(smallBook) });
    const page = plain(await body({ app, id }));
    expect(page).toContain('No total: prices are missing.');
    expect(page).toMatch(/No price in the book \(\d+\).* 1 in pipe, PEX SDR-9/);
    const file = await app.inject(`/jobs/${id}/takeoff.xlsx`);
    const summary = readXlsx(file.rawPayload).sheets.get('Summary')!;
    expect(summary.find(([label]) => label === 'Total')?.[1]).toBe('none: prices are missing');
    expect(summary).toContainEqual(['No price', '1 in pipe, PEX SDR-9']);
  });

  it('escapes what a reader named', async () => {
    const named = smallDocument
      .replace('Cottage at Fern End', '<img src=x onerror=1> & Co')
      .replace('"Trunk and branch"', '"<b>trunk</b>"')
      .replace('"Upper floor"', '"<i>up</i>"');
    const page = await body(await testApp(named), '?by=area&against=S1');
    expect(page).not.toMatch(/<img|<b>|<i>/);
    expect(page).toContain('&lt;img src=x onerror=1> &amp; Co');
    expect(page).toContain('Level &lt;i>up&lt;/i>');
  });

  it('refuses a scheme that is not there, in words, on every address', async () => {
    const { app, id } = await testApp();
    for (const path of [
      'takeoff?scheme=X',
      'takeoff?against=X',
      'takeoff.csv?scheme=X',
      'takeoff.xlsx?scheme=X',
    ]) {
      const page = await app.inject(`/jobs/${id}/${path}`);
      expect(page.statusCode).toBe(404);
      expect(page.body).toContain('This job has no scheme X; it has S1.');
    }
    expect((await app.inject('/jobs/none/takeoff')).statusCode).toBe(404);
  });

  it('is linked from the workbench, and for each scheme from those side by side', async () => {
    const { app, id } = await testApp(placedDocument());
    expect((await app.inject(`/jobs/${id}`)).body).toContain(`href="/jobs/${id}/takeoff"`);
    const compare = (await app.inject(`/jobs/${id}/compare`)).body;
    expect(new Set(compare.match(/takeoff\?scheme=[^"]+/g))).toHaveLength(3);
  });
});

describe('the files of a take-off', () => {
  it.each(['trunk', 'home-run'])('have the totals of the terminal, as numbers: %s', async (scheme) => {
    const { app, id } = await testApp(readFileSync(large, 'utf8'));
    const json = await fromTerminal('--scheme', scheme);
    const csv = await app.inject(`/jobs/${id}/takeoff.csv?scheme=${scheme}`);
    expect(csv.body.startsWith('\ufeffsection,')).toBe(true);
    const [head, ...rows] = readCsv(csv.body.slice(1));
    const xlsx = await app.inject(`/jobs/${id}/takeoff.xlsx?scheme=${scheme}`);
    const { sheets } = readXlsx(xlsx.rawPayload);
    const [headCells, ...cells] = sheets.get('Take-off')!;
    expect(headCells).toEqual(head);
    const quantities = json.lines.map((line) => line.count ?? Number(line.length_ft));
    const column = (name: string): number => head!.indexOf(name);
    expect(rows.map((row) => Number(row[column('quantity')]))).toEqual(quantities);
    expect(cells.map((row) => row[column('quantity')])).toEqual(quantities);
    for (const sum of [
      rows.reduce((all, row) => all + (Number(row[column('price')]) || 0), 0),
      cells.reduce(
        (all, row) => all + (typeof row[column('price')] === 'number' ? Number(row[column('price')]) : 0),
        0,
      ),
    ]) {
      expect(sum.toFixed(2)).toBe(json.total);
    }
    expect(rows.reduce((all, row) => all + Number(row[column('labor h')]), 0)).toBeCloseTo(json.labor_h, 9);
    const summary = new Map(sheets.get('Summary')!.map(([label, value]) => [label, value]));
    expect(summary.get('Total')).toBe(Number(json.total));
    expect(summary.get('Labor h')).toBeCloseTo(json.labor_h, 9);
  });

  it('cut all pipe that they list', async () => {
    const { app, id } = await testApp(readFileSync(large, 'utf8'));
    const { sheets } = readXlsx((await app.inject(`/jobs/${id}/takeoff.xlsx?scheme=trunk`)).rawPayload);
    const [head, ...cuts] = sheets.get('Pipe cuts')!;
    const lines = sheets.get('Take-off')!.filter(([section]) => section === 'Pipe');
    const quantity = sheets.get('Take-off')![0]!.indexOf('quantity');
    const listed = lines.reduce((sum, row) => sum + Number(row[quantity]), 0);
    const cut = cuts.reduce((sum, row) => sum + Number(row[head!.indexOf('cut ft')]), 0);
    // Each cut is written to the thousandth of a foot.
    expect(Math.abs(cut - listed)).toBeLessThan(0.0005 * cuts.length);
    // What is bought is cuts and off-cuts; its length stands on every row of it, its off-cut on the last.
    const off = head!.indexOf('off-cut ft');
    const ends = cuts.filter((row) => typeof row[off] === 'number');
    const bought = ends.reduce((sum, row) => sum + Number(row[head!.indexOf('length ft')]), 0);
    const offCuts = ends.reduce((sum, row) => sum + Number(row[off]), 0);
    expect(Math.abs(bought - cut - offCuts)).toBeLessThan(0.0005 * (cuts.length + ends.length));
    const lengths = sheets.get('Pipe lengths')!.slice(1);
    expect(lengths.reduce((sum, row) => sum + Number(row.at(-1)), 0)).toBe(bought);
  });

  it('say that their prices are invented', async () => {
    const { app, id } = await testApp();
    const csv = readCsv((await app.inject(`/jobs/${id}/takeoff.csv`)).body);
    for (const row of csv.slice(1)) expect(row.at(-1)).toMatch(/^INVENTED/);
    const { sheets } = readXlsx((await app.inject(`/jobs/${id}/takeoff.xlsx`)).rawPayload);
    expect(sheets.get('Summary')!.flat().join(' ')).toMatch(/INVENTED.*Every price here is made up/);
    const { book } = await shippedPrices();
    expect(book.invented).toBe(true);
  });

  it('run no name as a formula', async () => {
    const named = smallDocument
      .replace('Cottage at Fern End (invented)', '=HYPERLINK(1)')
      .replace('"Upper floor"', '"+1+cmd"');
    const { app, id } = await testApp(named);
    const csv = await app.inject(`/jobs/${id}/takeoff.csv`);
    const fields = readCsv(csv.body).flat();
    expect(fields).toContain("'+1+cmd");
    expect(fields.filter((field) => /^\s*[=+@-]/.test(field))).toEqual([]);
    const xlsx = await app.inject(`/jobs/${id}/takeoff.xlsx`);
    const texts = [...readXlsx(xlsx.rawPayload).sheets.values()]
      .flat(2)
      .filter((cell) => typeof cell === 'string');
    expect(texts).toContain("'=HYPERLINK(1)");
    expect(texts.filter((text) => /^\s*[=+@-]/.test(text))).toEqual([]);
  });

  it('have a name that is safe on any system, and their type', async () => {
    const { app, id } = await testApp(smallDocument.replace('"Trunk and branch"', '"../../<a>\\";x"'));
    const csv = await app.inject(`/jobs/${id}/takeoff.csv`);
    expect(csv.headers['content-type']).toBe('text/csv; charset=utf-8');
    expect(csv.headers['content-disposition']).toBe(
      'attachment; filename="Cottage at Fern End invented take-off ....ax.csv"',
    );
    expect(csv.headers['cache-control']).toBe('no-store');
    const xlsx = await app.inject(`/jobs/${id}/takeoff.xlsx`);
    expect(xlsx.headers['content-type']).toBe(
      'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
    );
    expect(xlsx.headers['content-disposition']).toMatch(/^attachment; filename="[A-Za-z0-9 ._-]+\.xlsx"$/);
  });
});
