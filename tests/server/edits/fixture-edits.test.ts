import { describe, expect, it } from 'vitest';
import { buildNetwork, type Job } from '../../../engine/index.ts';
import { chosenScheme, type Edited } from '../../../server/edits/edited.ts';
import { addFixture, changeFixture, removeFixture } from '../../../server/edits/fixture-edits.ts';
import { type AddFixtureForm, type FixtureForm, fixtureForm } from '../../../server/forms/fixture-forms.ts';
import { readForm } from '../../../server/forms/read-form.ts';
import { readSmallJob } from '../small-job.ts';

const bidet: AddFixtureForm = {
  name: 'Bidet',
  id: '',
  kind: 'bidet',
  level: 'L2',
  room: '',
  coldFrom: 'RC',
  coldLine: "1/2 PEX 6'",
  hotFrom: 'RH',
  hotLine: "1/2 PEX 7'",
};

function jobOf(edited: Edited): Job {
  if (!edited.ok) throw new Error(JSON.stringify(edited.problems));
  return edited.job;
}

function form(fields: Record<string, string>): FixtureForm {
  const result = readForm(fixtureForm('us'), { use: 'private', count: '1', ...fields });
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

describe('edits of fixtures', () => {
  it.each([
    ['irrigation', {}, false],
    ['irrigation', { continuous: 'yes' }, undefined],
    ['hose-bibb', { continuous: 'yes' }, true],
    ['hose-bibb', {}, undefined],
  ])('keep of %s with %o only what its kind does not do by nature', async (kind, tick, kept) => {
    const job = await readSmallJob();
    const fields = { id: 'WC', name: 'Outdoors', kind, ...tick };
    const edited = jobOf(changeFixture(job, 'WC', form(fields as Record<string, string>)));
    expect(edited.fixtures.find(({ id }) => id === 'WC')?.continuous).toBe(kept);
  });

  it('adds a fixture with the runs that serve it', async () => {
    const edited = jobOf(addFixture(await readSmallJob(), bidet));
    expect(buildNetwork(edited).ok).toBe(true);
    const serving = chosenScheme(edited).runs.filter(
      ({ end }) => end !== undefined && 'fixture' in end && end.fixture === 'F1',
    );
    expect(serving.map(({ id, from }) => `${from} to ${id}`).sort()).toEqual([
      'RC to F1-cold',
      'RH to F1-hot',
    ]);
  });

  it.each([
    [{ coldFrom: '' }, 'coldFrom'],
    [{ coldFrom: 'NONE' }, 'coldFrom'],
    [{ hotLine: '' }, 'hotLine'],
    [{ hotLine: '1/2 lead 7 ft' }, 'hotLine'],
    [{ hotLine: "1/2 PEX 7' to KS hot" }, 'hotLine'],
    [{ id: 'KS' }, 'id'],
  ] as const)('refuses %o at %s', async (wrong, field) => {
    const edited = addFixture(await readSmallJob(), { ...bidet, ...wrong });
    expect(edited).toMatchObject({ ok: false, problems: { [field]: expect.any(String) } });
  });

  it('drops the run of a side that is no longer piped', async () => {
    const edited = jobOf(
      changeFixture(
        await readSmallJob(),
        'LAV',
        form({ id: 'LAV', name: 'Lavatory', kind: 'lavatory', inlets: 'cold' }),
      ),
    );
    expect(chosenScheme(edited).runs.some(({ id }) => id === 'LAVH')).toBe(false);
    expect(buildNetwork(edited).ok).toBe(true);
  });

  it('asks for the run of a side that is newly piped', async () => {
    const job = await readSmallJob();
    const toLavatory = { id: 'WC', name: 'Lavatory 2', kind: 'lavatory' };
    expect(changeFixture(job, 'WC', form(toLavatory))).toMatchObject({
      ok: false,
      problems: { newFrom: expect.any(String) },
    });
    const edited = jobOf(
      changeFixture(job, 'WC', form({ ...toLavatory, newFrom: 'RH', newLine: "1/2 PEX 5'" })),
    );
    expect(buildNetwork(edited).ok).toBe(true);
  });

  it('keeps what its form does not show', async () => {
    const job = await readSmallJob();
    const x = { typed: '4 ft', si: 1.2192 };
    const placed = {
      ...job,
      fixtures: job.fixtures.map((fixture) => (fixture.id === 'SH' ? { ...fixture, x } : fixture)),
    };
    const edited = jobOf(changeFixture(placed, 'SH', form({ id: 'SH', name: 'Rain', kind: 'shower' })));
    expect(edited.fixtures.find(({ id }) => id === 'SH')).toMatchObject({ name: 'Rain', x });
    expect(edited.fixtures.find(({ id }) => id === 'SH')).not.toHaveProperty('flow');
  });

  it('renames a fixture in its runs as well', async () => {
    const edited = jobOf(
      changeFixture(await readSmallJob(), 'SH', form({ id: 'RAIN', name: 'Rain shower', kind: 'shower' })),
    );
    expect(buildNetwork(edited).ok).toBe(true);
  });

  it('removes a fixture with its runs', async () => {
    const edited = jobOf(removeFixture(await readSmallJob(), 'KS'));
    expect(edited.fixtures.some(({ id }) => id === 'KS')).toBe(false);
    expect(chosenScheme(edited).runs.some(({ id }) => id === 'KSC' || id === 'KSH')).toBe(false);
    expect(buildNetwork(edited).ok).toBe(true);
    expect(removeFixture(edited, 'KS').ok).toBe(false);
  });
});
