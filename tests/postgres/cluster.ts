import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { chownSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import pg from 'pg';

/** A PostgreSQL of its own in a temporary folder, on a free port of this machine. */
export interface Cluster {
  readonly address: string;
  readonly start: () => Promise<void>;
  /** `immediate` ends it as a loss of power would: its next start recovers from the log. */
  readonly stop: (how: 'fast' | 'immediate') => Promise<void>;
  readonly remove: () => Promise<void>;
}

/** Debian's package `postgresql` puts its programs here. */
const versions = '/usr/lib/postgresql';

/** PostgreSQL refuses to run as root, so then it runs as the user that Debian's package makes. */
function owner(): { uid: number; gid: number } | undefined {
  if (process.getuid?.() !== 0) return undefined;
  const id = (flag: string) => Number(execFileSync('id', [flag, 'postgres'], { encoding: 'utf8' }));
  return { uid: id('-u'), gid: id('-g') };
}

/** Makes a cluster and starts it. @throws where PostgreSQL is not installed */
export async function makeCluster(): Promise<Cluster> {
  const version = readdirSync(versions).sort((a, b) => Number(b) - Number(a))[0];
  const program = (name: string) => join(versions, version ?? '', 'bin', name);
  const as = owner();
  const folder = mkdtempSync(join(tmpdir(), 'hightap-postgres-'));
  if (as !== undefined) chownSync(folder, as.uid, as.gid);
  const data = join(folder, 'data');
  const inFolder = { ...as, cwd: folder };
  const settings = ['--auth=trust', '--username=hightap', '--encoding=UTF8', '--no-locale'];
  execFileSync(program('initdb'), ['-D', data, ...settings], { ...inFolder, stdio: 'ignore' });
  const port = await freePort();
  const address = `postgres://hightap@127.0.0.1:${port}/postgres`;
  let running: ChildProcess | undefined;

  async function start(): Promise<void> {
    const options = ['-D', data, '-k', folder, '-h', '127.0.0.1', '-p', String(port)];
    running = spawn(program('postgres'), options, { ...inFolder, stdio: 'ignore' });
    for (let tries = 0; !(await answers(address)); tries++) {
      if (tries > 300 || running.exitCode !== null) throw new Error('PostgreSQL did not start');
      await setTimeout(100);
    }
  }

  async function stop(how: 'fast' | 'immediate'): Promise<void> {
    const stopping = running;
    if (stopping === undefined) return;
    running = undefined;
    const ended = new Promise((resolve) => stopping.once('exit', resolve));
    stopping.kill(how === 'fast' ? 'SIGINT' : 'SIGQUIT');
    await ended;
  }

  async function remove(): Promise<void> {
    await stop('immediate');
    rmSync(folder, { recursive: true, force: true });
  }

  await start();
  return { address, start, stop, remove };
}

async function answers(address: string): Promise<boolean> {
  const client = new pg.Client({ connectionString: address, connectionTimeoutMillis: 1000 });
  client.on('error', () => undefined);
  try {
    await client.connect();
    await client.end();
    return true;
  } catch {
    return false;
  }
}

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  await new Promise((resolve) => server.close(resolve));
  if (address === null || typeof address === 'string') throw new Error('no port was free');
  return address.port;
}
