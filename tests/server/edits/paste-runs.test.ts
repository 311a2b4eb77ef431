import { describe, expect, it } from 'vitest';
import { chosenScheme } from '../../../server/edits/edited.ts';
import { pasteRuns, readPastedRuns } from '../../../server/edits/paste-runs.ts';
import { readSmallJob } from '../small-job.ts';

const job = await readSmallJob();

/** Each line as `from>name`, or its problem. */
function outline(from: string, text: string): string[] {
  return readPastedRuns(job, from, text).map(({ id, from, problem }) => problem ?? `${from}>${id}`);
}

describe('pasted runs', () => {
  it('stand as three columns of a spreadsheet, or with semicolons', () => {
    expect(outline('', "A\tT1\t3/4 PEX 8' 1 tee\nB; A; 1/2 PEX 6'\n\n; B; 1/2 PEX 4'")).toEqual([
      'T1>A',
      'A>B',
      'B>R1',
    ]);
  });

  it('hang on the line above that is indented less, and outermost on the run named for all', () => {
    const text = "A; 3/4 PEX 8'\n  1/2 PEX 6'\n    1/2 PEX 5'\n  R7; 1/2 PEX 4'\n1/2 PEX 3'";
    expect(outline('T2', text)).toEqual(['T2>A', 'A>R1', 'R1>R2', 'A>R7', 'T2>R3']);
  });

  it('say by line what will not do', () => {
    const text =
      "T2; T1; 1/2 PEX 5'\nA; NONE; 1/2 PEX 5'\nB; T1; 1/2 PEXX 5'\n1/2 PEX 4'\na;b;c;d\n?; T1; 1/2 PEX 1'";
    expect(outline('', text)).toEqual([
      'There is a run T2 already.',
      'There is no run NONE.',
      expect.stringContaining('PEXX'),
      'It does not say which run it comes from.',
      '4 parts, where a name, the run that it comes from and the line were expected.',
      '? is no name: letters, digits, - and _, 64 at most.',
    ]);
    expect(readPastedRuns(job, '', text).map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6]);
  });

  it('are added all or none', () => {
    const good = "A; T1; 3/4 PEX 8'\nB; A; 1/2 PEX 6'";
    const edited = pasteRuns(job, '', good);
    if (!edited.ok) throw new Error(JSON.stringify(edited.problems));
    expect(chosenScheme(edited.job).runs.slice(-2)).toMatchObject([
      { id: 'A', from: 'T1', size: '3/4' },
      { id: 'B', from: 'A', size: '1/2' },
    ]);
    expect(pasteRuns(job, '', `${good}\nC; B; nonsense`)).toEqual({
      ok: false,
      problems: { lines: '1 of 3 lines will not do; each says why below.' },
    });
    expect(pasteRuns(job, '', ' \n ')).toMatchObject({ ok: false });
  });
});
