import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mergePrices, withLines } from '../../../engine/takeoff/merge-prices.ts';
import { priceLines } from '../../../engine/takeoff/price-line.ts';
import { pricesCsv } from '../../../server/prices/prices-csv.ts';
import { readPriceTable } from '../../../server/prices/read-price-table.ts';
import { shippedPrices } from '../../../server/prices/shipped-prices.ts';
import { readCsv } from '../../../server/spreadsheet/read-csv.ts';
import { arbitraryPriceBook } from '../../arbitrary/price-book.ts';
import { smallBook } from '../../engine/takeoff/small-book.ts';

const heading =
  'item,kind,material,joint,size,valved,unit,price,hours,price per port,hours per port,currency,book';
const target = { currency: 'USD', invented: false };

async function why(row: string, into = target): Promise<string> {
  const read = await readPriceTable(`${heading}\n${row}\n`, into);
  if (!read.ok) return read.problem;
  expect(read.lines.length + read.bad.length).toBe(1);
  return read.bad[0]?.why ?? 'it was read';
}

describe('a table of prices', () => {
  it.each([
    ['pipe,,pex,,3/4 in,,ft,0.92,0.024,,,USD,', 'it was read'],
    ['pipe,,pex,,3/4,,,0.92,0.024,,,,', 'it was read'],
    ['pipe,,pex,,4-Mar,,ft,0.92,0.024,,,,', 'a day that a spreadsheet made'],
    ['pipe,,pex,,7/8,,ft,0.92,0.024,,,,', '"7/8" is no size of PEX SDR-9'],
    ['pipe,,pexx,,3/4,,ft,0.92,0.024,,,,', 'material: "pexx" came; expected'],
    ['pipe,,pex,solder,3/4,,ft,0.92,0.024,,,,', 'joint: "solder" came; expected nothing there'],
    ['pipe,,pex,,3/4,,each,0.92,0.024,,,,', 'unit: "each" came; this item is priced by ft'],
    ['pipe,,pex,,3/4,,ft,,0.024,,,,', 'price is empty, and a missing figure is never taken as zero'],
    ['pipe,,pex,,3/4,,ft,0.92,,,,,', 'hours is empty'],
    ['pipe,,pex,,3/4,,ft,$0.92,0.024,,,,', 'price: "$0.92" came; expected'],
    ['pipe,,pex,,3/4,,ft,-0.92,0.024,,,,', 'price: "-0.92" came; expected'],
    ['pipe,,pex,,3/4,,ft,0.92001,0.024,,,,', 'at most 4 decimals'],
    ['pipe,,pex,,3/4,,ft,1e3,0.024,,,,', 'price: "1e3" came'],
    ['pipe,,pex,,3/4,,ft,"1,000.00",0.024,,,,', 'price: "1,000.00" came'],
    ['pipe,,pex,,3/4,,ft,0.92,soon,,,,', 'hours: "soon" came; expected'],
    ['pipe,,pex,,3/4,,ft,0.92,1001,,,,', 'hours: "1001" came; expected'],
    ['pipe,,pex,,3/4,,ft,0.92,0.024,,,EUR,', 'currency: "EUR" came; this book is in USD'],
    ['pipe,,pex,,3/4,,ft,0.92,0.024,,,,INVENTED: x', 'says that its price is invented'],
    ['fitting,ell,pex,solder,3/4,,each,2,0.1,,,,', 'joint: "solder" does not join PEX SDR-9'],
    ['fitting,ball-valve,copper-l,solder,3/4,,each,18,0.1,,,,', 'it was read'],
    ['device,meter,,,1 in,,each,148,1,,,,', 'it was read'],
    ['device,softener,,,1 in,,each,148,1,,,,', 'this kind has no sizes'],
    ['device,manifold,,,1 in,yes,each,34,0.5,14.5,0.125,,', 'it was read'],
    ['device,manifold,,,1 in,yes,each,34,0.5,,0.125,,', 'price per port is empty'],
    ['device,manifold,,,1 in,maybe,each,34,0.5,1,0.125,,', 'valved: "maybe" came'],
    ['device,meter,,,1 in,yes,each,34,0.5,,,,', 'valved: "yes" came; expected nothing there'],
    ['part,tee,pex,,1 in x 3/4 in x 1/2 in,,each,6,0.2,,,,', 'it was read'],
    ['part,tee,,insert-brass,1,,each,6,0.2,,,,', 'without a material'],
    ['part,tees,,,1,,each,6,0.2,,,,', 'kind: "tees" came; expected'],
    ['box,,,,1,,each,6,0.2,,,,', 'item: "box" came; expected pipe, fitting, device or part'],
    ['pipe,,pex', 'it has 3 cells under 13 headings'],
  ])('%s: %s', async (row, says) => {
    expect(await why(row)).toContain(says);
  });

  it('keeps an invented price in an invented book', async () => {
    const row = 'pipe,,pex,,3/4,,ft,0.92,0.024,,,,INVENTED: x';
    expect(await why(row, { currency: 'USD', invented: true })).toBe('it was read');
  });

  it('counts lines as the file has them, and takes each item once', async () => {
    const good = 'pipe,pex,3/4 in,0.92,0.02';
    const read = await readPriceTable(
      `item,material,size,price,hours,shelf\n${good},A\n\npipe,pex,1/2,,0,B\n${good},C`,
      target,
    );
    if (!read.ok) throw new Error(read.problem);
    expect(read.lines).toEqual([
      { list: 'pipe', price: { material: 'pex', size: '3/4', perFoot: '0.92', hoursPerFoot: 0.02 } },
    ]);
    expect(read.bad.map(({ line }) => line)).toEqual([4, 5]);
    expect(read.bad[1]!.why).toBe('3/4 PEX SDR-9 pipe is priced on line 2 already');
    expect(read.passedOver).toEqual(['"shelf"']);
  });

  it('is read with semicolons where the headings have them', async () => {
    const read = await readPriceTable('item;material;size;price;hours\npipe;pex;3/4;0.92;0.02', target);
    expect(read.ok && read.lines).toHaveLength(1);
  });

  it.each([
    ['', 'holds no line of prices'],
    [heading, 'holds no line of prices'],
    ['item,price\npipe,1', 'there is no heading hours'],
    ['item,price,hours,Price\npipe,1,1,1', 'the heading price stands 2 times'],
    [`${heading}\npipe,"x`, 'never closed. Nothing of the file was read.'],
  ])('%j is refused as a whole', async (text, says) => {
    const read = await readPriceTable(text, target);
    expect(read.ok ? 'it was read' : read.problem).toContain(says);
  });

  it('tells how far it is', async () => {
    const rows = Array.from({ length: 1000 }, (_, at) => `device,other,,,Pump ${at},,each,1,1,,,,`);
    const told: number[] = [];
    await readPriceTable([heading, ...rows].join('\n'), target, (share) => told.push(share));
    expect(told.length).toBeGreaterThan(2);
    expect(told).toEqual([...told].sort((one, other) => one - other));
    expect(told.every((share) => share > 0 && share <= 1)).toBe(true);
  });
});

describe('a book as a table', () => {
  it('is read back price by price, whatever is in it', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryPriceBook, async (book) => {
        if (priceLines(book).length === 0) return;
        const read = await readPriceTable(pricesCsv(book), book);
        expect(read).toEqual({ ok: true, lines: priceLines(book), bad: [], passedOver: [] });
      }),
      { numRuns: 60 },
    );
  });

  it('is read back when it is the one that ships', async () => {
    const { book } = await shippedPrices();
    const read = await readPriceTable(pricesCsv(book), book);
    if (!read.ok) throw new Error(read.problem);
    expect(read.bad).toEqual([]);
    expect(mergePrices(withLines(book, []), read.lines)).toEqual(book);
  });

  it('says in each line that its prices are invented', () => {
    const lines = pricesCsv(smallBook).trimEnd().split('\r\n').slice(1);
    expect(lines).toHaveLength(12);
    for (const line of lines) expect(line).toMatch(/,USD,INVENTED: A few prices$/);
  });

  it('writes names that a spreadsheet would run as text, and sizes as no day', () => {
    const name = '=HYPERLINK("x")';
    const book = { ...smallBook, devices: [{ device: 'other', size: name, each: '1', hours: 1 } as const] };
    const csv = pricesCsv(book);
    expect(csv).toContain(`device,other,,,"'=HYPERLINK(""x"")",,each,1,1`);
    expect(csv).toContain('pipe,,pex,,3/4 in,,ft,0.85,0.03');
  });
});

describe('any text at all', () => {
  const words = fc.constantFrom(
    'pipe',
    'fitting',
    'device',
    'part',
    'pex',
    'ell',
    'manifold',
    '1',
    '3/4 in',
    '',
  );
  const cell = fc.oneof(
    words,
    fc.string({ unit: 'binary', maxLength: 12 }),
    fc.constantFrom('"', "'=", '\n', ','),
  );

  it('is read or refused in words, and each of its lines is counted once', async () => {
    const rows = fc.array(fc.array(cell, { minLength: 1, maxLength: 14 }), { maxLength: 12 });
    await fc.assert(
      fc.asyncProperty(rows, fc.boolean(), async (table, headed) => {
        const text = `${headed ? `${heading}\n` : ''}${table.map((row) => row.join(',')).join('\n')}`;
        const read = await readPriceTable(text, target);
        if (!read.ok) {
          expect(read.problem).toMatch(/\.$/);
          return;
        }
        expect(read.lines.length + read.bad.length).toBe([...readCsv(text)].length - 1);
        for (const { line, why: told } of read.bad)
          expect([line > 1, told.length > 10]).toEqual([true, true]);
      }),
      { numRuns: 300 },
    );
  });
});
