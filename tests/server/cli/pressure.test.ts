import { describe, expect, it } from 'vitest';
import { starterJob } from '../../../server/cli/starter-job.ts';
import { jobFile, run, shortOfPressure } from './run.ts';

describe('hightap pressure', () => {
  it('says which fixture is worst, what is left there and whether it passes', async () => {
    const { code, stdout, stderr } = await run(['pressure', jobFile()]);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect(stdout).toMatch(/^Worst {5}Shower \(shower\.hot\)$/m);
    expect(stdout).toMatch(/\d+\.\d psi left, 20\.0 psi needed: passes with \d+\.\d psi to spare/);
  });

  it('says SHORT, with by how much', async () => {
    const { code, stdout } = await run(['pressure', jobFile(shortOfPressure)]);
    expect(code).toBe(0);
    expect(stdout).toMatch(/20\.0 psi needed: SHORT by \d+\.\d psi/);
    expect(stdout).toMatch(/^Shower .* -\d+\.\d {2}SHORT$/m);
  });

  it('shows by how little an inlet is short, in figures that are not the same', async () => {
    const { stdout } = await run(['pressure', jobFile({ units: 'us' }), '--json']);
    const { worst } = JSON.parse(stdout) as { worst: { margin_Pa: number } };
    // The street lower by the margin and 20 Pa (0.003 psi) more: flows stay, so that much is short.
    const low = `${(55 - (worst.margin_Pa + 20) / 6894.757293168).toFixed(6)} psi`;
    const told = (await run(['pressure', jobFile({ supply: { ...starterJob.supply, low } })])).stdout.replace(
      /\s+/g,
      ' ',
    );
    expect(told).toContain('19.997 psi left, 20.000 psi needed: SHORT by 0.003 psi');
    expect(told).toMatch(/ 19\.997 20\.000 -0\.003 SHORT/);
    expect(told).toContain('SHORT by 0.003');
    expect(told).not.toMatch(/SHORT by 0\.0 /);
  });

  it('shows static pressure by the column of water above the street', async () => {
    // 70 psi less 8 ft of water at 55 F: 999.5 kg/m3 x 9.80665 m/s2 x 2.4384 m = 23 901 Pa = 3.47 psi.
    const { stdout } = await run(['pressure', jobFile()]);
    const expected = (70 - (999.5 * 9.80665 * 8 * 0.3048) / 6894.757).toFixed(1);
    expect(stdout).toMatch(new RegExp(`^Shower +shower\\.cold +${expected} `, 'm'));
  });

  it('lists every inlet, smallest margin first', async () => {
    const { stdout } = await run(['pressure', jobFile()]);
    const table = stdout.slice(stdout.indexOf('Margin'), stdout.indexOf('Path to'));
    const margins = [...table.matchAll(/(-?\d+\.\d)$/gm)].map(([, margin]) => Number(margin));
    expect(margins).toHaveLength(7);
    expect(margins).toEqual([...margins].sort((one, other) => one - other));
  });

  it('keeps the table to 20 inlets unless all are asked for', async () => {
    const fixtures = Array.from({ length: 25 }, (_, at) => ({
      id: `basin-${at}`,
      name: `Basin ${at}`,
      kind: 'lavatory',
      use: 'private',
      count: 1,
      inlets: 'cold',
    }));
    const runs = [
      { id: 'S', from: 'street', line: "1 PEX 20' 1 ball valve" },
      ...fixtures.map(({ id }, at) => ({ id: `B${at}`, from: 'S', line: `1/2 PEX 10' to ${id} cold` })),
    ];
    const file = jobFile({ fixtures, schemes: [{ id: 'trunk', name: 'One', runs }] });
    const rows = (text: string): number => text.match(/basin-\d+\.cold/g)!.length;
    const first = (await run(['pressure', file])).stdout;
    const all = (await run(['pressure', file, '--all'])).stdout;
    // The worst is named once more in the summary.
    expect([rows(first), rows(all)]).toEqual([21, 26]);
    expect(first).toContain('and 5 more with more to spare; --all shows them');
    expect(all).not.toContain('--all');
  });

  it('shows the path as a ledger that closes', async () => {
    const { stdout } = await run(['pressure', jobFile(), '--path', 'sink.hot']);
    const ledger = stdout.slice(stdout.indexOf('Path to Kitchen sink, hot'));
    const left = [...ledger.matchAll(/ (-?\d+\.\d) +(\d+\.\d)$/gm)].map(([, loss, after]) => [
      Number(loss),
      Number(after),
    ]);
    const lost = left.reduce((sum, [loss]) => sum + loss!, 0);
    expect(ledger).toMatch(/^street +at the street, under demand +55\.0$/m);
    // Each figure is rounded to a tenth: half a tenth for each line.
    expect(Math.abs(55 - lost - left.at(-1)![1]!)).toBeLessThanOrEqual(0.05 * (left.length + 1));
    expect(ledger).toMatch(/^H1 +storage heater /m);
  });

  it('takes the inlet with the smaller margin of a fixture without a side', async () => {
    const { stdout } = await run(['pressure', jobFile(), '--path', 'basin']);
    expect(stdout).toContain('Path to Basin, hot');
  });

  it('tells beside the result how many values nobody could verify, and lists them', async () => {
    const { stdout } = await run(['pressure', jobFile()]);
    const [, count] = /\(rests on (\d+) values? from/.exec(stdout.replace(/\s+/g, ' '))!;
    const list = stdout.slice(stdout.indexOf('This path rests on'));
    expect(list.match(/^ {2}- /gm)).toHaveLength(Number(count));
    const told = list.replace(/\s+/g, ' ').match(/from memory, not verified|no source|no code asks for it/g);
    expect(told).toHaveLength(Number(count));
  });

  it('reads standard input for -', async () => {
    const { stdout } = await run(['new', 'From a pipe']);
    const { code, stdout: answer } = await run(['pressure', '-'], stdout);
    expect(code).toBe(0);
    expect(answer).toMatch(/^Job {7}From a pipe$/m);
  });

  it('shows figures in the units of the job', async () => {
    const { stdout } = await run(['pressure', jobFile({ units: 'si' })]);
    // 20 psi = 137.9 kPa
    expect(stdout).toContain('138 kPa needed');
    expect(stdout).not.toMatch(/\d psi (left|needed)/);
  });

  it('answers for another scheme', async () => {
    const { schemes } = JSON.parse((await run(['new'])).stdout) as { schemes: { runs: { id: string }[] }[] };
    const file = jobFile({ schemes: [schemes[0], { ...schemes[0], id: 'other', name: 'Another' }] });
    expect((await run(['pressure', file])).stdout).toContain('; --scheme other for another');
    expect((await run(['pressure', file, '--scheme', 'other'])).stdout).toMatch(
      /^Scheme {4}Another \(other\)/m,
    );
  });
});
