import { describe, expect, it } from 'vitest';
import type { Job } from '../../../engine/job/job.ts';
import { chosenScheme, type Edited } from '../../../server/edits/edited.ts';
import { addAfter, duplicate, indent, moveDown, moveUp, outdent } from '../../../server/edits/tree-edits.ts';
import { cold, fixture, job, run } from '../../jobs/written-job.ts';

/** SVC feeds A and D; A feeds B, which ends at the basin, and C. */
const house: Job = job(
  [fixture('LAV', 'lavatory')],
  [
    run('SVC', 'street'),
    run('A', 'SVC'),
    run('B', 'A', { end: cold('LAV') }),
    run('C', 'A'),
    run('D', 'SVC'),
  ],
);

/** Each run with the one that feeds it, in the order of the file. */
function outline(edited: Edited): string {
  if (!edited.ok) return Object.values(edited.problems).join(' ');
  return chosenScheme(edited.job)
    .runs.map(({ id, from }) => `${from}>${id}`)
    .join(' ');
}

describe('the place of a run in the outline', () => {
  it('changes among those on the same run, with all that hangs on it', () => {
    expect(outline(moveDown(house, 'A'))).toBe('street>SVC SVC>D SVC>A A>B A>C');
    expect(outline(moveUp(house, 'D'))).toBe('street>SVC SVC>D SVC>A A>B A>C');
    expect(outline(moveUp(house, 'B'))).toBe('Run B is the first that A feeds.');
    expect(outline(moveDown(house, 'D'))).toBe('Run D is the last that SVC feeds.');
  });

  it('goes under the run before it, which may not end at a fixture', () => {
    expect(outline(indent(house, 'D'))).toBe('street>SVC SVC>A A>B A>C A>D');
    expect(outline(indent(house, 'A'))).toContain('Run A is the first that SVC feeds');
    expect(outline(indent(house, 'C'))).toBe(
      'Run B, before C, ends at a fixture, an expansion tank or an arrester; nothing can follow there.',
    );
  });

  it('comes out behind the run that fed it, and never beside the service', () => {
    expect(outline(outdent(house, 'B'))).toBe('street>SVC SVC>A A>C SVC>B SVC>D');
    expect(outline(outdent(house, 'A'))).toContain('one service from the street');
    expect(outline(outdent(house, 'SVC'))).toContain('comes from the street already');
  });

  it('is copied with what hangs on it, under new names, and with open ends for fixtures', () => {
    const copied = duplicate(house, 'A');
    expect(outline(copied)).toBe('street>SVC SVC>A A>B A>C SVC>R1 R1>R2 R1>R3 SVC>D');
    if (!copied.ok) throw new Error('refused');
    expect(chosenScheme(copied.job).runs.filter(({ end }) => end !== undefined)).toHaveLength(1);
    expect(outline(duplicate(house, 'SVC'))).toContain('one service from the street');
  });

  it('is given to a new run behind another', () => {
    expect(outline(addAfter(house, 'A', "1/2 PEX 5'"))).toBe('street>SVC SVC>A A>B A>C SVC>R1 SVC>D');
    expect(outline(addAfter(house, 'SVC', "1/2 PEX 5'"))).toContain('one service from the street');
    expect(addAfter(house, 'A', '1/2 PEXX')).toMatchObject({
      ok: false,
      problems: { line: expect.stringContaining('PEXX') },
    });
    expect(outline(moveUp(house, 'NONE'))).toBe('There is no run NONE.');
  });
});
