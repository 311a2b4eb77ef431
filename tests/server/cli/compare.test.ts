import { describe, expect, it } from 'vitest';
import { starterJob } from '../../../server/cli/starter-job.ts';
import { jobFile, run } from './run.ts';

const pascalPerPsi = 6894.757293168;
const [trunk] = starterJob.schemes;

/** The same runs under several names, the service of each second one larger. */
function schemes(count: number): object[] {
  return Array.from({ length: count }, (_, at) => ({
    id: `s${at + 1}`,
    name: `Scheme ${at + 1}`,
    runs: trunk.runs.map((one) =>
      one.id === 'S1' && at % 2 === 1 ? { ...one, line: one.line.replace('1 PE', '1-1/4 PE') } : one,
    ),
  }));
}

const jobOf = (count: number): string => jobFile({ schemes: schemes(count), chosen: 's1' });

interface CompareJson {
  schemes: {
    id: string;
    worst: { margin_Pa: number };
    price: { total: string };
    longestHotWait: { fixture: string; wait_s: number };
  }[];
  broken: { id: string; defects: string[] }[];
}

async function compareOf(...args: string[]): Promise<CompareJson> {
  return JSON.parse((await run(['compare', ...args, '--json'])).stdout) as CompareJson;
}

describe('hightap compare', () => {
  it('sets three schemes in one table and six in two', async () => {
    const three = (await run(['compare', jobOf(3)])).stdout;
    const six = (await run(['compare', jobOf(6)])).stdout;
    expect(three.match(/^Margin/gm)).toHaveLength(1);
    expect(six.match(/^Margin/gm)).toHaveLength(2);
    expect(six).toMatch(/^ +s4 +s5 +s6$/m);
    expect(six.replace(/\s+/g, ' ')).toContain('INVENTED, every figure is made up');
  });

  it('gives each scheme what the pressure command gives', async () => {
    const file = jobOf(2);
    const compared = await compareOf(file);
    for (const { id, worst } of compared.schemes) {
      const { stdout } = await run(['pressure', file, '--scheme', id, '--json']);
      expect(worst.margin_Pa).toBe((JSON.parse(stdout) as { worst: { margin_Pa: number } }).worst.margin_Pa);
    }
    const [one, other] = compared.schemes;
    // 40 ft of 1-1/4 instead of 1 in.: each end gains the friction saved, and the price rises by the pipe's.
    expect(other!.worst.margin_Pa).toBeGreaterThan(one!.worst.margin_Pa + 0.5 * pascalPerPsi);
    expect(Number(other!.price.total)).toBeGreaterThan(Number(one!.price.total));
  });

  it('takes schemes in the order asked for, and sizes each with --size', async () => {
    const file = jobOf(3);
    const drawn = await compareOf(file, '--schemes', 's2,s1');
    const sized = await compareOf(file, '--schemes', 's2,s1', '--size');
    expect(drawn.schemes.map(({ id }) => id)).toEqual(['s2', 's1']);
    // They differ in sizes alone, which sizing chooses anew: both come out the same.
    expect(sized.schemes[0]!.price).toEqual(sized.schemes[1]!.price);
    expect(Number(sized.schemes[0]!.price.total)).toBeLessThan(Number(drawn.schemes[1]!.price.total));
    for (const { worst } of sized.schemes) expect(worst.margin_Pa).toBeGreaterThanOrEqual(0);
  });

  it('tells of a scheme that makes no tree beneath the others', async () => {
    const broken = { id: 'bad', name: 'Bad', runs: trunk.runs.filter(({ id }) => id !== 'C6') };
    const file = jobFile({ schemes: [...schemes(1), broken], chosen: 's1' });
    const { code, stdout } = await run(['compare', file]);
    expect(code).toBe(0);
    expect(stdout).toMatch(/^Broken {4}bad: No run ends at the cold inlet of basin/m);
    expect((await compareOf(file)).broken.map(({ id }) => id)).toEqual(['bad']);
    expect((await run(['compare', file, '--schemes', 'bad'])).code).toBe(2);
  });

  it('says which scheme no sizes fit', async () => {
    const file = jobFile({ supply: { ...starterJob.supply, low: '22 psi' } });
    const { code, stdout } = await run(['compare', file, '--size']);
    expect(code).toBe(0);
    expect(stdout).toMatch(/^Unsized {3}no sizes fit trunk/m);
  });

  it.each([
    [['--schemes', 'trunk,trnk'], 'has no scheme trnk; nearest: trunk'],
    [['--schemes', ','], '0 schemes came; expected 1 to 6'],
  ])('refuses %j', async (args, sentence) => {
    const { code, stderr } = await run(['compare', jobFile(), ...args]);
    expect(code).toBe(2);
    expect(stderr).toContain(sentence);
  });

  it('refuses more than six', async () => {
    const names = Array.from({ length: 7 }, (_, at) => `s${at + 1}`).join(',');
    expect((await run(['compare', jobOf(7), '--schemes', names])).stderr).toContain('7 schemes came');
  });
});
