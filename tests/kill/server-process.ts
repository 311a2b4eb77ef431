import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** A server of its own process, as `npm start` runs it. */
export interface ServerProcess {
  readonly address: string;
  /** From the start of the process to its address. */
  readonly startedIn_ms: number;
  readonly end: (signal: NodeJS.Signals) => Promise<void>;
}

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Starts a server on a free port. @throws with what it printed where it stops instead */
export async function startServer(
  environment: Readonly<Record<string, string>>,
  as: { readonly uid?: number; readonly gid?: number } = {},
): Promise<ServerProcess> {
  const begun = performance.now();
  const { HIGHTAP_DATA: _folder, DATABASE_URL: _address, ...others } = process.env;
  const child = spawn(process.execPath, ['--import', 'tsx', 'server/main.ts'], {
    cwd: root,
    env: { ...others, PORT: '0', HOST: '127.0.0.1', ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
    ...as,
  });
  const address = await addressOf(child);
  const startedIn_ms = performance.now() - begun;
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const end = async (signal: NodeJS.Signals) => {
    child.kill(signal);
    await ended;
  };
  return { address, startedIn_ms, end };
}

async function addressOf(child: ChildProcess): Promise<string> {
  return await new Promise((resolve, reject) => {
    let printed = '';
    const hear = (chunk: Buffer) => {
      printed += chunk.toString('utf8');
      const address = /Hightap is at (\S+)/.exec(printed)?.[1];
      if (address !== undefined) resolve(address);
    };
    child.stdout?.on('data', hear);
    child.stderr?.on('data', hear);
    child.once('close', (code) =>
      reject(new Error(`the server stopped with code ${code}: ${printed.trim()}`)),
    );
  });
}
