import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { describe, expect, it, onTestFinished } from 'vitest';
import { makeCluster } from '../postgres/cluster.ts';
import { type KillFigures, killRounds } from './kill-rounds.ts';

const rounds = Number(process.env.KILL_ROUNDS ?? 300);
const seed = Number(process.env.KILL_SEED ?? 20_261_125);
const stores = (process.env.KILL_STORES ?? 'sqlite postgres').split(' ');

function tell(store: string, { rounds, acknowledged, unacknowledgedKept, starts_ms }: KillFigures): void {
  const sorted = starts_ms.toSorted((a, b) => a - b);
  const median = sorted[Math.floor(sorted.length / 2)] ?? 0;
  console.log(
    `${store}: ${rounds} kills (seed ${seed}), ${acknowledged} saves acknowledged, 0 lost, ${unacknowledgedKept} kept unacknowledged; start-up median ${median.toFixed(0)} ms, longest ${sorted.at(-1)?.toFixed(0)} ms`,
  );
}

describe('a server killed in the midst of saves', () => {
  it.runIf(stores.includes('sqlite'))('loses no acknowledged save in SQLite', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'hightap-kill-'));
    const figures = await killRounds(folder, { HIGHTAP_DATA: folder }, rounds, seed);
    tell('SQLite', figures);
    expect(figures.acknowledged).toBeGreaterThanOrEqual(rounds);
  });

  it.runIf(stores.includes('postgres'))(
    'loses none in PostgreSQL, each third time with a process of the database',
    async () => {
      const cluster = await makeCluster();
      onTestFinished(cluster.remove);
      const figures = await killRounds(
        cluster.address,
        { DATABASE_URL: cluster.address },
        rounds,
        seed,
        async (round) => {
          if (round % 3 === 2) await killBackend(cluster.address);
        },
      );
      tell('PostgreSQL', figures);
      expect(figures.acknowledged).toBeGreaterThanOrEqual(rounds);
    },
  );
});

/** Kills one process of the database that serves Hightap; PostgreSQL then ends all others and recovers from its log. */
async function killBackend(address: string): Promise<void> {
  const client = new pg.Client({ connectionString: address });
  client.on('error', () => undefined);
  await client.connect();
  const found = await client.query<{ pid: number }>(
    "select pid from pg_stat_activity where application_name = 'hightap' order by state = 'active' desc limit 1",
  );
  const pid = found.rows[0]?.pid;
  if (pid !== undefined) process.kill(pid, 'SIGKILL');
  await client.end().catch(() => undefined);
}
