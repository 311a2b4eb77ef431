import { describe, expect, it } from 'vitest';
import { starterJob } from '../../../server/cli/starter-job.ts';
import { exampleText } from '../../examples/open-example.ts';
import { fileOf, jobFile, run, shortOfPressure } from './run.ts';

const pascalPerPsi = 6894.757293168;

interface SizeJson {
  fits: boolean;
  drawn: { pipeAndFittings: string | null };
  least: { pipeAndFittings: string; need_Pa: number; passes: boolean } | null;
  unsized: { why: string; fixture?: string; short_Pa?: number; streetNeeded_Pa?: number } | null;
  runs: { id: string; drawn: { size: string }; least: { size: string; material: string } | null }[];
  methods: { method: string; pipeAndFittings: string; worst: { margin_Pa: number } }[];
  curve: { street_Pa: number; cost: string | null }[];
  changes: { run: string; gain_Pa: number; cost: string }[];
  missingPrices: object[];
  supply: { pressure_Pa: number };
}

async function sizeOf(file: string, ...args: string[]): Promise<SizeJson> {
  return JSON.parse((await run(['size', file, '--json', ...args])).stdout) as SizeJson;
}

const withSupply = (low: string): string => jobFile({ supply: { ...starterJob.supply, low } });

/** The shipped price book without some of its pipe. */
function bookWithout(lacks: (pipe: { material: string; size: string }) => boolean): string {
  const book = JSON.parse(exampleText('prices/invented-2026.json')) as {
    pipe: { material: string; size: string }[];
  };
  return fileOf({ ...book, pipe: book.pipe.filter((pipe) => !lacks(pipe)) });
}

describe('hightap size', () => {
  it('says what the least cost is, that prices are invented, and what is left', async () => {
    const { code, stdout } = await run(['size', jobFile()]);
    expect(code).toBe(0);
    expect(stdout.replace(/\s+/g, ' ')).toContain('INVENTED, every figure is made up');
    expect(stdout).toMatch(/^Least {5}\d+\.\d\d USD pipe and fittings/m);
    expect(stdout).toMatch(/with \d+\.\d\s+psi to spare/);
  });

  it('writes a job that passes, needs what was said, and cannot be sized for less', async () => {
    const file = jobFile();
    const { least } = await sizeOf(file);
    const { code, stdout } = await run(['size', file, '--write']);
    expect(code).toBe(0);
    const again = await sizeOf(fileOf(stdout));
    expect(again.drawn.pipeAndFittings).toBe(least!.pipeAndFittings);
    expect(again.least!.pipeAndFittings).toBe(least!.pipeAndFittings);
    expect((await run(['check', '-'], stdout)).code).toBe(0);
    // At a street that gives what it is said to need, to a hundredth of a psi, it still passes; a tenth less is short.
    const at = async (psi: number): Promise<number> => {
      const job = JSON.parse(stdout) as { supply: object };
      const low = `${psi.toFixed(3)} psi`;
      return (await run(['check', fileOf({ ...job, supply: { ...job.supply, low } })])).code;
    };
    const need = least!.need_Pa / pascalPerPsi;
    expect([await at(need + 0.01), await at(need - 0.1)]).toEqual([0, 1]);
  });

  it('lists the runs that change, and every run with --all', async () => {
    const file = jobFile();
    const { runs } = await sizeOf(file);
    const changed = runs.filter(({ drawn, least }) => drawn.size !== least!.size);
    const rows = (text: string): number =>
      text.slice(text.indexOf('ft/s\n'), text.indexOf('Beside it')).match(/^\w+ .* \d+\.\d$/gm)!.length;
    expect(rows((await run(['size', file])).stdout)).toBe(changed.length);
    expect(rows((await run(['size', file, '--all'])).stdout)).toBe(runs.length);
  });

  it('leaves the runs to keep, and costs no less for it', async () => {
    const free = await sizeOf(jobFile());
    const kept = await sizeOf(jobFile(), '--keep', 'S1,C1,H1');
    for (const { id, drawn, least } of kept.runs)
      if (['S1', 'C1', 'H1'].includes(id)) expect(least!.size).toBe(drawn.size);
    expect(Number(kept.least!.pipeAndFittings)).toBeGreaterThanOrEqual(Number(free.least!.pipeAndFittings));
  });

  it('holds each trunk to one size, and chooses among the materials asked for', async () => {
    const { runs } = await sizeOf(
      jobFile(),
      '--trunk',
      'C1,C2',
      '--trunk',
      'H2,H4',
      '--material',
      'copper-l',
    );
    const pipe = new Map(runs.map(({ id, least }) => [id, `${least!.material} ${least!.size}`]));
    expect(pipe.get('C1')).toBe(pipe.get('C2'));
    expect(pipe.get('H2')).toBe(pipe.get('H4'));
    // The stub of the expansion tank carries nothing and stays as it is drawn.
    expect(runs.filter(({ id, least }) => id !== 'T1' && least!.material !== 'copper-l')).toEqual([]);
  });

  it('tells which fixture is short, by how much and what would do, where nothing fits; exit code 1', async () => {
    const file = withSupply('22 psi');
    const { code, stdout } = await run(['size', file]);
    expect(code).toBe(1);
    expect(stdout.replace(/\s+/g, ' ')).toMatch(
      /NOTHING FITS: even with the largest pipes Shower \(shower\.hot\) is short by/,
    );
    const { fits, least, unsized } = await sizeOf(file);
    expect({ fits, least, why: unsized!.why }).toEqual({ fits: false, least: null, why: 'short' });
    // Nothing but the street can help, so what is short there is what it lacks.
    expect(unsized!.streetNeeded_Pa! / pascalPerPsi).toBeCloseTo(22 + unsized!.short_Pa! / pascalPerPsi, 6);
    const need = unsized!.streetNeeded_Pa! / pascalPerPsi;
    expect((await sizeOf(withSupply(`${(need + 0.01).toFixed(3)} psi`))).fits).toBe(true);
    expect((await sizeOf(withSupply(`${(need - 0.01).toFixed(3)} psi`))).fits).toBe(false);
  });

  it('writes no job where nothing fits', async () => {
    const { code, stdout, stderr } = await run(['size', withSupply('22 psi'), '--write']);
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toContain('nothing fits, so there is no job to write');
  });

  it('gives on its curve what it gives when the street is that', async () => {
    const { curve, supply } = await sizeOf(jobFile());
    expect(curve).toHaveLength(8);
    expect(curve.some(({ street_Pa }) => street_Pa === supply.pressure_Pa)).toBe(true);
    expect(curve.some(({ cost }) => cost !== null)).toBe(true);
    for (const { street_Pa, cost } of curve) {
      const there = await sizeOf(withSupply(`${(street_Pa / pascalPerPsi).toFixed(9)} psi`));
      expect(there.least?.pipeAndFittings ?? null).toBe(cost);
    }
  });

  it('tells the prices that a book lacks, and takes none of them as nothing', async () => {
    const lacking = bookWithout(({ material, size }) => material === 'pex' && size === '1/2');
    const { missingPrices, runs, drawn } = await sizeOf(jobFile(), '--prices', lacking);
    expect(missingPrices).toContainEqual({ item: 'pipe', material: 'pex', size: '1/2' });
    expect(runs.filter(({ least }) => least?.size === '1/2' && least.material === 'pex')).toEqual([]);
    expect(drawn.pipeAndFittings).toBeNull();
    const { stdout } = await run(['size', jobFile(), '--prices', lacking]);
    expect(stdout).toMatch(/^No price {2}1\/2 PEX SDR-9 pipe/m);
    const none = await run(['size', jobFile(), '--prices', bookWithout(({ material }) => material === 'pe')]);
    expect(none.code).toBe(1);
    expect(none.stdout.replace(/\s+/g, ' ')).toMatch(
      /NOTHING FITS: no pipe in stock with a price .* on run S1/,
    );
  });

  it.each([
    [['--keep', 'S1,C99'], 'there is no run C99 in scheme trunk; nearest:'],
    [['--trunk', 'C1'], 'trunk C1 is none; expected two or more runs'],
    [['--trunk', 'C3,C5'], 'trunk C3,C5 is none'],
    [['--material', 'lead'], 'there is no material lead; expected one or more of pex'],
    [['--prices', '/nowhere.json'], '/nowhere.json does not exist; expected a price book file'],
    [['--prices', jobFile()], 'expected "hightap-prices"'],
    [['--json', '--write'], '--json and --write both came'],
    [['--keep', 'S1', '--keep', 'C1'], '--keep came twice'],
  ])('refuses %j', async (args, sentence) => {
    const { code, stdout, stderr } = await run(['size', jobFile(), ...args]);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toContain(sentence);
  });

  it('refuses job and prices both from standard input', async () => {
    expect((await run(['size', '-', '--prices', '-'], '{}')).stderr).toContain(
      'job and prices both came as -',
    );
  });

  it('says so where the supply is short as drawn but sizes can mend it', async () => {
    const file = jobFile(shortOfPressure);
    expect((await run(['check', file])).code).toBe(1);
    const { fits, methods } = await sizeOf(file);
    expect(fits).toBe(true);
    expect(methods.map(({ method }) => method)).toEqual([
      'velocity',
      'uniform-friction',
      'segment-free-table',
    ]);
  });
});
