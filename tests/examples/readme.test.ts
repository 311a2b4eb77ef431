import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { buildNetwork, compareSchemes, hotWaits, type Job, sizeScheme } from '../../engine/index.ts';
import { fromSI } from '../../tables/units/definitions.ts';
import { shippedPrices } from '../engine/sizing/shipped-prices.ts';
import { openExample } from './open-example.ts';

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

/** Cells of the README's table of layouts, by scheme. */
function layoutRows(): Map<string, number[]> {
  const rows = [...readme.matchAll(/^\| (trunk|trunk-halves|home-run|zones) \|(.+)\|$/gm)];
  return new Map(rows.map(([, id, cells]) => [id!, cells!.split('|').map(Number)]));
}

function withScheme(job: Job, scheme: Job['schemes'][number]): Job {
  return { ...job, schemes: job.schemes.map((one) => (one.id === scheme.id ? scheme : one)) };
}

describe('the README', () => {
  it('tells the layouts of the large house as they are', async () => {
    const job = await openExample('large-house.json');
    const prices = await shippedPrices();
    const rows = layoutRows();
    const { compared } = compareSchemes(job, prices);
    expect([...rows.keys()].sort()).toEqual(compared.map(({ id }) => id).sort());
    for (const { id, price, report } of compared) {
      const [drawn, margin, least, wait] = rows.get(id)!;
      expect(price.total?.money.toNumber(), id).toBe(drawn);
      expect(report.worst?.inlet.fixture.id, id).toBe('RAIN');
      expect(fromSI(report.worst!.margin, 'psi'), id).toBeCloseTo(margin!, 1);
      const sized = sizeScheme(report.network, { prices, keep: new Set() });
      if (!sized.ok) throw new Error(`${id} cannot be sized`);
      const built = buildNetwork(withScheme(job, sized.sized.scheme), id);
      if (!built.ok) throw new Error(`${id} lost its tree`);
      const again = compareSchemes(withScheme(job, sized.sized.scheme), prices, [id]).compared[0]!;
      expect(again.price.total?.money.toNumber(), id).toBe(least);
      expect(Math.round(hotWaits(built.network)[0]!.seconds), id).toBe(wait);
    }
  });

  it('names every example', () => {
    const files = readdirSync(new URL('../../examples/', import.meta.url)).filter((file) =>
      file.endsWith('.json'),
    );
    expect(files.length).toBeGreaterThan(3);
    for (const file of files) expect(readme).toContain(`examples/${file}`);
  });
});
