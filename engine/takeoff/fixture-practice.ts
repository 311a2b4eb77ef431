import type { FixtureKindId } from '../../tables/fixtures/kinds.ts';

/**
 * How pipe ends at a fixture of a kind. Common practice, no source.
 *
 * - `valve`: at a mixing valve in the wall, with so many outlets, each by a drop-ear ell
 * - `drop-ear`: at a drop-ear ell
 * - `stub-out`: at a stub-out through the wall, with a stop and a flexible supply
 * - `flushometer`, `threaded`: at a threaded connection
 */
export type FixtureEnd =
  | { readonly end: 'valve'; readonly outlets: number }
  | { readonly end: 'drop-ear' | 'stub-out' | 'flushometer' | 'threaded' };

const stubOut: FixtureEnd = { end: 'stub-out' };

export const fixturePractice: { readonly [kind in FixtureKindId]: FixtureEnd } = {
  bathtub: { end: 'valve', outlets: 1 },
  'bathtub-shower': { end: 'valve', outlets: 2 },
  bidet: stubOut,
  'clothes-washer': stubOut,
  dishwasher: stubOut,
  'drinking-fountain': stubOut,
  'hand-shower': { end: 'valve', outlets: 1 },
  'hose-bibb': { end: 'drop-ear' },
  'ice-maker': stubOut,
  irrigation: { end: 'threaded' },
  'kitchen-sink': stubOut,
  'laundry-tray': stubOut,
  lavatory: stubOut,
  'make-up': { end: 'threaded' },
  'service-sink': stubOut,
  shower: { end: 'valve', outlets: 1 },
  'urinal-flushometer': { end: 'flushometer' },
  'urinal-tank': stubOut,
  'water-closet-flushometer': { end: 'flushometer' },
  'water-closet-flushometer-tank': stubOut,
  'water-closet-one-piece': stubOut,
  'water-closet-tank': stubOut,
};
