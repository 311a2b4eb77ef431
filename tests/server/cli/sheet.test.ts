import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readPdf, textOf } from '../pdf/read-pdf.ts';
import { jobFile, run, shortOfPressure } from './run.ts';

const folder = mkdtempSync(join(tmpdir(), 'hightap-sheet-'));
const digest = (path: string): string => createHash('sha256').update(readFileSync(path)).digest('hex');

async function hashOf(file: string): Promise<string> {
  const { stdout } = await run(['pressure', file, '--json']);
  return (JSON.parse(stdout) as { jobFile_sha256: string }).jobFile_sha256;
}

describe('hightap sheet', () => {
  it('writes a PDF, the same bytes each time, with no day in it that nobody gave', async () => {
    const file = jobFile();
    const places = ['one.pdf', 'other.pdf'].map((name) => join(folder, name));
    for (const out of places) {
      const { code, stdout } = await run(['sheet', file, '--out', out]);
      expect(code).toBe(0);
      expect(stdout).toContain(await hashOf(file));
    }
    expect(digest(places[0]!)).toBe(digest(places[1]!));
    expect(readFileSync(places[0]!, 'latin1')).not.toMatch(/CreationDate|D:1970/);
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('sets the day, the paper and the units that were asked for', async () => {
    const out = join(folder, 'asked.pdf');
    const asked = ['--date', '2026-02-28', '--paper', 'a4', '--units', 'si'];
    expect((await run(['sheet', jobFile(), '--out', out, ...asked])).code).toBe(0);
    const pages = await readPdf(readFileSync(out));
    expect([pages[0]!.width, pages[0]!.height].map(Math.round)).toEqual([595, 842]);
    for (const page of pages) expect(textOf(page)).toContain('2026-02-28');
    expect(pages.some((page) => /\bkPa\b/.test(textOf(page)))).toBe(true);
    expect(readFileSync(out, 'latin1')).toContain('CreationDate');
  });

  it('tells the job that a paper was made from, and one that it was not', async () => {
    const [file, changed] = [jobFile(), jobFile(shortOfPressure)];
    const hash = await hashOf(file);
    const mark = `${hash.slice(0, 4)}-${hash.slice(4, 8)}-${hash.slice(8, 12)}`;
    for (const read of [hash, mark, mark.toUpperCase()]) {
      const right = await run(['sheet', file, '--match', read]);
      expect([right.code, right.stdout]).toEqual([0, expect.stringContaining(' matches ')]);
    }
    const wrong = await run(['sheet', changed, '--match', mark]);
    expect([wrong.code, wrong.stdout]).toEqual([1, expect.stringContaining('does NOT match')]);
  });

  it.each([
    ['neither', [], 'neither --out nor --match came; expected one of them'],
    ['both', ['--out', 'x.pdf', '--match', 'abcdef12'], '--out and --match both came; expected one of them'],
    ['another ending', ['--out', 'x.txt'], 'expected a name that ends in .pdf'],
    ['no folder', ['--out', join(folder, 'none', 'x.pdf')], 'cannot be written (ENOENT)'],
    ['no hash', ['--match', 'xyz'], 'expected 8 to 64 digits of a hash, 0-9 and a-f'],
    ['no day', ['--out', join(folder, 'no.pdf'), '--date', '2026-02-30'], 'expected a day like 2026-11-25'],
    ['no paper', ['--out', join(folder, 'no.pdf'), '--paper', 'a5'], 'expected letter or a4'],
    ['no units', ['--out', join(folder, 'no.pdf'), '--units', 'metric'], 'expected us or si'],
  ])('refuses %s in one sentence and writes nothing', async (_what, args, sentence) => {
    const { code, stdout, stderr } = await run(['sheet', jobFile(), ...args]);
    expect(code).toBe(2);
    expect(stdout).toBe('');
    expect(stderr.trim().split('\n')).toHaveLength(1);
    expect(stderr).toContain(sentence);
    expect(existsSync(join(folder, 'no.pdf'))).toBe(false);
  });
});
