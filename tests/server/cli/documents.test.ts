import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { run } from './run.ts';

describe('hightap new', () => {
  it('prints a job that computes and breaks no rule', async () => {
    const { code, stdout } = await run(['new']);
    expect(code).toBe(0);
    expect((await run(['check', '-'], stdout)).code).toBe(0);
  });

  it('says that the building is invented', async () => {
    expect(JSON.parse((await run(['new'])).stdout).note).toContain('invented');
  });

  it('takes a name, whatever is in it', async () => {
    const name = '<b>"Fünf" \\ 家</b>';
    const { stdout } = await run(['new', name]);
    expect(JSON.parse(stdout).name).toBe(name);
  });

  it('escapes what would steer a terminal', async () => {
    const { stdout } = await run(['new', 'a\u202eb']);
    expect(stdout).toContain('a\\u202eb');
    expect(JSON.parse(stdout).name).toBe('a\u202eb');
  });

  it.each(['', 'x'.repeat(201), 'a\u0007b'])('refuses the name %j in one sentence', async (name) => {
    const { code, stderr } = await run(['new', name]);
    expect(code).toBe(2);
    expect(stderr).toMatch(/^hightap: name: .* came; expected .*\n$/);
  });
});

describe('hightap schema', () => {
  it('prints a JSON Schema that names the fields of a job', async () => {
    const { code, stdout } = await run(['schema']);
    const schema = JSON.parse(stdout) as { $schema: string; properties: object; required: string[] };
    expect(code).toBe(0);
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    const { note: _, ...required } = JSON.parse((await run(['new'])).stdout);
    expect([...schema.required].sort()).toEqual(Object.keys(required).sort());
  });
});

describe('help', () => {
  it.each([['help'], ['--help'], ['-h']])('%s lists every command', async (word) => {
    const { code, stdout } = await run([word]);
    expect(code).toBe(0);
    for (const name of ['pressure', 'check', 'explain', 'size', 'compare', 'schema', 'new', 'help']) {
      expect(stdout).toMatch(new RegExp(`^  ${name} `, 'm'));
    }
    expect(stdout.replace(/\s+/g, ' ')).toContain(
      'The local code, its inspector and the licensed plumber decide.',
    );
  });

  it.each(['pressure', 'check', 'explain', 'size', 'compare', 'schema', 'new', 'help'])(
    '%s --help is its help',
    async (name) => {
      const asked = await run([name, '--help']);
      expect(asked).toEqual(await run(['help', name]));
      expect(asked.stdout).toMatch(new RegExp(`^Usage: hightap ${name}`));
    },
  );

  it('comes before any complaint about the other words', async () => {
    expect((await run(['pressure', 'nowhere.json', '--help'])).code).toBe(0);
  });

  it('documents the keys that JSON has', async () => {
    const { stdout: file } = await run(['new']);
    for (const name of ['pressure', 'check', 'size', 'compare']) {
      const told = (await run(['help', name])).stdout;
      const json = JSON.parse((await run([name, '-', '--json'], file)).stdout) as object;
      const keys = Object.keys(json).filter((key) => key !== 'format' && key !== 'version');
      for (const key of keys) expect(told).toMatch(new RegExp(`\\b${key}\\b`));
    }
  });
});

describe('--version', () => {
  it('is that of the package', async () => {
    const manifest = JSON.parse(readFileSync(new URL('../../../package.json', import.meta.url), 'utf8'));
    expect((await run(['--version'])).stdout).toBe(`hightap ${manifest.version}\n`);
  });
});
