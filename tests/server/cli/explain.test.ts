import { describe, expect, it } from 'vitest';
import { jobFile, run } from './run.ts';

const file = jobFile();
const explain = (name: string) => run(['explain', file, name]);
const flat = (text: string): string => text.replace(/\s+/g, ' ');

describe('hightap explain', () => {
  it('writes out a velocity as by hand, with where each input stands', async () => {
    const { code, stdout } = await explain('C5.velocity');
    expect(code).toBe(0);
    const told = flat(stdout);
    // 2.5 gpm = 2.5 x 3.785411784e-3 / 60 m3/s = 1.5773e-4; bore 0.475 in = 0.012065 m;
    // v = Q / (pi d2 / 4) = 1.5773e-4 / 1.14326e-4 = 1.3796 m/s = 4.5 ft/s.
    expect(told).toContain('[C5.velocity] Velocity: 4.5 ft/s (1.3796 m/s)');
    expect(told).toContain('= 0.00015773 / (π · 0.012065² / 4) = 1.3796 m/s');
    expect(told).toContain('step C5.flow');
    expect(told).toContain('0.475 in; ASTM F876/F877');
  });

  it('tells only what one figure rests on', async () => {
    const { stdout } = await explain('C5.velocity');
    expect(stdout).toContain('[C5.flow]');
    expect(stdout).not.toContain('[C5.residual]');
    expect(stdout).not.toContain('[C5.gradient]');
  });

  it('tells all steps of a run, each after those it uses', async () => {
    const { stdout } = await explain('C5');
    const ids = [...stdout.matchAll(/^\[(.+?)\]/gm)].map(([, id]) => id!);
    for (const quantity of ['units', 'flow', 'velocity', 'gradient', 'pipe-loss', 'residual', 'static']) {
      expect(ids).toContain(`C5.${quantity}`);
    }
    for (const [, user, used] of stdout.matchAll(/^\[(.+?)\][^[]*?step (C5\.[\w-]+)/gm)) {
      expect(ids.indexOf(used!)).toBeLessThan(ids.indexOf(user!));
    }
    expect(stdout).toMatch(/^Run {7}C5 from C4: 1\/2 PEX 8' up 4' 2 ells to shower cold$/m);
    expect(stdout).toContain("run C5, length: 8'");
  });

  it('tells what is left over the need at an inlet', async () => {
    const { stdout } = await explain('shower.hot');
    expect(stdout).toMatch(
      /^\[shower\.hot-margin\] What is left over the need of Shower, hot: \d+\.\d+ psi/m,
    );
    expect((await explain('shower.hot-margin')).stdout).toBe(stdout);
    expect(flat((await explain('shower')).stdout)).toContain('[shower.cold-margin]');
  });

  it('tells the street and the water', async () => {
    expect(flat((await explain('street.pressure')).stdout)).toContain('supply, low: 55 psi');
    expect(flat((await explain('water-hot.density')).stdout)).toContain('basis, hot temperature: 120 F');
  });

  it('marks beside the result what is from memory', async () => {
    const { stdout } = await explain('C2.demand');
    expect(flat(stdout)).toMatch(/what follows rests on \d+ values? from memory or common practice/);
    expect(stdout).toMatch(/from memory, not\s+verified/);
  });

  it.each([
    ['C22', 'there is no run or fixture C22 in scheme trunk; nearest: C2, '],
    ['C5.velocty', 'there is no figure C5.velocty; nearest: C5.velocity'],
    ['C5.', 'there is no run or fixture C5. in scheme trunk; nearest: C5'],
    ['shower.warm', 'there is no inlet shower.warm; expected shower.hot or shower.cold'],
    ['', 'there is no run or fixture  in scheme trunk; expected one of S1, C1, C2 and '],
  ])('refuses %j by a sentence', async (name, sentence) => {
    const { code, stdout, stderr } = await explain(name);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toContain(sentence);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
  });
});
