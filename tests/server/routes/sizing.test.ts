import { describe, expect, it } from 'vitest';
import {
  buildNetwork,
  handMethods,
  type Job,
  pipeOptions,
  priceOfPressure,
  report,
  type SizingRules,
  sizedScheme,
  sizeScheme,
  solve,
} from '../../../engine/index.ts';
import { readJob } from '../../../server/document/read-job.ts';
import { writeJob } from '../../../server/document/write-job.ts';
import { shippedPrices } from '../../../server/prices/shipped-prices.ts';
import { buildingJob } from '../../bench/building-job.ts';
import { smallJob } from '../small-job.ts';
import { type TestApp, testApp } from '../test-app.ts';

const plain = (body: string) =>
  body
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&amp;', '&')
    .replace(/\s+/g, ' ');

const dollars = (cents: number) => `$${(cents / 100).toFixed(2).replace(/\B(?=(\d{3})+\.)/g, ',')}`;

async function jobOf(test: TestApp): Promise<Job> {
  const read = await readJob(await test.document());
  if (!read.ok) throw new Error(read.problems.join('; '));
  return read.job;
}

function networkOf(job: Job) {
  const built = buildNetwork(job, job.chosen);
  if (!built.ok) throw new Error('no tree');
  return built.network;
}

/** The engine's own least-cost sizing of the job in a store. */
async function leastCost(test: TestApp, rules: Partial<SizingRules> = {}) {
  const network = networkOf(await jobOf(test));
  const result = sizeScheme(network, { prices: await shippedPrices(), keep: new Set(), ...rules });
  if (!result.ok) throw new Error('nothing fits');
  return { network, ...result.sized };
}

/** The small cottage with another pressure at the street. */
function cottage(low: string): string {
  return JSON.stringify({ ...smallJob, supply: { ...smallJob.supply, low } });
}

describe('the page of least-cost sizing', () => {
  it('shows the least cost, what is left then, and each run that changes', async () => {
    const test = await testApp();
    const { network, cost, scheme } = await leastCost(test);
    const page = await test.app.inject(`/jobs/${test.id}/sizing`);
    expect(page.statusCode).toBe(200);
    const text = plain(page.body);
    expect(text).toContain(`${dollars(cost)} for pipe and fittings`);
    const job = await jobOf(test);
    const after = report(networkOf({ ...job, schemes: [scheme] })).worst!;
    expect(text).toContain(`then has ${(after.residual / 6894.757293168).toFixed(1)} psi`);
    const rows = [
      ...page.body.matchAll(/<th scope="row">(\w+)<\/th><td>([\d/-]+)<\/td><td><strong>→ ([\d/-]+)</g),
    ].map(([, run, from, to]) => [run, from, to]);
    const changed = network.scheme.runs
      .map(({ id, size }, at) => [id, size, scheme.runs[at]!.size])
      .filter(([, from, to]) => from !== to);
    expect(changed.length).toBeGreaterThan(1);
    expect(rows).toEqual(changed);
  });

  it('sets the hand methods beside it, with their cost and what they leave', async () => {
    const test = await testApp();
    const job = await jobOf(test);
    const network = networkOf(job);
    const solution = solve(network);
    const { options } = pipeOptions(network, solution, { prices: await shippedPrices(), keep: new Set() });
    const text = plain((await test.app.inject(`/jobs/${test.id}/sizing`)).body);
    for (const [method, name] of [
      ['velocity', 'By velocity'],
      ['uniform-friction', 'Uniform friction'],
      ['segment-free-table', 'By a table'],
    ] as const) {
      const sized = sizedScheme(network, handMethods[method]({ network, solution, options }));
      const row = text.slice(text.indexOf(name), text.indexOf(name) + 400);
      expect(row).toContain(dollars(sized.cost));
      const { margin } = report(networkOf({ ...job, schemes: [sized.scheme] })).worst!;
      const psi = Math.abs(margin / 6894.757293168).toFixed(1);
      expect(row).toContain(`${margin < 0 ? '−' : '+'}${psi} psi`);
    }
  });

  it('ranks what a psi costs as the engine does', async () => {
    const test = await testApp();
    const drawn = report(networkOf(await jobOf(test)));
    const prices = priceOfPressure(drawn, drawn.worst!.inlet, await shippedPrices());
    const { body } = await test.app.inject(`/jobs/${test.id}/sizing`);
    const list = body.slice(body.indexOf('class="psi"'));
    const runs = [...list.matchAll(/<th scope="row">(?:Run|Meter on run) (\w+)(?::| shorter)/g)].map(
      (match) => match[1],
    );
    expect(runs).toEqual(prices.map(({ change }) => ('run' in change ? change.run : change.scheme)));
  });

  it('keeps the runs that are named, and ties sizes as asked', async () => {
    const test = await testApp();
    const { id } = test;
    const free = await leastCost(test);
    const changed = free.network.scheme.runs.filter(({ size }, at) => size !== free.scheme.runs[at]!.size);
    const [first, second] = changed.map((run) => run.id);
    const kept = await leastCost(test, { keep: new Set([first!, second!]), notLarger: true });
    expect(kept.cost).toBeGreaterThan(free.cost);
    const page = await test.app.inject(`/jobs/${id}/sizing?keep=${first},+${second}&notLarger=yes`);
    expect(plain(page.body)).toContain(`${dollars(kept.cost)} for pipe and fittings`);
    expect(page.body).not.toContain(`<th scope="row">${first}</th>`);
    expect(page.body).toContain(`value="${first}, ${second}"`);
    const trunk = await leastCost(test, { trunks: [new Set(['T1', 'T2'])] });
    const tied = await test.app.inject(`/jobs/${id}/sizing?trunk=T1,T2`);
    expect(plain(tied.body)).toContain(dollars(trunk.cost));
    const metal = await leastCost(test, { materials: ['copper-l'] });
    const copper = await test.app.inject(`/jobs/${id}/sizing?material=copper-l`);
    expect(plain(copper.body)).toContain(dollars(metal.cost));
    expect(plain(copper.body)).toContain('→ 3/4 copper type L');
  });

  it('offers to keep one more run by a plain link', async () => {
    const test = await testApp();
    const { body } = await test.app.inject(`/jobs/${test.id}/sizing?keep=SV&notLarger=yes`);
    const [, href] = /<a href="([^"]+#answer)">Keep/.exec(body)!;
    const next = await test.app.inject(href!.replaceAll('&amp;', '&').replace(/#.*/, ''));
    expect(next.statusCode).toBe(200);
    expect(next.body).toMatch(/value="SV, \w+"/);
  });

  it.each([
    ['keep=NONE', 'sizing:keep', /no run NONE/],
    ['keep=%22%3E%3Cb%3E', 'sizing:keep', /no run &#34;>&lt;b>|no run ">&lt;b>/],
    ['trunk=T1,KSC', 'sizing:trunk', /do not feed each other/],
    ['material=lead', '', /Choose among pex/],
  ])('refuses %s in words', async (query, field, says) => {
    const test = await testApp();
    const page = await test.app.inject(`/jobs/${test.id}/sizing?${query}`);
    expect(page.statusCode).toBe(422);
    expect(page.body).toMatch(says);
    expect(page.body).not.toContain('""><b>');
    if (field !== '') expect(page.body).toContain(`aria-describedby="${field}:problem`);
  });

  it('says who is short, by how much, and from what pressure on it would fit', async () => {
    const test = await testApp(cottage('30 psi'));
    const page = await test.app.inject(`/jobs/${test.id}/sizing`);
    expect(page.statusCode).toBe(200);
    const text = plain(page.body);
    const [, short] = /stays (\d+\.\d) psi short/.exec(text)!;
    const [, fits] = /It would fit from (\d+\.\d) psi at the street/.exec(text)!;
    expect(Number(fits) - 30).toBeCloseTo(Number(short), 1);
    expect(text).not.toContain('Use these sizes');
    // At that pressure, and a gauge's hair above the digit shown, it does fit.
    const enough = await testApp(cottage(`${Number(fits) + 0.05} psi`));
    expect(plain((await enough.app.inject(`/jobs/${enough.id}/sizing`)).body)).toContain(
      'the least that holds',
    );
    const before = await testApp(cottage(`${Number(fits) - 0.15} psi`));
    expect(plain((await before.app.inject(`/jobs/${before.id}/sizing`)).body)).toContain('Nothing fits');
  });

  it('reads its curve off in a table, equal to a sizing at that pressure', async () => {
    const test = await testApp();
    const { body } = await test.app.inject(`/jobs/${test.id}/sizing`);
    const [, shown] = /<th scope="row">52\.0 psi<\/th><td class="numeric">([^<]+)</.exec(body)!;
    const lower = await testApp(cottage('52 psi'));
    expect(shown).toBe(dollars((await leastCost(lower)).cost));
    expect(body.match(/<svg class="cost-plot/g)).toHaveLength(2);
    expect(body).not.toContain('NaN');
  });

  it('refuses a scheme that would hold the others up, in words', async () => {
    const test = await testApp(writeJob(buildingJob(3001)));
    const page = await test.app.inject(`/jobs/${test.id}/sizing`);
    expect(page.statusCode).toBe(413);
    expect(page.body).toContain('no more than 3000 are sized at a time');
    const sized = await test.post(`/jobs/${test.id}/sizing`, { as: 'replace' });
    expect(sized.statusCode).toBe(413);
  });
});

describe('using the sizes', () => {
  it('puts them into the scheme', async () => {
    const test = await testApp();
    const { scheme } = await leastCost(test);
    const answer = await test.post(`/jobs/${test.id}/sizing`, { as: 'replace', revision: '1' });
    expect(answer.statusCode).toBe(303);
    expect(answer.headers.location).toMatch(new RegExp(`^/jobs/${test.id}/sizing`));
    const { schemes } = await jobOf(test);
    expect(schemes).toHaveLength(1);
    expect(schemes[0]!.runs.map(({ size }) => size)).toEqual(scheme.runs.map(({ size }) => size));
    const again = await test.app.inject(`/jobs/${test.id}/sizing`);
    expect(plain(again.body)).toContain('The sizes drawn are those of least cost.');
  });

  it('puts them into a copy, by the rules of the page', async () => {
    const test = await testApp();
    const { scheme } = await leastCost(test, { keep: new Set(['T1']), notLarger: true });
    const fields = { as: 'copy', keep: 'T1', notLarger: 'yes' };
    const answer = await test.post(`/jobs/${test.id}/sizing`, fields);
    expect(answer.headers.location).toBe(`/jobs/${test.id}/compare#schemes`);
    const { schemes, chosen } = await jobOf(test);
    expect(chosen).toBe('S1');
    expect(schemes.map(({ name }) => name)).toEqual([
      'Trunk and branch',
      'Trunk and branch, sized at least cost',
    ]);
    expect(schemes[1]!.runs.map(({ size }) => size)).toEqual(scheme.runs.map(({ size }) => size));
  });

  it.each([
    [{ as: 'replace', keep: 'NONE' }, 422, /no run NONE/],
    [{ as: 'elsewhere' }, 422, /where the sizes go/],
    [{ as: 'replace', revision: '3' }, 409, /changed elsewhere/],
  ])('refuses %o and changes nothing', async (fields, status, says) => {
    const test = await testApp();
    const before = await test.document();
    const answer = await test.post(`/jobs/${test.id}/sizing`, fields as Record<string, string>);
    expect(answer.statusCode).toBe(status);
    expect(answer.body).toMatch(says);
    expect(await test.document()).toBe(before);
  });

  it('changes nothing where nothing fits, nor for another site', async () => {
    const test = await testApp(cottage('30 psi'));
    const before = await test.document();
    const answer = await test.post(`/jobs/${test.id}/sizing`, { as: 'replace' });
    expect(answer.statusCode).toBe(422);
    expect(plain(answer.body)).toMatch(/Nothing was changed. Nothing fits/);
    const headers = { 'sec-fetch-site': 'cross-site' };
    expect((await test.post(`/jobs/${test.id}/sizing`, { as: 'replace' }, headers)).statusCode).toBe(403);
    expect(await test.document()).toBe(before);
  });
});
