import { describe, expect, it } from 'vitest';
import { buildNetwork, report } from '../../../engine/index.ts';
import { advanceTrial, startTrial } from '../../../server/storage/trial-store.ts';
import { exampleText, openExample, reportOf } from '../../examples/open-example.ts';
import { readSmallJob, smallDocument, smallJob } from '../small-job.ts';
import { noon, testApp } from '../test-app.ts';

const psi = 6894.757293168;
const gpm = 3.785411784e-3 / 60;
const foot = 0.3048;

const plain = (body: string) => body.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ');

/** The cells of each row of a picture's table. */
function rowsOf(body: string, id: string): string[][] {
  const table = new RegExp(`<details[^>]* id="${id}".*?<tbody>(.*?)</tbody>`, 's').exec(body)![1]!;
  return [...table.matchAll(/<tr.*?<\/tr>/gs)].map(([row]) =>
    [...row.matchAll(/<t[dh][^>]*>(.*?)<\/t[dh]>/gs)].map((cell) => plain(cell[1]!).trim()),
  );
}

async function solved() {
  const built = buildNetwork(await readSmallJob());
  if (!built.ok) throw new Error('no tree');
  return report(built.network);
}

describe('the pictures of a job', () => {
  it('set two staircases side by side on one scale, with the figures of the report', async () => {
    const { app, id } = await testApp();
    const { body, statusCode } = await app.inject(`/jobs/${id}/pictures?a=KS.cold&b=SH.hot`);
    expect(statusCode).toBe(200);
    const { inlets, solution } = await solved();
    const left = ['KS.cold', 'SH.hot'].map((key) => {
      const one = inlets.find(({ inlet }) => `${inlet.fixture.id}.${inlet.side}` === key)!;
      return (one.residual / psi).toFixed(1);
    });
    const rows = rowsOf(body, 'staircases-table');
    const start = (solution.supplyPressure / psi).toFixed(1);
    expect(rows[0]).toEqual(['', 'at the street, under demand', '', '', start, '', '', start, '']);
    expect(rows.at(-3)).toEqual(['', 'left at the fixture', '', '', left[0], '', '', left[1], '']);
    const drawings = [...body.matchAll(/<svg class="staircase narrow".*?<\/svg>/gs)].map(([svg]) => svg);
    expect(drawings).toHaveLength(2);
    drawings.forEach((svg, at) => {
      expect(svg).toContain(`${left[at]} left`);
    });
    // One scale: the same round pressures at the same heights.
    const grids = drawings.map((svg) => [...svg.matchAll(/<g class="grid">.*?<\/g>/gs)].map(([g]) => g));
    expect(grids[0]!.length).toBeGreaterThan(2);
    expect(grids[1]).toEqual(grids[0]);
    // What B loses more, added up, is what it is left with less; each figure is rounded to a tenth.
    const lines = rows.slice(1, -3);
    const sum = lines.reduce((total, row) => total + Number(row[8]!.replace('−', '-')), 0);
    expect(Math.abs(sum - (Number(left[0]) - Number(left[1])))).toBeLessThan(0.05 * (lines.length + 2));
  });

  it('say where a path that was asked for is not there', async () => {
    const { app, id } = await testApp();
    const { body, statusCode } = await app.inject(`/jobs/${id}/pictures?a=%3Cb%3E.hot`);
    expect(statusCode).toBe(200);
    expect(body).toContain('No run of this scheme ends at &lt;b>.hot');
  });

  it.each(['three-level-house', 'copper-walk-up'])(
    'show the demand of %s on the supply curve, and what is left there',
    async (name) => {
      const { app, id } = await testApp(exampleText(`${name}.json`));
      const { body } = await app.inject(`/jobs/${id}/pictures`);
      const { solution, worst, network } = reportOf(await openExample(`${name}.json`));
      const rows = rowsOf(body, 'supply-table');
      const demand = rows.filter((row) => row[3] === 'the demand');
      const meter = network.runs.findIndex(
        ({ end }) => end !== undefined && 'device' in end && end.device === 'meter',
      );
      expect(demand).toEqual([
        [
          (solution.flow[0]! / gpm).toFixed(1),
          (solution.supplyPressure / psi).toFixed(1),
          (solution.residual[meter]! / psi).toFixed(1),
          'the demand',
        ],
      ]);
      expect(Number(rows[0]![0])).toBe(0);
      expect(Number(rows.at(-1)![0])).toBeGreaterThanOrEqual((2 * solution.flow[0]!) / gpm);
      expect(plain(body)).toContain(
        `The worst fixture, ${worst!.inlet.fixture.name}, ${worst!.inlet.side}, is left ${(worst!.residual / psi).toFixed(1)} psi`,
      );
    },
  );

  it('say of a well what it cuts in at and what its pump gives', async () => {
    const { app, id } = await testApp(exampleText('well-cabin.json'));
    const text = plain((await app.inject(`/jobs/${id}/pictures`)).body);
    expect(text).toContain('The well’s pump cuts in at 3 bar');
    expect(text).toContain('over the pump’s 50 L/min empties the tank');
  });

  it('name the runs that are over their limit, cold and hot by word, and draw forty bars at most', async () => {
    const { app, id } = await testApp(exampleText('copper-walk-up.json'));
    const { body } = await app.inject(`/jobs/${id}/pictures`);
    const { network, solution, findings } = reportOf(await openExample('copper-walk-up.json'));
    expect(findings.some(({ code }) => code === 'velocity-high')).toBe(false);
    expect(plain(body)).toContain(`None of ${network.size} runs is over its limit.`);
    const rows = rowsOf(body, 'velocity-table');
    expect(rows).toHaveLength(network.size);
    for (const [run, , water, , velocity] of rows) {
      const at = network.positionOf.get(run!)!;
      expect(velocity).toBe((solution.velocity[at]! / foot).toFixed(1));
      expect(water).toBe(network.hot[at] === 1 ? 'hot' : 'cold');
    }
    expect(
      [...body.matchAll(/<svg class="plot velocity-bars wide".*?<\/svg>/gs)][0]![0].match(/<rect/g),
    ).toHaveLength(40);
  });

  it('mark a run over its limit in the picture, the table and the summary', async () => {
    const slow = { ...smallJob, basis: { ...smallJob.basis, velocityCold: '3 ft/s' } };
    const { app, id } = await testApp(JSON.stringify(slow));
    const { body } = await app.inject(`/jobs/${id}/pictures`);
    const over = rowsOf(body, 'velocity-table').filter((row) => row[6] === 'OVER');
    expect(over.length).toBeGreaterThan(0);
    for (const [run, , water, , velocity, limit] of over) {
      expect(water).toBe('cold');
      expect(limit).toBe('3.0');
      expect(Number(velocity)).toBeGreaterThanOrEqual(3);
      expect(plain(body)).toMatch(new RegExp(`over the limit: .*${run}, cold, [0-9.]+ ft/s where 3\\.0`));
    }
    expect(body.match(/<g class="bar over">/g)).toHaveLength(2 * over.length);
  });

  it('set the worst path of a trial beside what it was before', async () => {
    const { app, id, store } = await testApp();
    const tried = structuredClone(JSON.parse(smallDocument)) as { supply: { low: string } };
    tried.supply.low = '50 psi';
    const trial = (await startTrial(store, id, 1, noon))!;
    const draft = { document: JSON.stringify(tried), name: smallJob.name, change: 'low 50 psi' };
    expect((await advanceTrial(store, trial, 1, draft, noon)).ok).toBe(true);
    const { body, statusCode } = await app.inject(`/jobs/${id}~${trial}/pictures`);
    expect(statusCode).toBe(200);
    const { worst } = await solved();
    const before = worst!.residual / psi;
    const rows = rowsOf(body, 'staircases-table');
    // Five psi less at the street and nothing else is five psi less at the tap.
    expect([rows[0]![4], rows[0]![7]]).toEqual(['55.0', '50.0']);
    expect([rows.at(-3)![4], rows.at(-3)![7]]).toEqual([before.toFixed(1), (before - 5).toFixed(1)]);
    expect(rows.slice(1, -3).every((row) => row[8] === '0.0')).toBe(true);
    expect(plain(body)).toContain('B is left with 5.0 psi less than A.');
    expect(body).toMatch(/<option value="before" selected/);
    expect((await app.inject(`/jobs/${id}/pictures`)).body).not.toContain('value="before"');
  });

  it('answer 404 for a job that is not there', async () => {
    const { app } = await testApp();
    expect((await app.inject('/jobs/nothing/pictures')).statusCode).toBe(404);
  });
});
