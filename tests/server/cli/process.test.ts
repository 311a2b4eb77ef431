import { spawnSync } from 'node:child_process';
import { closeSync, ftruncateSync, openSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fileOf, jobFile, run, shortOfPressure } from './run.ts';

const root = new URL('../../../', import.meta.url).pathname;

function start(args: readonly string[], input = '') {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'server/cli.ts', ...args],
    {
      cwd: root,
      input,
      encoding: 'utf8',
    },
  );
  return { code: status, stdout, stderr };
}

describe('the program itself', () => {
  it('prints and exits as the function says', async () => {
    const file = jobFile(shortOfPressure);
    expect(start(['check', file])).toEqual(await run(['check', file]));
    expect(start(['pressure', 'nowhere.json'])).toEqual(await run(['pressure', 'nowhere.json']));
  });

  it('reads a job from standard input', () => {
    const { stdout } = start(['new', 'Piped']);
    expect(start(['pressure', '-'], stdout).stdout).toMatch(/^Job {7}Piped$/m);
  });

  it('refuses a 50 MB file by its size', () => {
    const path = fileOf('');
    const file = openSync(path, 'r+');
    ftruncateSync(file, 50_000_000);
    closeSync(file);
    const { code, stderr } = start(['check', path]);
    expect(code).toBe(2);
    expect(stderr).toMatch(/^hightap: .*\.json has 50\.0 MB; expected a job of at most 20 MB\n$/);
  });

  it('is quiet when its reader goes away', () => {
    const command = `${process.execPath} --import tsx server/cli.ts schema | head -1`;
    const { stdout, stderr } = spawnSync('sh', ['-c', command], { cwd: root, encoding: 'utf8' });
    expect({ stdout, stderr }).toEqual({ stdout: '{\n', stderr: '' });
  });

  it('says so when its output cannot be written', () => {
    const command = `${process.execPath} --import tsx server/cli.ts help > /dev/full`;
    const { status, stderr } = spawnSync('sh', ['-c', command], { cwd: root, encoding: 'utf8' });
    expect({ status, stderr }).toEqual({
      status: 3,
      stderr: 'hightap: the output cannot be written (ENOSPC)\n',
    });
  });
});
