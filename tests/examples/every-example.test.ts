import { describe, expect, it } from 'vitest';
import { readJob } from '../../server/document/read-job.ts';
import { writeJob } from '../../server/document/write-job.ts';
import { exampleNames, exampleText, openExample, reportOf } from './open-example.ts';

it('there are the examples that the README and the first start name', () => {
  expect(exampleNames).toEqual([
    'copper-walk-up.json',
    'home-run-house.json',
    'large-house.json',
    'three-level-house.json',
    'well-cabin.json',
  ]);
});

describe.each(exampleNames)('%s', (name) => {
  it('is marked as invented', async () => {
    expect((await openExample(name)).note).toMatch(/^Invented building\./);
  });

  it('is written as it was read, and read as it was written', async () => {
    const text = exampleText(name);
    const job = await openExample(name);
    expect(writeJob(job)).toBe(text);
    expect(await readJob(writeJob(job))).toEqual({ ok: true, job });
  });

  it('has every fixture in a room of a level, at a height', async () => {
    for (const { id, level, room, height } of (await openExample(name)).fixtures) {
      expect([level, room, height], id).not.toContain(undefined);
    }
  });

  it('passes, with notes and nothing worse', async () => {
    const { passes, findings } = reportOf(await openExample(name));
    expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
    expect(passes).toBe(true);
  });
});

it('the three-level house stands or falls with its rain shower, by a real but small margin', async () => {
  const { worst } = reportOf(await openExample('three-level-house.json'));
  expect(worst?.inlet.fixture.id).toBe('RAIN');
  expect(worst?.inlet.fixture.level).toBe('upper');
  const psi = 6894.757293168;
  expect(worst!.margin / psi).toBeGreaterThan(1);
  expect(worst!.margin / psi).toBeLessThan(4);
});

it('metric and US quantities stand side by side in one job', async () => {
  const { fixtures } = await openExample('home-run-house.json');
  const typed = fixtures.flatMap(({ flow }) => (flow === undefined ? [] : [flow.typed]));
  expect(typed).toContain('9.5 L/min');
  expect(typed).toContain('2 gpm');
});
