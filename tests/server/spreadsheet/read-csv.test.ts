import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvText } from '../../../server/spreadsheet/csv-text.ts';
import { CsvFault, csvLimits, readCsv } from '../../../server/spreadsheet/read-csv.ts';
import { typedText } from '../../../server/spreadsheet/spreadsheet-text.ts';

const cells = (text: string, separator?: ';') => [...readCsv(text, separator)].map((row) => row.cells);

function fault(text: string): string {
  try {
    cells(text);
  } catch (error) {
    if (error instanceof CsvFault) return error.message;
    throw error;
  }
  return 'it was read';
}

describe('a table as text', () => {
  it('is read with quotes, and with each way to end a line', () => {
    expect(cells('a,b\r\n1,"x, ""y"""\n2,\r3,"two\r\nlines"')).toEqual([
      ['a', 'b'],
      ['1', 'x, "y"'],
      ['2', ''],
      ['3', 'two\r\nlines'],
    ]);
    expect(cells('a;b,c', ';')).toEqual([['a', 'b,c']]);
  });

  it('tells the line on which each row starts, blank ones counted and left out', () => {
    const rows = [...readCsv('a,b\n\n"1\n2",x\ny,z\n')];
    expect(rows.map(({ line }) => line)).toEqual([1, 3, 5]);
  });

  it('is refused where quotes do not match', () => {
    expect(fault('a,b\n1,x"y"')).toMatch(/^Line 2: a quote stands inside a cell/);
    expect(fault('a,b\n1,"x"y')).toMatch(/^Line 2: text stands behind a closing quote/);
    expect(fault('a,b\n1,2\n1,"xy\n1,2')).toMatch(/^Line 3: a quote is opened and never closed/);
  });

  it('is refused beyond its bounds, soon', () => {
    const start = performance.now();
    expect(fault(`"${'x'.repeat(10_000_000)}`)).toMatch(/more than 1000 characters; a quote/);
    expect(fault(`"${'""'.repeat(5_000_000)}`)).toMatch(/more than 1000 characters; a quote/);
    expect(fault('x'.repeat(10_000_000))).toMatch(/more than 1000 characters/);
    expect(fault(','.repeat(10_000_000))).toMatch(/more than the 40 cells/);
    expect(fault('a,b\n'.repeat(csvLimits.rows + 1))).toMatch(/^Line 80001: the file has more than 80000/);
    expect(fault('a,b\n'.repeat(csvLimits.rows))).toBe('it was read');
    expect(performance.now() - start).toBeLessThan(5000);
  });

  it('gives back whatever was written, formulas too', () => {
    const cell = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 40 }),
      fc.stringMatching(/^['=+@\t\r\n", -]{1,6}$/),
    );
    const row = fc.array(cell, { minLength: 2, maxLength: 6 });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 8 }), (rows) => {
        expect(cells(csvText(rows)).map((found) => found.map(typedText))).toEqual(rows);
      }),
    );
  });

  it('writes no cell that a spreadsheet would run', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^['\s=+@-]{0,4}[a-z=+@-]{0,6}$/), (text) => {
        const [first = ''] = cells(csvText([[text, 'x']]))[0]!;
        expect(first).not.toMatch(/^\s*[=+\-@]/);
      }),
    );
  });
});
