import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseRunLine } from '../../../engine/job/parse-run-line.ts';
import { lineIsComplete, printRunLine } from '../../../engine/job/print-run-line.ts';
import { quantity } from '../../arbitrary/quantity.ts';
import { arbitraryRun } from '../../arbitrary/run.ts';

function reprinted(line: string): string {
  const result = parseRunLine(line);
  if (!result.ok) throw new Error(result.problem);
  return printRunLine(result.run);
}

describe('printRunLine', () => {
  it.each([
    ["3/4 pex, 18', up 9', 2 90's", "3/4 PEX 18' up 9' 2 ells"],
    ["3/4 copper 4' then reducing valve 60 psi", "3/4 copper L 4' then prv 60 psi"],
    [
      '1 1/2" galv 12 ft 6 in down 4 ft 1 tee run 1 globe',
      '1-1/2 galvanized 12 ft 6 in down 4 ft 1 through tee 1 globe valve',
    ],
    ["1 polyethylene insert brass 9' 3 45's 2 elbows", "1 PE brass 9' 3 45s 2 ells"],
    ["1 copper 4' then reducing valve 3/4 60psi", "1 copper L 4' then prv 3/4 60psi"],
    ["1 copper 4' then backflow assembly reduced pressure 3/4", "1 copper L 4' then backflow rp 3/4"],
    ['1/2 cpvc 2 m rise -0.5 m to A1 HW', '1/2 CPVC 2 m down 0.5 m to A1 hot'],
  ])('writes %s as %s', (line, written) => {
    expect(reprinted(line)).toBe(written);
    expect(reprinted(written)).toBe(written);
  });

  it('is read back as the same run, given the run for its note and curve', () => {
    fc.assert(
      fc.property(arbitraryRun, (run) => {
        const { id: _, from: __, ...fields } = run;
        expect(parseRunLine(printRunLine(run), { previous: run })).toEqual({ ok: true, run: fields });
      }),
      { numRuns: 1000 },
    );
  });

  it('is read back alone as the same run, without its note, where it says all', () => {
    let complete = 0;
    fc.assert(
      fc.property(arbitraryRun, (run) => {
        const { id: _, from: __, note: ___, ...fields } = run;
        const again = parseRunLine(printRunLine(run));
        if (lineIsComplete(run)) {
          complete++;
          expect(again).toEqual({ ok: true, run: fields });
        } else {
          expect(again).not.toEqual({ ok: true, run: fields });
        }
      }),
      { numRuns: 1000 },
    );
    expect(complete).toBeGreaterThan(300);
  });

  it('is stable', () => {
    fc.assert(
      fc.property(arbitraryRun, (run) => {
        const line = printRunLine(run);
        const again = parseRunLine(line, { previous: run });
        expect(again.ok && printRunLine(again.run)).toBe(line);
      }),
    );
  });

  it('does not trust sizes and ids that a line could not hold', () => {
    const result = parseRunLine("3/4 PEX 18' to A cold");
    if (!result.ok) throw new Error(result.problem);
    expect(lineIsComplete(result.run)).toBe(true);
    expect(lineIsComplete({ ...result.run, size: '3/4 inch' })).toBe(false);
    expect(lineIsComplete({ ...result.run, end: { fixture: 'a b', inlet: 'cold' } })).toBe(false);
    expect(lineIsComplete({ ...result.run, end: { device: 'meter', size: 'big one' } })).toBe(false);
    expect(lineIsComplete({ ...result.run, end: { device: 'arrester', size: 'A B' } })).toBe(false);
    const end = { device: 'reducing-valve', size: '2', set: quantity('1/2 psi', 'pressure') } as const;
    expect(lineIsComplete({ ...result.run, end })).toBe(false);
    expect(lineIsComplete({ ...result.run, end: { ...end, size: '1-1/2' } })).toBe(true);
  });
});
