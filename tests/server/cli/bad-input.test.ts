import { describe, expect, it } from 'vitest';
import { starterJob } from '../../../server/cli/starter-job.ts';
import { fileOf, jobFile, run, withRuns } from './run.ts';

async function refused(args: readonly string[], stdin = ''): Promise<string> {
  const { code, stdout, stderr } = await run(args, stdin);
  expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
  expect(stderr).toMatch(/^hightap: .+\n$/);
  expect(stderr).not.toMatch(/\bat .*\.ts:\d|node:internal|Error:/);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: what a terminal would obey must not reach it
  expect(stderr).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/);
  return stderr.trimEnd();
}

describe('words that are not understood', () => {
  it.each([
    [
      [],
      'no command came; expected one of pressure, check, explain, size, compare, takeoff, sheet, riser, backup, restore, schema, new, help',
    ],
    [['presure', 'x'], 'there is no command presure; nearest: pressure'],
    [['--foo'], 'there is no option --foo; expected one of'],
    [['help', 'chek'], 'there is no command chek; nearest: check'],
    [['pressure'], 'pressure needs JOB; expected hightap pressure JOB'],
    [['explain', 'x'], 'explain needs RUN[.QUANTITY]|FIXTURE[.cold|.hot]; expected hightap explain JOB'],
    [['schema', 'x'], 'schema came with x as one word too many; expected hightap schema'],
    [['check', 'x', '--jsn'], 'check has no option --jsn; expected --scheme, --json'],
    [['schema', '--json'], 'schema has no option --json; it takes none'],
    [['check', 'x', '-j'], 'check has no option -j; expected --scheme, --json'],
    [['check', 'x', '--json=1'], '--json takes no value; expected it alone'],
    [['check', 'x', '--scheme'], '--scheme came without its value; expected --scheme ID'],
    [['check', 'x', '--scheme', '--json'], '--scheme came without its value; expected --scheme ID'],
    [['check', 'x', '--json', '--json'], '--json came twice; expected it once'],
    [['check', 'x', '--constructor'], 'check has no option --constructor'],
    [['pressure\u001b[2J'], 'there is no command pressure[2J'],
  ])('%j', async (args, sentence) => {
    expect(await refused(args)).toContain(sentence);
  });
});

describe('files that are no job', () => {
  it.each([
    ['/nowhere/at/all.json', '/nowhere/at/all.json does not exist; expected a job file'],
    ['/tmp', '/tmp is a directory; expected a job file'],
    [`${jobFile()}/x`, 'does not exist: part of its path is no directory'],
    ['/dev/zero', '/dev/zero has more than 20 MB; expected a job of at most 20 MB'],
    [`/${'x'.repeat(300)}`, 'is longer than a file name may be'],
    ['nul\u0000byte', 'nulbyte cannot be read'],
    [fileOf(''), 'the file is empty'],
    [fileOf('{"format": "hightap-job", "ver'), 'json: '],
    [fileOf('[]'), 'expected a job'],
    [fileOf({ ...starterJob, version: 99 }), '99'],
    [jobFile({ supply: { ...starterJob.supply, low: '55 ft' } }), '"55 ft" is a length; expected a pressure'],
    [fileOf(JSON.stringify(starterJob).replace('"units"', '"__proto__": {}, "units"')), '__proto__'],
    [jobFile({ name: 'a\u001b[31mb' }), 'name: '],
  ])('%s', async (file, sentence) => {
    expect(await refused(['pressure', file])).toContain(sentence);
  });

  it('counts the problems beside the first', async () => {
    const three = jobFile({ name: '', units: 'metric', chosen: '' });
    expect(await refused(['check', three])).toMatch(/json: .+; and 2 more$/);
    const fixtures = Array.from({ length: 50 }, () => ({ ...starterJob.fixtures[0], kind: 'fountain' }));
    expect(await refused(['check', jobFile({ fixtures })])).toMatch(/json: .+; and (at least )?49 more$/);
  });

  it('refuses too much on standard input', async () => {
    expect(await refused(['check', '-'], ' '.repeat(20_000_001))).toContain(
      'standard input has more than 20 MB',
    );
    expect(await refused(['check', '-'], '')).toContain('standard input: the file is empty');
  });
});

describe('jobs that make no tree', () => {
  it.each([
    [
      withRuns((one) => (one.id === 'C2' ? { ...one, from: 'C9' } : one)),
      'Run C2 comes from C9, and there is no such run.',
    ],
    [withRuns((one) => (one.id === 'C6' ? undefined : one)), 'No run ends at the cold inlet of basin'],
    [
      withRuns((one) => (one.id === 'C2' ? { ...one, line: "7 PEX 10'" } : one)),
      'Run C2: there is no 7 in. pex on file',
    ],
    [withRuns((one) => (one.id === 'H1' ? { ...one, line: "3/4 PEX 6'" } : one)), 'no heater is on its path'],
    [{ chosen: 'other' }, 'The job has no scheme other.'],
  ])('names the place: %#', async (changes, sentence) => {
    const { code, stdout, stderr } = await run(['pressure', jobFile(changes)]);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toContain(`hightap: `);
    expect(stderr).toContain(sentence);
  });

  it('tells one sentence for each defect, twenty at most', async () => {
    const fixtures = Array.from({ length: 30 }, (_, at) => ({
      ...starterJob.fixtures[3],
      id: `closet-${at}`,
    }));
    const { stderr } = await run(['check', jobFile({ fixtures: [...starterJob.fixtures, ...fixtures] })]);
    const lines = stderr.trimEnd().split('\n');
    expect(lines).toHaveLength(21);
    expect(lines[0]).toContain('closet-0');
    expect(lines.at(-1)).toBe('hightap: and 10 more');
  });
});

describe('names that are not there', () => {
  it.each([
    [['--scheme', 'tronk'], 'has no scheme tronk; nearest: trunk'],
    [['--path', 'shwer'], 'there is no fixture shwer in scheme trunk; nearest: shower'],
    [['--path', 'shower.warm'], 'there is no inlet shower.warm; expected shower.hot or shower.cold'],
    [['--path', 'closet.hot'], 'there is no inlet closet.hot; expected closet.cold'],
    [['--path', '__proto__'], 'there is no fixture __proto__ in scheme trunk; expected one of shower'],
  ])('%j', async (args, sentence) => {
    expect(await refused(['pressure', jobFile(), ...args])).toContain(sentence);
  });
});
