import { describe, expect, it } from 'vitest';
import { exampleFiles, jobFile, run, shortOfPressure } from './run.ts';

const pascalPerPsi = 6894.757293168;

interface InletJson {
  fixture: string;
  side: string;
  residual_Pa: number;
  required_Pa: number;
  margin_Pa: number;
  static_Pa: number;
}

interface PressureJson {
  format: string;
  passes: boolean;
  demand: { flow_m3_per_s: number; fixtureUnits: number };
  supply: { pressure_Pa: number };
  worst: InletJson;
  inlets: InletJson[];
  path: { lines: { loss_Pa: number; before_Pa: number; after_Pa: number }[]; unverified: object[] };
  runs: { id: string; residual_Pa: number }[];
  findings: { code: string; what: string; source: { document: string; verified: string } }[];
  unverified: object[];
}

async function jsonOf<T>(args: readonly string[]): Promise<T> {
  const { stdout } = await run([...args, '--json']);
  return JSON.parse(stdout) as T;
}

describe('--json', () => {
  it.each([
    ['that passes', {}],
    ['that is short', shortOfPressure],
  ])('holds the figures of the text, unrounded, for a job %s', async (_, changes) => {
    const file = jobFile(changes);
    const json = await jsonOf<PressureJson>(['pressure', file]);
    const { stdout } = await run(['pressure', file]);
    const rows = [...stdout.matchAll(/ (\w+)\.(cold|hot) +(\S+) +(\S+) +(\S+) +(\S+)(?: {2}SHORT)?$/gm)];
    expect(rows).toHaveLength(json.inlets.length);
    rows.forEach(([, fixture, side, ...figures], at) => {
      const { static_Pa, residual_Pa, required_Pa, margin_Pa, ...inlet } = json.inlets[at]!;
      expect([fixture, side]).toEqual([inlet.fixture, inlet.side]);
      const psi = [static_Pa, residual_Pa, required_Pa, margin_Pa].map((value) =>
        (value / pascalPerPsi).toFixed(1),
      );
      expect(figures.map(Number)).toEqual(psi.map(Number));
    });
    const gpm = (json.demand.flow_m3_per_s / (231 * 0.0254 ** 3)) * 60;
    expect(stdout).toContain(
      `${gpm.toFixed(1)} gpm at the service (${json.demand.fixtureUnits.toFixed(1)} WSFU)`,
    );
    expect(json.worst).toEqual(json.inlets[0]);
  });

  it('gives a path whose losses lead from the street to the residual', async () => {
    const { supply, worst, path } = await jsonOf<PressureJson>(['pressure', jobFile()]);
    const lost = path.lines.reduce((sum, { loss_Pa }) => sum + loss_Pa, 0);
    expect(supply.pressure_Pa - lost).toBeCloseTo(worst.residual_Pa, 6);
    for (const { before_Pa, loss_Pa, after_Pa } of path.lines)
      expect(before_Pa - loss_Pa).toBeCloseTo(after_Pa, 6);
  });

  it('names the document and the verification of every finding', async () => {
    const json = await jsonOf<PressureJson>(['pressure', jobFile(shortOfPressure)]);
    expect(json.findings.map(({ code }) => code)).toContain('residual-short');
    for (const { what, source } of json.findings) {
      expect(what).not.toBe('');
      expect(source.document).not.toBe('');
      expect(source.verified).not.toBe('');
    }
  });

  it('is told with the same findings by check', async () => {
    const file = jobFile(shortOfPressure);
    const pressure = await jsonOf<PressureJson>(['pressure', file]);
    const check = await jsonOf<{ passes: boolean; counts: Record<string, number>; findings: object[] }>([
      'check',
      file,
    ]);
    expect(check.findings).toHaveLength(pressure.findings.length);
    expect(check.findings).toEqual(expect.arrayContaining(pressure.findings));
    expect(check.passes).toBe(pressure.passes);
    expect(check.counts.error! + check.counts.warning! + check.counts.note!).toBe(check.findings.length);
  });

  it('gives each step of explain its value, and ends at the residual that pressure gives', async () => {
    const file = jobFile();
    const { steps } = await jsonOf<{ steps: { id: string; value_SI: number; terms: { step?: string }[] }[] }>(
      ['explain', file, 'C5'],
    );
    const { runs } = await jsonOf<PressureJson>(['pressure', file]);
    const residual = steps.find(({ id }) => id === 'C5.residual')!.value_SI;
    expect(residual).toBeCloseTo(runs.find(({ id }) => id === 'C5')!.residual_Pa, 6);
  });

  it('parses for every example', async () => {
    for (const file of exampleFiles()) {
      const json = await jsonOf<PressureJson>(['pressure', file]);
      expect(json.format).toBe('hightap-pressure');
      expect(json.inlets.length).toBeGreaterThan(0);
    }
  });
});
