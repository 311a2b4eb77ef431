import { describe, expect, it } from 'vitest';
import { starterJob } from '../../../server/cli/starter-job.ts';
import { exampleFiles, jobFile, run } from './run.ts';

/** Columns by a rule of its own: ideographs and pictures two, marks none. */
function columns(line: string): number {
  return [...line].reduce((sum, character) => {
    if (/^\p{M}$/u.test(character)) return sum;
    return sum + (/^[\p{Script=Han}\p{Script=Hangul}\p{Emoji_Presentation}]$/u.test(character) ? 2 : 1);
  }, 0);
}

const long = (character: string): string => character.repeat(200).slice(0, 200).trim();
const id = (letter: string): string => letter.repeat(64);

/** A job in which every name is `name`, and every id as long as may be. */
function namedJob(name: string): string {
  const { basis, supply } = starterJob;
  const fixtures = [
    {
      id: id('f'),
      name,
      kind: 'kitchen-sink',
      level: id('l'),
      room: name,
      use: 'private',
      count: 1,
      group: id('g'),
    },
  ];
  const runs = [
    { id: id('s'), from: 'street', line: "1/2 PEX 40' 1 ball valve" },
    { id: id('c'), from: id('s'), line: `1/2 PEX 200' 2 ells to ${id('f')} cold` },
    {
      id: id('o'),
      from: id('s'),
      size: '1/2',
      material: 'pex',
      length: '12 ft',
      fittings: [],
      end: { device: 'other', name, curve: [{ flow: '1 gpm', loss: '1 psi' }] },
    },
    { id: id('h'), from: id('o'), line: "1/2 PEX 6' then heater storage" },
    { id: id('i'), from: id('h'), line: `1/2 PEX 200' to ${id('f')} hot` },
    { id: id('x'), from: id('s'), line: "1/2 PEX 3'" },
  ];
  return jobFile({
    name,
    basis,
    supply: { ...supply, low: '20 psi', high: '120 psi' },
    levels: [{ id: id('l'), name, elevation: '0 ft' }],
    groups: [{ id: id('g'), name, kind: 'kitchen' }],
    fixtures,
    schemes: [
      { id: id('t'), name, runs },
      { id: id('u'), name, runs },
    ],
    chosen: id('t'),
  });
}

async function expectNarrow(args: readonly string[]): Promise<string> {
  const { code, stdout, stderr } = await run(args);
  expect({ code, stderr }).toEqual({ code: code === 1 ? 1 : 0, stderr: '' });
  for (const line of stdout.split('\n')) {
    expect(columns(line), line).toBeLessThanOrEqual(100);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: what a terminal would obey must not reach it
    expect(line).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2066-\u2069]/);
  }
  return stdout;
}

const names = {
  'one long word': long('W'),
  'many words': long('wide name '),
  ideographs: long('高'),
  pictures: long('🚿').slice(0, 200),
  'stacked marks': long('a\u0301\u0301\u0301\u0301\u0301\u0301'),
  'text that turns round': long('ab\u202e\u2066\u200b'),
  HTML: long('<script>alert(1)</script>'),
};

describe('text output fits 100 columns and moves no cursor', () => {
  it.each(Object.entries(names))('with names of %s', async (_, name) => {
    const file = namedJob(name);
    await expectNarrow(['pressure', file, '--all']);
    await expectNarrow(['pressure', file, '--path', `${id('f')}.hot`, '--scheme', id('u')]);
    const findings = await expectNarrow(['check', file]);
    expect(findings).toMatch(/^Errors \(\d+\)$/m);
    await expectNarrow(['explain', file, id('c')]);
    await expectNarrow(['explain', file, id('o')]);
    await expectNarrow(['size', file, '--all']);
    await expectNarrow(['compare', file]);
    await expectNarrow(['compare', file, '--size']);
    await expectNarrow(['explain', file, `${id('f')}.hot`]);
    await expectNarrow(['takeoff', file]);
  });

  it('for the start and every example, a third of the runs explained', async () => {
    for (const file of [jobFile(), ...exampleFiles()]) {
      await expectNarrow(['pressure', file, '--all']);
      await expectNarrow(['check', file]);
      await expectNarrow(['size', file, '--all']);
      await expectNarrow(['compare', file, '--size']);
      await expectNarrow(['takeoff', file]);
      const { runs } = JSON.parse((await run(['pressure', file, '--json'])).stdout) as {
        runs: { id: string }[];
      };
      // Every third run: service, branches, heaters and fixtures all come up.
      for (const { id: name } of runs.filter((_, at) => at % 3 === 0))
        await expectNarrow(['explain', file, name]);
    }
  });

  it.each([
    ['help'],
    ['--version'],
    ...['pressure', 'check', 'explain', 'size', 'compare', 'takeoff', 'schema', 'new'].map((name) => [
      name,
      '--help',
    ]),
  ])('for %s %s', async (...args) => {
    await expectNarrow(args.filter((word) => word !== undefined));
  });
});
