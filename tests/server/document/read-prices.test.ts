import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPrices } from '../../../server/document/read-prices.ts';
import { arbitraryPriceBook } from '../../arbitrary/price-book.ts';
import { smallBook } from '../../engine/takeoff/small-book.ts';

/** The small book with the value at a path such as `pipe.0.size` set; undefined takes the field away. */
function spoiled(path: string, value: unknown): string {
  const book = structuredClone(smallBook) as unknown as Record<string, unknown>;
  const keys = path.split('.');
  let at = book;
  for (const key of keys.slice(0, -1)) at = at[key] as Record<string, unknown>;
  at[keys.at(-1)!] = value;
  return JSON.stringify(book);
}

async function problemsOf(file: string | Uint8Array): Promise<readonly string[]> {
  const read = await readPrices(file);
  if (read.ok) throw new Error('the file was read');
  for (const problem of read.problems) {
    expect(problem).not.toContain('\n');
    expect(problem.length).toBeLessThan(600);
  }
  return read.problems;
}

const money = 'a text of digits from "0" to "9999999.9999" with at most 4 decimals, such as "12.50"';

describe('readPrices', () => {
  it('gives the book as it was typed', async () => {
    expect(await readPrices(JSON.stringify(smallBook))).toEqual({ ok: true, book: smallBook });
    expect(await readPrices(Buffer.from(`\ufeff${JSON.stringify(smallBook)}`))).toMatchObject({ ok: true });
  });

  it.each(['0', '0.0001', '12.50', '9999999.9999', '100'])(
    'reads the money %s as it stands',
    async (text) => {
      const read = await readPrices(spoiled('fittings.0.each', text));
      expect(read.ok && read.book.fittings[0]?.each).toBe(text);
    },
  );

  it.each<[string, unknown]>([
    ['a number', 12.5],
    ['below zero', '-1'],
    ['signed', '+1'],
    ['five decimals', '0.00001'],
    ['an exponent', '1e3'],
    ['not a number', 'NaN'],
    ['endless', 'Infinity'],
    ['with a comma', '1,200.00'],
    ['with a mark of currency', '$12.50'],
    ['with a space', ' 1'],
    ['with a line feed', '1\n'],
    ['no digits before the point', '.5'],
    ['no digits behind the point', '5.'],
    ['a leading zero', '007'],
    ['too much', '10000000'],
    ['hexadecimal', '0x10'],
    ['empty', ''],
    ['null', null],
    ['a list', ['1']],
  ])('refuses money that is %s', async (_, value) => {
    const [problem, ...others] = await problemsOf(spoiled('pipe.1.perFoot', value));
    expect(problem).toMatch(/^pipe\[1\]\.perFoot: .* came; expected price of a foot, /);
    expect(problem).toContain(money);
    expect(others).toEqual([]);
  });

  it.each<[string, unknown, string]>([
    ['pipe.0.perFoot', undefined, `pipe[0].perFoot is missing; expected price of a foot, ${money}`],
    [
      'pipe.0.size',
      '7/8',
      'pipe[0].size: "7/8" is no size of PEX SDR-9; expected one of 3/8, 1/2, 5/8, 3/4, 1, 1-1/4, 1-1/2, 2, 2-1/2, 3',
    ],
    ['pipe.0.size', '4', 'pipe[0].size: "4" is no size of PEX SDR-9'],
    ['pipe.0.size', 0.75, 'pipe[0].size: 0.75 came; expected a nominal size, such as "3/4"'],
    ['pipe.0.size', 'toString', 'pipe[0].size: "toString" is no size of PEX SDR-9'],
    ['pipe.0.material', 'lead', 'pipe[0].material: "lead" came; expected material of the pipe, one of pex,'],
    [
      'pipe.0.hoursPerFoot',
      -0.1,
      'pipe[0].hoursPerFoot: -0.1 came; expected hours of labour for a foot, a number',
    ],
    ['pipe.0.hoursPerFoot', 1001, 'a number from 0 to 1000'],
    ['pipe.0.hoursPerFoot', '0.1', 'pipe[0].hoursPerFoot: "0.1" came; expected hours of labour'],
    [
      'pipe.0.colour',
      'red',
      'pipe[0]: unknown field "colour"; expected an object with the fields material, size',
    ],
    ['pipe.0', 7, 'pipe[0]: 7 came; expected an object with the fields material, size'],
    ['pipe', {}, 'pipe: an object came; expected a list of prices of pipe'],
    [
      'pipe',
      Array(20_001).fill(0),
      'pipe: a list of 20001 entries came; expected at most 20000 prices of pipe',
    ],
    ['fittings.0.kind', 'bend', 'fittings[0].kind: "bend" came; expected kind of the fitting, one of ell,'],
    ['fittings.0.joint', 'glue', 'fittings[0].joint: "glue" came; expected how it is joined, one of solder,'],
    [
      'fittings.0.joint',
      'solder',
      'fittings[0].joint: "solder" does not join PEX SDR-9; expected one of insert-brass, insert-polymer, expansion',
    ],
    ['fittings.0.size', '4', 'fittings[0].size: "4" is no size of PEX SDR-9'],
    [
      'devices.0.device',
      'pump',
      'devices[0].device: "pump" came; expected a price of a device, one of meter,',
    ],
    ['devices.0.size', '7/8', 'devices[0].size: "7/8" came; expected size of the meter, one of 5/8, 3/4, 1,'],
    [
      'devices.2.size',
      'gas',
      'devices[2].size: "gas" came; expected type of heater, one of storage, tankless',
    ],
    ['devices.3.perPort', undefined, 'devices[3].perPort is missing; expected price of each port'],
    ['devices.0.perPort', '1', 'devices[0]: unknown field "perPort"'],
    ['currency', 'usd', 'currency: "usd" came; expected the three capital letters of a currency'],
    ['effective', '2026-02-30', 'effective: "2026-02-30" came; expected the day from which the prices hold'],
    ['effective', 'soon', 'effective: "soon" came; expected the day'],
    ['invented', 'yes', 'invented: "yes" came; expected true or false: whether the prices are made up'],
    ['invented', undefined, 'invented is missing; expected true or false'],
    ['source', '', 'source: "" came; expected where the prices come from, a text of 1 to 200 characters'],
    ['name', 'two\nlines', 'name: "two\\nlines" came; expected name of the price book'],
    ['tax', 1, 'the price book: unknown field "tax"; expected an object with the fields format'],
    [
      'format',
      'hightap-job',
      'format: "hightap-job" came; expected "hightap-prices", the mark of a price book file',
    ],
    ['version', 2, 'version: the file was written by a newer Hightap (version 2); expected the number 1'],
    ['version', undefined, 'version is missing; expected the number 1'],
  ])('tells what is wrong with %s: %j', async (path, value, problem) => {
    const problems = await problemsOf(spoiled(path, value));
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(problem);
  });

  it.each<['pipe' | 'fittings' | 'devices', string]>([
    ['pipe', 'pipe[3]: 1/2 PEX SDR-9 pipe has a price already, at [0] of this list; expected each item once'],
    [
      'fittings',
      'fittings[5]: 1/2 90° ell, PEX SDR-9 with brass insert fittings has a price already, at [0]',
    ],
    ['devices', 'devices[4]: meter 1 has a price already, at [0] of this list'],
  ])('names an item that has two prices in %s', async (list, problem) => {
    const book = { ...smallBook, [list]: [...smallBook[list], smallBook[list][0]] };
    const problems = await problemsOf(JSON.stringify(book));
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(problem);
  });

  it('tells 20 problems and counts the others', async () => {
    const pipe = Array(45).fill({ ...smallBook.pipe[0], perFoot: 'x' });
    const problems = await problemsOf(JSON.stringify({ ...smallBook, pipe }));
    expect(problems).toHaveLength(21);
    expect(problems[20]).toBe('and 25 more');
  });

  it.each<[string, string | Uint8Array, string]>([
    ['an empty file', '', 'the file is empty; expected a price book file'],
    ['a list', '[]', 'the file holds no object in braces; expected a price book'],
    [
      'a cut file',
      '{"format":',
      'line 1, column 11: the file ends where a value was expected; it seems cut off',
    ],
    [
      'a field twice',
      '{"format":1,"format":1}',
      'the price book has the field "format" twice; expected it once',
    ],
    [
      'a reach into the prototype',
      '{"__proto__":1}',
      'the price book has the field "__proto__", which no price book may have',
    ],
    [
      'bytes that are no text',
      Buffer.from([0x7b, 0xc3, 0x28]),
      'not UTF-8 text; expected a price book file in UTF-8',
    ],
    [
      'too many bytes',
      ' '.repeat(20_000_001),
      'the file has 20.0 MB; expected a price book of at most 20 MB',
    ],
  ])('refuses %s', async (_, file, problem) => {
    expect((await problemsOf(file))[0]).toContain(problem);
  });

  it('answers with a sentence to a book with any one value replaced', async () => {
    const paths = [
      'pipe.1',
      'pipe.1.size',
      'fittings.2.joint',
      'fittings.2',
      'devices.3',
      'devices.3.valved',
      'name',
    ];
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...paths), fc.jsonValue(), async (path, value) => {
        const read = await readPrices(spoiled(path, value));
        if (!read.ok)
          expect(read.problems[0]).toMatch(/^\S.* (?:came|missing|field|size of|twice|join|may have)\b/);
      }),
    );
  });

  it('reads any book that there can be', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryPriceBook, async (book) => {
        expect(await readPrices(JSON.stringify(book))).toEqual({ ok: true, book });
      }),
    );
  });
});
