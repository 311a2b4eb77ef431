import { readdirSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { answerPool } from './answers/answer-pool.ts';
import { buildApp } from './app.tsx';
import { readJob } from './document/read-job.ts';
import { isLoopbackAddress } from './http/guard.ts';
import { httpLimits } from './http/limits.ts';
import { listenOnFreePort } from './http/listen-on-free-port.ts';
import { stopInTime } from './http/stop-in-time.ts';
import type { StartingJob } from './routes/context.ts';
import { openStore, type Store, storePlace } from './storage/database.ts';
import { keepBinCleared } from './storage/keep-bin-cleared.ts';
import { seedStore } from './storage/seed-store.ts';
import { tellStoreFault } from './storage/tell-store-fault.ts';

const examples = fileURLToPath(new URL('../examples/', import.meta.url));

/** The one that a new store opens with. */
const firstExample = 'three-level-house.json';

/** The example jobs in the order of their file names; one that cannot be read is left out, and said so. */
async function readExamples(): Promise<readonly StartingJob[]> {
  const found: StartingJob[] = [];
  for (const file of readdirSync(examples)
    .filter((name) => name.endsWith('.json'))
    .sort((a, b) => Number(b === firstExample) - Number(a === firstExample) || a.localeCompare(b))) {
    const document = readFileSync(`${examples}${file}`, 'utf8');
    const read = await readJob(document);
    if (read.ok) found.push({ key: basename(file, '.json'), name: read.job.name, document });
    else console.error(`The example ${file} cannot be read: ${read.problems.join('; ')}`);
  }
  return found;
}

function stop(sentence: string): never {
  console.error(sentence);
  process.exit(2);
}

/** The store, with the examples in it where it is new. */
async function openSeeded(place: string): Promise<Store> {
  try {
    const store = await openStore(place);
    await seedStore(store, starts, new Date());
    return store;
  } catch (error) {
    const told = tellStoreFault(error, place);
    if (told === undefined) throw error;
    return stop(told);
  }
}

const host = process.env.HOST ?? '127.0.0.1';
const port = Number(process.env.PORT ?? '4400');
if (!isLoopbackAddress(host)) {
  stop(
    `HOST is ${host}; Hightap has no accounts yet, so it listens on this machine only: 127.0.0.1, ::1 or localhost.`,
  );
}
if (!Number.isInteger(port) || port < 0 || port > 65_535) {
  stop(`PORT is ${process.env.PORT}; a whole number from 0 to 65535 was expected.`);
}

const starts = await readExamples();
const place = storePlace(process.env);
const store = await openSeeded(place);
const stopClearing = keepBinCleared(store, () => new Date());
const questions = answerPool();
const app = await buildApp({ store, starts, log: 'warn', answer: questions.answer });
const address = await listenOnFreePort(app, host, port);
console.log(`Hightap is at ${address}`);

let closing = false;
async function close(): Promise<void> {
  if (closing) return;
  closing = true;
  await stopInTime(app, httpLimits.stop);
  await questions.close();
  stopClearing();
  await store.destroy();
}
process.on('SIGTERM', () => void close());
process.on('SIGINT', () => void close());
