import type { UnitsAndCurve } from '../demand/methods.ts';
import { loadingCurve } from './loading-curve.ts';
import { loadingRows } from './loading-rows.ts';
import { loadingUnits } from './loading-units.ts';

/** Loading units and what they come to: stepped, as the standard's tables of pipes are. */
export const en8063: UnitsAndCurve = {
  units: loadingUnits,
  rows: loadingRows,
  curve: loadingCurve,
  roundUp: true,
};
