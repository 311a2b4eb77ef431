import type { InletSide, Places } from '../job/job.ts';

/** A place of a job that stands on a level. */
export type PlaceName = Exclude<keyof Places, 'risers'>;

/** Why a checked document makes no tree: facts only, every one of them, each with its place. */
export type Defect =
  | { readonly code: 'no-such-scheme'; readonly scheme: string }
  | { readonly code: 'no-runs'; readonly scheme: string }
  | { readonly code: 'run-twice'; readonly run: string }
  | { readonly code: 'run-named-street'; readonly run: string }
  | { readonly code: 'fixture-twice'; readonly fixture: string }
  | { readonly code: 'level-twice'; readonly level: string }
  | { readonly code: 'group-twice'; readonly group: string }
  | { readonly code: 'scheme-twice'; readonly scheme: string }
  | { readonly code: 'several-services'; readonly runs: readonly string[] }
  | { readonly code: 'parent-missing'; readonly run: string; readonly from: string }
  | { readonly code: 'loop'; readonly runs: readonly string[] }
  | {
      readonly code: 'unknown-size';
      readonly run: string;
      readonly size: string;
      readonly material: string;
      readonly sizes: readonly string[];
    }
  | {
      readonly code: 'unknown-device-size';
      readonly run: string;
      readonly device: string;
      readonly size: string;
      readonly sizes: readonly string[];
    }
  | {
      readonly code: 'joint-mismatch';
      readonly run: string;
      readonly joint: string;
      readonly material: string;
      readonly joints: readonly string[];
    }
  | {
      readonly code: 'rise-over-length';
      readonly run: string;
      readonly rise: number;
      readonly length: number;
    }
  | { readonly code: 'fixture-missing'; readonly run: string; readonly fixture: string }
  | {
      readonly code: 'inlet-missing';
      readonly run: string;
      readonly fixture: string;
      readonly side: InletSide;
    }
  | { readonly code: 'inlet-unserved'; readonly fixture: string; readonly side: InletSide }
  | {
      readonly code: 'inlet-served-twice';
      readonly fixture: string;
      readonly side: InletSide;
      readonly runs: readonly string[];
    }
  | { readonly code: 'hot-without-heater'; readonly run: string; readonly fixture: string }
  | { readonly code: 'cold-below-heater'; readonly run: string; readonly fixture: string }
  | { readonly code: 'run-after-end'; readonly run: string; readonly from: string }
  | { readonly code: 'level-missing'; readonly fixture: string; readonly level: string }
  | { readonly code: 'place-level-missing'; readonly place: PlaceName; readonly level: string }
  | { readonly code: 'riser-twice'; readonly riser: string }
  | { readonly code: 'group-missing'; readonly fixture: string; readonly group: string }
  | { readonly code: 'flow-test-inverted'; readonly static: number; readonly residual: number }
  | { readonly code: 'pressures-inverted'; readonly low: number; readonly high: number };

export type DefectCode = Defect['code'];
