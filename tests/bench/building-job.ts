import type { Fixture, Job, Run } from '../../engine/index.ts';
import { quantity, seeded, treeJob } from './tree-job.ts';

const kinds = ['lavatory', 'shower', 'water-closet-tank', 'kitchen-sink'] as const;

/**
 * An invented job of `size` runs shaped like a building: a service, and behind each run three to eight others, so
 * that a path grows by one run where the building grows several times. A fixture's cold inlet is on every run that
 * feeds no other. Longer pipes lie nearer the street.
 */
export function buildingJob(size: number, seed = 1): Job {
  const random = seeded(seed);
  const from: number[] = [-1];
  const depth: number[] = [0];
  for (let feeding = 0; from.length < size; feeding++) {
    const fed = Math.min(3 + Math.floor(random() * 6), size - from.length);
    for (let one = 0; one < fed; one++) {
      from.push(feeding);
      depth.push(depth[feeding]! + 1);
    }
  }
  const feeds = new Set(from);
  const deepest = depth.at(-1)!;
  const fixtures: Fixture[] = [];
  const runs: Run[] = from.map((feeding, at) => {
    const run = {
      id: `R${at}`,
      from: feeding < 0 ? 'street' : `R${feeding}`,
      size: depth[at]! < 2 ? '4' : '1',
      material: 'copper-l',
      length: quantity(3 + Math.floor((5 + random() * 20) * (1 + (deepest - depth[at]!) / 2)), 'ft'),
      rise: quantity(Math.floor(random() * 4), 'ft'),
      fittings: [
        { kind: 'ell', count: 1 + Math.floor(random() * 3) },
        { kind: 'tee-branch', count: 1 },
      ],
    } as const;
    if (feeds.has(at)) return run;
    const kind = kinds[Math.floor(random() * kinds.length)]!;
    fixtures.push({ id: `F${at}`, name: `Fixture ${at}`, kind, use: 'private', count: 1, inlets: 'cold' });
    return { ...run, end: { fixture: `F${at}`, inlet: 'cold' } } as const;
  });
  return {
    ...treeJob(1),
    name: `Invented building of ${size} runs`,
    fixtures,
    schemes: [{ id: 'tree', name: 'Tree', runs }],
  };
}
