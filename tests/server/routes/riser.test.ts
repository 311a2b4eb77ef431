import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { writeJob } from '../../../server/document/write-job.ts';
import { buildingJob } from '../../bench/building-job.ts';
import { exampleFiles, run } from '../cli/run.ts';
import { type TestApp, testApp } from '../test-app.ts';

const house = exampleFiles().find((path) => path.endsWith('three-level-house.json'))!;

const plain = (markup: string): string => markup.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ');

async function page({ app, id }: TestApp, query = ''): Promise<string> {
  const answer = await app.inject(`/jobs/${id}/riser${query}`);
  expect(answer.statusCode).toBe(200);
  return answer.body;
}

describe('the page of a riser', () => {
  it('has the figures of the terminal, in the table and in words', async () => {
    const body = await page(await testApp(readFileSync(house, 'utf8')));
    const { runs, worst } = JSON.parse((await run(['pressure', house, '--json'])).stdout) as {
      runs: { id: string; residual_Pa: number; flow_m3_per_s: number }[];
      worst: { residual_Pa: number };
    };
    const table = body.slice(body.indexOf('<table class="riser-runs"'));
    const rows = [...table.matchAll(/<tr>(.*?)<\/tr>/gs)].map(([row]) => plain(row)).slice(1);
    expect(rows).toHaveLength(runs.length);
    // 1 psi is 6894.757 Pa, 1 gpm 6.30902e-5 m3/s; the page rounds to a tenth.
    runs.forEach((one, at) => {
      const cells = rows[at]!.trim().split(' ');
      const [flow, left] = cells.slice(-2).map(Number);
      expect(cells[0]).toBe(one.id);
      expect(Math.abs(flow! - one.flow_m3_per_s / 6.30902e-5)).toBeLessThan(0.0501);
      expect(Math.abs(left! - one.residual_Pa / 6894.757)).toBeLessThan(0.0501);
    });
    expect(plain(body)).toContain(`${(worst.residual_Pa / 6894.757).toFixed(1)} psi left`);
  });

  it('leads from each pipe to its row on the workbench, and back to the marked pipe', async () => {
    const test = await testApp(readFileSync(house, 'utf8'));
    const svg = /<svg.*?<\/svg>/s.exec(await page(test, '?run=ER'))![0];
    const rowIds = [...svg.matchAll(/<a href="\/jobs\/[^#"]+#([^"]+)"/g)].map(([, id]) =>
      decodeURIComponent(id!),
    );
    const bench = (await test.app.inject(`/jobs/${test.id}`)).body;
    expect(rowIds.length).toBeGreaterThan(50);
    for (const id of rowIds) expect(bench).toContain(`id="${id}"`);
    const panel = (await test.app.inject(`/jobs/${test.id}/runs/ER`)).body;
    expect(panel).toContain(`/jobs/${test.id}/riser?run=ER#marked-run`);
    expect(svg.match(/id="marked-run"/g)).toHaveLength(1);
  });

  it('says when there is no such run to mark', async () => {
    const body = await page(await testApp(), '?run=nowhere');
    expect(plain(body)).toContain('no run nowhere, so none is marked');
    expect(body).not.toContain('id="marked-run"');
  });

  it('has a table and a sentence for a scheme too large to draw', async () => {
    const body = await page(await testApp(writeJob(buildingJob(601))));
    expect(plain(body)).toContain('This scheme has 601 runs; no more than 600 are drawn');
    expect(body).not.toContain('<svg');
    expect(body).toContain('<th scope="row">');
  });
});
