import type { FixtureKindId } from '../../tables/fixtures/kinds.ts';
import type { FittingKind } from '../../tables/pipe/names.ts';

/** How a fixture of a kind is usually connected. */
interface InletPractice {
  /** Inlet above the finished floor where the schedule does not say, in inches. */
  readonly height: number;
  /** The valve at its inlet. */
  readonly stop?: FittingKind;
}

/** Common practice, no source: the drawing of the fixture's maker decides. */
export const inletPractice: { readonly [kind in FixtureKindId]: InletPractice } = {
  bathtub: { height: 30 },
  'bathtub-shower': { height: 30 },
  bidet: { height: 8, stop: 'compression-stop' },
  'clothes-washer': { height: 42, stop: 'ball-valve' },
  dishwasher: { height: 20, stop: 'compression-stop' },
  'drinking-fountain': { height: 24, stop: 'compression-stop' },
  'hand-shower': { height: 42 },
  'hose-bibb': { height: 24 },
  'ice-maker': { height: 30, stop: 'compression-stop' },
  irrigation: { height: 24, stop: 'ball-valve' },
  'kitchen-sink': { height: 20, stop: 'compression-stop' },
  'laundry-tray': { height: 36, stop: 'compression-stop' },
  lavatory: { height: 20, stop: 'compression-stop' },
  'make-up': { height: 48, stop: 'ball-valve' },
  'service-sink': { height: 36, stop: 'compression-stop' },
  shower: { height: 48 },
  'urinal-flushometer': { height: 36 },
  'urinal-tank': { height: 48, stop: 'compression-stop' },
  'water-closet-flushometer': { height: 24 },
  'water-closet-flushometer-tank': { height: 8, stop: 'compression-stop' },
  'water-closet-one-piece': { height: 8, stop: 'compression-stop' },
  'water-closet-tank': { height: 8, stop: 'compression-stop' },
};
