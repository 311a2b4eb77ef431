import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const started: ChildProcess[] = [];

afterEach(() => {
  for (const child of started.splice(0)) if (child.exitCode === null) child.kill('SIGKILL');
});

function start(environment: Record<string, string>) {
  const child = spawn(process.execPath, ['--import', 'tsx', 'server/main.ts'], {
    cwd: root,
    env: { ...process.env, HIGHTAP_DATA: join(mkdtempSync(join(tmpdir(), 'main-')), 'data'), ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  started.push(child);
  let out = '';
  let problems = '';
  child.stdout.on('data', (text: Buffer) => {
    out += text.toString();
  });
  child.stderr.on('data', (text: Buffer) => {
    problems += text.toString();
  });
  const address = async (): Promise<string> => {
    for (;;) {
      const found = /http:\/\/\S+/.exec(out)?.[0];
      if (found !== undefined) return found;
      if (child.exitCode !== null) throw new Error(problems);
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  };
  return { child, address, printed: () => out, problems: () => problems };
}

describe('the server as a program', () => {
  it('says where it is, opens a worked house at once, and closes when it is told to', async () => {
    const server = start({ PORT: '0' });
    const address = await server.address();
    expect(server.printed()).toBe(`Hightap is at ${address}\n`);
    expect(new URL(address).hostname).toBe('127.0.0.1');
    const page = await fetch(address);
    expect(page.status).toBe(200);
    expect(await page.text()).toMatch(/Worst fixture.*psi/s);
    server.child.kill('SIGTERM');
    expect(await once(server.child, 'exit')).toEqual([0, null]);
    expect(server.problems()).toBe('');
  });

  it('takes the next port where the first is busy', async () => {
    const busy = createServer().listen(0, '127.0.0.1');
    await once(busy, 'listening');
    const taken = busy.address();
    if (taken === null || typeof taken === 'string') throw new Error('no port');
    const server = start({ PORT: String(taken.port) });
    expect(Number(new URL(await server.address()).port)).toBeGreaterThan(taken.port);
    busy.close();
  });

  it.each([
    [{ HOST: '0.0.0.0' }, /HOST is 0\.0\.0\.0; .*no accounts/],
    [{ HOST: '192.0.2.1' }, /this machine only/],
    [{ PORT: 'eighty' }, /PORT is eighty; a whole number/],
  ])('refuses %o in one sentence', async (environment, says) => {
    const server = start(environment);
    expect(await once(server.child, 'exit')).toEqual([2, null]);
    expect(server.problems()).toMatch(says);
    expect(server.problems().trim().split('\n')).toHaveLength(1);
  });
});
