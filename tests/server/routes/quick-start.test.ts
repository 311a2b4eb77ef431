import { describe, expect, it } from 'vitest';
import { buildNetwork, sizeScheme } from '../../../engine/index.ts';
import { readJob } from '../../../server/document/read-job.ts';
import { shippedPrices } from '../../../server/prices/shipped-prices.ts';
import { listJobs, readJobRow } from '../../../server/storage/job-store.ts';
import { quickStartDefaults } from '../../../views/quick-start.ts';
import { type TestApp, testApp } from '../test-app.ts';

const answers = { ...quickStartDefaults, name: 'Garth House (invented)' };

async function made(test: TestApp, location: string | undefined) {
  const [, id] = /^\/jobs\/([^/]+)\/compare$/.exec(location ?? '') ?? [];
  const row = await readJobRow(test.store, id ?? '');
  const read = await readJob(row?.document ?? '');
  if (!read.ok) throw new Error(read.problems.join('; '));
  return { id: id!, job: read.job };
}

describe('the quick start', () => {
  it('is found from the list of jobs, and its form holds a house already', async () => {
    const { app } = await testApp();
    expect((await app.inject('/jobs')).body).toContain('href="/quick-start"');
    const page = await app.inject('/quick-start');
    expect(page.statusCode).toBe(200);
    expect(page.body).toContain('value="Ground floor"');
  });

  it('makes a job of three schemes, each sized at least cost, and opens them side by side', async () => {
    const test = await testApp();
    const answer = await test.post('/quick-start', answers);
    expect(answer.statusCode).toBe(303);
    const { id, job } = await made(test, answer.headers.location);
    expect(job.name).toBe('Garth House (invented)');
    expect(job.schemes).toHaveLength(3);
    const prices = await shippedPrices();
    for (const scheme of job.schemes) {
      const built = buildNetwork(job, scheme.id);
      if (!built.ok) throw new Error('no tree');
      const sized = sizeScheme(built.network, { prices, keep: new Set() });
      if (!sized.ok) throw new Error('nothing fits');
      const kept = sizeScheme(built.network, { prices, keep: new Set(scheme.runs.map((run) => run.id)) });
      if (!kept.ok) throw new Error('its own sizes do not fit');
      expect(kept.sized.cost).toBe(sized.sized.cost);
    }
    const kinds = job.fixtures.map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind === 'water-closet-tank')).toHaveLength(3);
    expect(kinds.filter((kind) => kind === 'hose-bibb')).toHaveLength(2);
    for (const page of [`/jobs/${id}/compare`, `/jobs/${id}/sizing`, `/jobs/${id}`]) {
      expect((await test.app.inject(page)).statusCode).toBe(200);
    }
  });

  it('leaves levels without a name out, and takes bare numbers in the units chosen', async () => {
    const test = await testApp();
    const answer = await test.post('/quick-start', {
      ...answers,
      units: 'si',
      level0: '',
      level1: 'Dwelling',
      height1: '2.7',
      level2: 'Loft',
      height2: '2.4 m',
      full2: '1',
      kitchen: '1',
      source: 'well',
      cutIn: '300',
      cutOut: '4.5 bar',
    });
    const { job } = await made(test, answer.headers.location);
    expect(job.levels.map(({ name }) => name)).toEqual(['Dwelling', 'Loft']);
    expect(job.supply).toMatchObject({ kind: 'well', cutIn: { typed: '300 kPa' } });
    const sink = job.fixtures.find(({ kind }) => kind === 'kitchen-sink');
    expect(sink?.level).toBe(job.levels[0]!.id);
  });

  it('makes the house where no sizes fit too, and shows it short', async () => {
    const test = await testApp();
    const answer = await test.post('/quick-start', { ...answers, low: '22 psi' });
    expect(answer.statusCode).toBe(303);
    const page = await test.app.inject(String(answer.headers.location));
    expect(page.body).toContain('▼ SHORT');
    expect(page.body).toContain('no sizes fit');
  });

  it.each([
    ['name', { name: '' }, /Give a name/],
    ['units', { units: 'miles' }, /Choose the units/],
    ['level0', { level0: '', level1: '' }, /at least one level/],
    ['height1', { height1: '62 psi' }, /62 psi.*length/],
    ['height0', { height0: '-3 ft' }, /more than nothing/],
    ['height0', { height0: '300 ft' }, /no more than 10 m/],
    ['full1', { full1: 'two' }, /two came; expected a whole number/],
    ['half0', { half0: '500' }, /from 0 to 9/],
    ['hoseBibbs', { hoseBibbs: '-1' }, /whole number/],
    ['low', { low: '80 psi' }, /exchange them/],
    ['low', { low: '' }, /low/],
    ['source', { source: 'sea' }, /where the water comes from/],
    ['', { kitchen: '5' }, /level of the kitchen/],
  ])('refuses a wrong %s by its field, keeps the rest, and makes nothing', async (field, wrong, says) => {
    const test = await testApp();
    const answer = await test.post('/quick-start', { ...answers, rainShower: 'yes', ...wrong } as Record<
      string,
      string
    >);
    expect(answer.statusCode).toBe(422);
    expect(answer.body).toMatch(says);
    if (field !== '') expect(answer.body).toContain(`id="quick-start:${field}:problem"`);
    if (field !== 'name') expect(answer.body).toContain('value="Garth House (invented)"');
    expect(answer.body).toMatch(/name="rainShower"[^>]*checked/);
    expect(answer.body).not.toMatch(/name="iceMaker"[^>]*checked/);
    expect(await listJobs(test.store)).toHaveLength(1);
  });

  it('escapes what was typed, and takes nothing from another site', async () => {
    const test = await testApp();
    const name = '"><script>alert(1)</script>';
    const wrong = await test.post('/quick-start', { ...answers, name, full0: '<i>' });
    expect(wrong.body).not.toContain('""><script>');
    expect(wrong.body).toContain('value="&#34;><script>');
    expect(wrong.body).toContain('&lt;i> came');
    const headers = { 'sec-fetch-site': 'cross-site' };
    expect((await test.post('/quick-start', answers, headers)).statusCode).toBe(403);
    expect(await listJobs(test.store)).toHaveLength(1);
  });
});
