import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exampleFiles, run } from '../server/cli/run.ts';
import { readCsv } from '../server/spreadsheet/read-csv.ts';
import { testApp } from '../server/test-app.ts';

const soffice = '/usr/bin/soffice';
const large = exampleFiles().find((path) => path.endsWith('large-house.json'))!;
const scheme = 'home-run';

/** Without a screen the encoding of a CSV file has to be told. */
const utf8 = '76';

/** Comma, double quote, UTF-8, from the first row; fields as formatted off, formulas as shown off, every sheet. */
const asCsv = `csv:Text - txt - csv (StarCalc):44,34,${utf8},1,,0,false,false,false,false,false,-1`;

let folder: string;
/** Every sheet that LibreOffice read, by the name of the file that it wrote. */
const opened = new Map<string, string[][]>();

beforeAll(async () => {
  if (!existsSync(soffice)) throw new Error(`${soffice} is missing: apt-get install libreoffice-calc`);
  folder = mkdtempSync(join(tmpdir(), 'hightap-office-'));
  const document = JSON.parse(readFileSync(large, 'utf8')) as { levels: { name: string }[] };
  document.levels[0]!.name = '=1+1';
  const test = await testApp(JSON.stringify(document));
  for (const ending of ['csv', 'xlsx']) {
    const file = await test.app.inject(`/jobs/${test.id}/takeoff.${ending}?scheme=${scheme}`);
    expect(file.statusCode).toBe(200);
    writeFileSync(join(folder, `${ending}.${ending}`), file.rawPayload);
    const profile = pathToFileURL(join(folder, 'profile')).href;
    const place = join(folder, `from-${ending}`);
    execFileSync(soffice, [
      `-env:UserInstallation=${profile}`,
      '--headless',
      ...(ending === 'csv' ? [`--infilter=CSV:44,34,${utf8},1`] : []),
      '--convert-to',
      asCsv,
      '--outdir',
      place,
      join(folder, `${ending}.${ending}`),
    ]);
    for (const name of readdirSync(place)) {
      const text = readFileSync(join(place, name), 'utf8')
        .replace(/^\ufeff/, '')
        .replaceAll(/\r?\n/g, '\r\n');
      opened.set(name, readCsv(text));
    }
  }
  await test.app.close();
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

async function fromTerminal() {
  const { stdout } = await run(['takeoff', large, '--scheme', scheme, '--json']);
  return JSON.parse(stdout) as {
    total: string;
    labor_h: number;
    lines: { count?: number; length_ft?: string }[];
  };
}

function sumOf([head, ...rows]: readonly (readonly string[])[], name: string): number {
  const at = head!.indexOf(name);
  expect(at).toBeGreaterThanOrEqual(0);
  return rows.reduce((sum, row) => sum + (Number(row[at]) || 0), 0);
}

describe('LibreOffice Calc', () => {
  it('opens the CSV as one sheet and the workbook as four', () => {
    expect([...opened.keys()].sort()).toEqual([
      'csv-csv.csv',
      'xlsx-Pipe cuts.csv',
      'xlsx-Pipe lengths.csv',
      'xlsx-Summary.csv',
      'xlsx-Take-off.csv',
    ]);
  });

  it.each(['csv-csv.csv', 'xlsx-Take-off.csv'])('reads the totals of the terminal in %s', async (name) => {
    const rows = opened.get(name)!;
    const { total, labor_h, lines } = await fromTerminal();
    expect(rows.length - 1).toBe(lines.length);
    expect(sumOf(rows, 'price').toFixed(2)).toBe(total);
    expect(sumOf(rows, 'labor h')).toBeCloseTo(labor_h, 6);
    const quantity = lines.reduce((sum, line) => sum + (line.count ?? Number(line.length_ft)), 0);
    expect(sumOf(rows, 'quantity')).toBeCloseTo(quantity, 6);
  });

  it('reads the total of the summary', async () => {
    const summary = new Map(opened.get('xlsx-Summary.csv')!.map(([label, value]) => [label, value]));
    const { total } = await fromTerminal();
    expect(Number(summary.get('Total'))).toBe(Number(total));
  });

  it.each(['csv-csv.csv', 'xlsx-Take-off.csv'])(
    'runs no name as a formula and takes no size for a day in %s',
    (name) => {
      const rows = opened.get(name)!;
      const area = rows[0]!.indexOf('area');
      const areas = new Set(rows.slice(1).map((row) => row[area]));
      expect(areas).toContain("'=1+1");
      expect(areas).not.toContain('2');
      const sizes = rows[0]!.indexOf('sizes');
      expect(rows.some((row) => row[sizes] === '3/4 in')).toBe(true);
      expect(rows.some((row) => row[1] === '90° ell')).toBe(true);
    },
  );
});
