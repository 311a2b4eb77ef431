import { describe, expect, it } from 'vitest';
import { jobFile, run, shortOfPressure, withRuns } from './run.ts';

describe('hightap check', () => {
  it('exits 0 and says so where nothing is found', async () => {
    const { code, stdout } = await run(['check', jobFile()]);
    expect(code).toBe(0);
    expect(stdout).toMatch(/^Findings {2}none$/m);
  });

  it('exits 1 at an error, with place, rule and what to try', async () => {
    const { code, stdout } = await run(['check', jobFile(shortOfPressure)]);
    expect(code).toBe(1);
    expect(stdout).toMatch(/^Errors \(\d+\)$/m);
    const told = stdout.replace(/\s+/g, ' ');
    expect(told).toMatch(
      /Shower \(shower\) has \d+\.\d psi left at its cold inlet, run C5; it needs 20\.0 psi\./,
    );
    expect(told).toContain('Where: run C5, fixture shower');
    expect(told).toMatch(
      /Try: .* Rule: International Residential Code 2021, table P2903\.1 \(read in the document\)\./,
    );
    expect((await run(['check', jobFile(shortOfPressure), '--json'])).code).toBe(1);
  });

  it('exits 0 at a warning alone', async () => {
    // The closet's arrester is not needed, a run that serves nothing is a warning or a note.
    const [first] = JSON.parse((await run(['new'])).stdout).schemes as { runs: object[] }[];
    const runs = [...first!.runs, { id: 'X1', from: 'C1', line: "1/2 PEX 3'" }];
    const { code, stdout } = await run(['check', jobFile({ schemes: [{ ...first, runs }] })]);
    expect(code).toBe(0);
    expect(stdout).toMatch(/^(Warnings|Notes) \(\d+\)$/m);
    expect(stdout).toContain('Run X1 serves nothing');
  });

  it('names the pipe that would mend a velocity, and the velocity then', async () => {
    const thin = withRuns((one) => (one.id === 'C2' ? { ...one, line: "3/4 PEX 10' 1 tee" } : one));
    const { code, stdout } = await run(['check', jobFile(thin)]);
    expect(code).toBe(1);
    expect(stdout.replace(/\s+/g, ' ')).toMatch(/Try: In 1 in\. the water in run C2 moves at \d\.\d ft\/s\./);
  });

  it('puts errors before warnings before notes', async () => {
    const bare = withRuns((one) => ({ ...one, line: one.line.replace(' 1 ball valve', '') }));
    const { stdout } = await run(['check', jobFile({ ...shortOfPressure, ...bare })]);
    const headings = [...stdout.matchAll(/^(Errors|Warnings|Notes) \(/gm)].map(([, heading]) => heading);
    expect(headings[0]).toBe('Errors');
    expect(headings).toEqual(['Errors', 'Warnings', 'Notes'].filter((one) => headings.includes(one)));
    expect(stdout).toContain('no shut-off valve');
  });
});
