import { describe, expect, it } from 'vitest';
import type { Job } from '../../../engine/index.ts';
import { buildNetwork } from '../../../engine/index.ts';
import { printRunLine } from '../../../engine/job/print-run-line.ts';
import { chosenScheme, type Edited } from '../../../server/edits/edited.ts';
import { addRun, removeRun, replaceRun, replaceRunLine } from '../../../server/edits/run-edits.ts';
import { readSmallJob } from '../small-job.ts';

function jobOf(edited: Edited): Job {
  if (!edited.ok) throw new Error(JSON.stringify(edited.problems));
  return edited.job;
}

function runOf(job: Job, id: string) {
  const run = chosenScheme(job).runs.find((one) => one.id === id);
  if (run === undefined) throw new Error(`no run ${id}`);
  return run;
}

describe('edits of runs', () => {
  it('changes a run to its line and keeps its place and its note', async () => {
    const job = await readSmallJob();
    const noted = jobOf(replaceRun(job, 'T2', { ...runOf(job, 'T2'), note: 'behind the stair' }));
    const edited = jobOf(replaceRunLine(noted, 'T2', "1 PEX 11' 1 through tee"));
    expect(runOf(edited, 'T2')).toMatchObject({ from: 'T1', size: '1', note: 'behind the stair' });
    expect(runOf(job, 'T2').size).toBe('3/4');
  });

  it('says what a line stumbled on', async () => {
    const edited = replaceRunLine(await readSmallJob(), 'T2', "3/4 PEXX 10'");
    expect(edited).toMatchObject({ ok: false, problems: { line: expect.stringContaining('PEXX') } });
  });

  it('takes what a renamed run feeds along', async () => {
    const job = await readSmallJob();
    const edited = jobOf(replaceRun(job, 'RC', { ...runOf(job, 'RC'), id: 'RISER' }));
    expect(runOf(edited, 'LAVC').from).toBe('RISER');
    expect(buildNetwork(edited).ok).toBe(true);
  });

  it('lets no two runs have one name', async () => {
    const job = await readSmallJob();
    expect(replaceRun(job, 'RC', { ...runOf(job, 'RC'), id: 'T1' })).toMatchObject({
      ok: false,
      problems: { id: expect.any(String) },
    });
    expect(addRun(job, { from: 'T1', line: "3/4 PEX 5'", id: 'T2', insert: false }).ok).toBe(false);
  });

  it('adds a run behind another, under the next free name', async () => {
    const edited = jobOf(
      addRun(await readSmallJob(), { from: 'T1', line: "3/4 PEX 5' 2 ells", id: '', insert: false }),
    );
    expect(printRunLine(runOf(edited, 'R1'))).toBe("3/4 PEX 5' 2 ells");
    expect(runOf(edited, 'R1').from).toBe('T1');
    expect(runOf(edited, 'T2').from).toBe('T1');
  });

  it('puts a run between another and what that feeds', async () => {
    const edited = jobOf(
      addRun(await readSmallJob(), { from: 'T1', line: "1 PEX 5'", id: 'MID', insert: true }),
    );
    expect(['HBR', 'T2', 'WH'].map((id) => runOf(edited, id).from)).toEqual(['MID', 'MID', 'MID']);
    expect(runOf(edited, 'MID').from).toBe('T1');
    expect(buildNetwork(edited).ok).toBe(true);
  });

  it('closes the gap that a removed run leaves', async () => {
    const edited = jobOf(removeRun(await readSmallJob(), 'T2'));
    expect(runOf(edited, 'KSC').from).toBe('T1');
    expect(buildNetwork(edited).ok).toBe(true);
  });

  it('refuses what names nothing', async () => {
    const job = await readSmallJob();
    expect(removeRun(job, 'NONE').ok).toBe(false);
    expect(replaceRunLine(job, 'NONE', "1 PEX 1'").ok).toBe(false);
    expect(addRun(job, { from: 'NONE', line: "1 PEX 1'", id: '', insert: false })).toMatchObject({
      ok: false,
      problems: { from: expect.stringContaining('NONE') },
    });
  });
});
