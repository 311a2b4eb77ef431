import type { Fixture, Job, Quantity, Run } from '../../engine/index.ts';
import { toSI, type UnitId } from '../../tables/units/definitions.ts';

export const quantity = (value: number, unit: UnitId): Quantity => ({
  typed: `${value} ${unit}`,
  si: toSI(value, unit),
});

/** A generator of numbers from 0 to 1 that gives the same row for the same seed (Lehmer, 1951, modulus 2^31 - 1). */
export function seeded(seed: number): () => number {
  let state = (seed % 2147483646) + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

const sizes = ['1/2', '3/4', '1', '1-1/4', '2'] as const;
const kinds = ['lavatory', 'shower', 'water-closet-tank', 'kitchen-sink'] as const;

/**
 * An invented job of about `size` runs for measuring: a random tree in which each run comes from one of the last
 * few, with a fixture's cold inlet on every run that feeds no other.
 */
export function treeJob(size: number, seed = 1): Job {
  const random = seeded(seed);
  const below = new Int32Array(size);
  const from = Array.from({ length: size }, (_, at) => {
    if (at === 0) return -1;
    const parent = Math.max(0, at - 1 - Math.floor(random() * 8));
    below[parent]!++;
    return parent;
  });
  const fixtures: Fixture[] = [];
  const runs: Run[] = from.map((parent, at) => {
    const run = {
      id: `R${at}`,
      from: parent < 0 ? 'street' : `R${parent}`,
      size: parent < 0 ? '2' : sizes[Math.floor(random() * sizes.length)]!,
      material: 'pex',
      length: quantity(2 + Math.floor(random() * 30), 'ft'),
      rise: quantity(Math.floor(random() * 3) - 1, 'ft'),
      fittings: [
        { kind: 'ell', count: 1 + Math.floor(random() * 3) },
        { kind: 'tee-run', count: 1 },
      ],
    } as const;
    if (below[at]! > 0) return run;
    const fixture: Fixture = {
      id: `F${at}`,
      name: `Fixture ${at}`,
      kind: kinds[Math.floor(random() * kinds.length)]!,
      use: 'private',
      count: 1,
      inlets: 'cold',
    };
    fixtures.push(fixture);
    return { ...run, end: { fixture: fixture.id, inlet: 'cold' } } as const;
  });
  return {
    format: 'hightap-job',
    version: 2,
    name: `Invented tree of ${size} runs`,
    units: 'us',
    basis: {
      profile: 'ipc-2018',
      between: 'interpolate',
      friction: 'hazen-williams',
      coldTemperature: quantity(60, 'F'),
      hotTemperature: quantity(140, 'F'),
    },
    supply: {
      kind: 'static',
      elevation: quantity(0, 'ft'),
      low: quantity(60, 'psi'),
      high: quantity(75, 'psi'),
    },
    levels: [],
    groups: [],
    fixtures,
    schemes: [{ id: 'tree', name: 'Tree', runs }],
    chosen: 'tree',
  };
}
