import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { smallBook } from '../../engine/takeoff/small-book.ts';
import { readCsv } from '../spreadsheet/read-csv.ts';
import { exampleFiles, fileOf, run } from './run.ts';

const house = exampleFiles().find((path) => path.endsWith('home-run-house.json'))!;

interface Json {
  lines: {
    kind: string;
    sizes: string[];
    count?: number;
    length_m?: number;
    length_ft?: string;
    price: string;
  }[];
  pieces: { run: string; homeRun: boolean; length_ft: string }[];
  total: string | null;
  priced: string;
  missingPrices: unknown[];
  questions: { code: string; run: string; what: string }[];
}

async function json(...args: readonly string[]): Promise<Json> {
  const { stdout, stderr } = await run(['takeoff', ...args, '--json']);
  expect(stderr).toBe('');
  return JSON.parse(stdout) as Json;
}

describe('hightap takeoff', () => {
  it('says what is added and dropped since an earlier revision, and nothing against itself', async () => {
    const levels = exampleFiles().find((path) => path.endsWith('three-level-house.json'))!;
    const now = readFileSync(levels, 'utf8');
    const before = fileOf(now.replace("1 PEX 25' up", "3/4 PEX 25' up"));
    const { code, stdout } = await run(['takeoff', levels, '--against', before]);
    expect(code).toBe(0);
    // The riser is 25 ft long with one ell in it: both in the other size, once each way.
    expect(stdout).toMatch(/^25 ft +63 ft +88 ft +1 pipe, PEX SDR-9$/m);
    expect(stdout).toMatch(/^ +25 ft +288 ft +263 ft +3\/4 pipe, PEX SDR-9$/m);
    expect(stdout).toMatch(/^ +1 +23 +22 +3\/4 90° ell, PEX SDR-9 with brass insert fittings$/m);
    const told = JSON.parse((await run(['takeoff', levels, '--against', levels, '--json'])).stdout) as {
      against: { added: unknown[]; dropped: unknown[]; more: string };
    };
    expect(told.against).toMatchObject({ added: [], dropped: [], more: '0.00' });
    expect((await run(['takeoff', levels, '--against', 'nowhere.json'])).code).toBe(2);
  });

  it('shows each section with what falls to each phase, and how it was counted', async () => {
    const { code, stdout } = await run(['takeoff', house]);
    expect(code).toBe(0);
    // 56 ft of the service in the ground, 7 ft inside.
    expect(stdout).toMatch(/^ +63 ft +56 ft +7 ft +1-1\/4 pipe, PEX +\d/m);
    expect(stdout).toMatch(/^ +11 +11 +3\/8 90° ell, PEX brass +\d/m);
    expect(stdout).toMatch(/^ +6 +6 {2}1\/2 compression stop, PEX brass/m);
    expect(stdout).toMatch(/INVENTED/);
    expect(stdout).toMatch(/from memory, not verified/);
    expect(stdout).toMatch(/common practice, no source/);
    expect(stdout).toMatch(/Compressed air can burst/);
    expect(stdout).toMatch(/the licensed plumber decide/);
    expect(stdout).not.toMatch(/missing/);
  });

  it('gives programs the same lines, in SI and in feet', async () => {
    const { lines, pieces, total, questions } = await json(house);
    const pipe = lines.filter(({ kind }) => kind === 'pipe');
    const feet = pipe.reduce((sum, line) => sum + Number(line.length_ft), 0);
    // 389 + 534 + 51 + 17 + 63, as counted by hand.
    expect(feet).toBe(1054);
    expect(pipe.reduce((sum, line) => sum + line.length_m!, 0)).toBeCloseTo(1054 * 0.3048, 9);
    expect(pieces.reduce((sum, piece) => sum + Number(piece.length_ft), 0)).toBe(1054);
    const cents = lines.reduce((sum, { price }) => sum + (Number(price) * 100 || 0), 0);
    expect(total).toBe((Math.round(cents) / 100).toFixed(2));
    expect(questions).toEqual([]);
  });

  it('gives a spreadsheet the same quantities and prices', async () => {
    const { stdout } = await run(['takeoff', house, '--csv']);
    const [head, ...rows] = readCsv(stdout);
    const column = (name: string): number => head!.indexOf(name);
    expect(rows.every((row) => row.length === head!.length)).toBe(true);
    // No byte order mark, which a program at the other end of a pipe would take for part of the first name.
    expect(head![0]).toBe('section');
    const { lines, total } = await json(house);
    expect(rows.map((row) => Number(row[column('quantity')]))).toEqual(
      lines.map((line) => line.count ?? Number(line.length_ft)),
    );
    const cents = rows.reduce((sum, row) => sum + (Number(row[column('price')]) * 100 || 0), 0);
    expect((Math.round(cents) / 100).toFixed(2)).toBe(total);
    // Not a day of March, and made up wherever it is quoted.
    expect(rows.every((row) => !/^\d+\/\d+$/.test(row[column('sizes')]!))).toBe(true);
    expect(rows.every((row) => /^INVENTED/.test(row[column('price book')]!))).toBe(true);
  });

  it('has no total where a price is missing, and says which', async () => {
    const book = fileOf(smallBook);
    const { total, missingPrices, lines } = await json(house, '--prices', book);
    expect(total).toBeNull();
    expect(missingPrices).toContainEqual({ kind: 'pipe', material: 'pex', sizes: ['1-1/4'] });
    expect(lines.find(({ kind, sizes }) => kind === 'pipe' && sizes[0] === '1-1/4')?.price).toBe('missing');
    const { stdout } = await run(['takeoff', house, '--prices', book]);
    expect(stdout).toMatch(/^Total +none: prices are missing/m);
    expect(stdout).toMatch(/^No price +3\/8 pipe, PEX SDR-9;/m);
  });

  it('asks where drawing and tree disagree', async () => {
    const file = fileOf(readFileSync(house, 'utf8').replaceAll(/ 1 (?:through )?tee/g, ''));
    const { questions } = await json(file);
    expect(new Set(questions.map(({ code }) => code))).toEqual(new Set(['tee-not-drawn']));
    // Behind S2 two runs, behind S3 three, behind G1 two, and two at each of six arresters.
    expect(questions).toHaveLength(2 + 3 + 2 + 12);
    const { stdout } = await run(['takeoff', file]);
    expect(stdout).toContain(`Questions about the drawing (${questions.length})`);
    expect(stdout).toContain('no tee is drawn in it; the tee is counted.');
  });

  it('takes another scheme, and refuses two forms at once', async () => {
    const large = join(house, '..', 'large-house.json');
    const one = await json(large, '--scheme', 'trunk');
    const other = await json(large, '--scheme', 'home-run');
    expect(one.pieces.some(({ homeRun }) => homeRun)).toBe(false);
    expect(other.pieces.some(({ homeRun }) => homeRun)).toBe(true);
    const { code, stderr } = await run(['takeoff', house, '--json', '--csv']);
    expect({ code, stderr }).toEqual({
      code: 2,
      stderr: 'hightap: --json and --csv both came; expected one of them\n',
    });
  });
});
