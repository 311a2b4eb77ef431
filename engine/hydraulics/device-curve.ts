import { deviceCurves, manifoldCv } from '../../tables/devices/curves.ts';
import { meterLosses } from '../../tables/devices/meters.ts';
import { backflowLoss, reducingValveFallOff } from '../../tables/devices/sized-curves.ts';
import { lookUp } from '../../tables/look-up.ts';
import type { CurveTable } from '../../tables/table.ts';
import { toSI } from '../../tables/units/definitions.ts';
import type { Device, LossPoint } from '../job/job.ts';
import { type Curve, curveOf } from './curve.ts';
import { nominalInches } from './nominal-inches.ts';
import { risingSizes } from './rising-sizes.ts';

const noLoss: Curve = { flow: new Float64Array(), loss: new Float64Array(), from: 'none' };

/** The maker's points as a curve. */
function makersCurve(points: readonly LossPoint[]): Curve {
  return {
    flow: Float64Array.from(points, (point) => point.flow.si),
    loss: Float64Array.from(points, (point) => point.loss.si),
    from: 'maker',
  };
}

/** Loss of a valve by its Cv, psi = (gpm / Cv)^2, as a curve of one point that scales with the square. */
function cvCurve(cv: number, from: Curve['from']): Curve {
  return { flow: Float64Array.of(toSI(cv, 'gpm')), loss: Float64Array.of(toSI(1, 'psi')), from };
}

/** The curve of a size; of one that is not listed, the next smaller listed, or the smallest. */
function bySize(curves: Readonly<Record<string, CurveTable>>, size: string): CurveTable {
  const sizes = risingSizes(curves);
  const listed = sizes.findLast((one) => nominalInches(one) <= nominalInches(size)) ?? sizes[0]!;
  return curves[listed]!;
}

/**
 * Loss against flow of a device: the maker's points where the job has them, else the generic curve of its kind. For
 * a reducing valve the curve is its fall-off below the set pressure.
 *
 * @param runSize nominal size of the run, which the device has where it names none
 */
export function deviceCurve(device: Device, runSize: string): Curve {
  if ('curve' in device && device.curve !== undefined) return makersCurve(device.curve);
  switch (device.device) {
    case 'meter':
      return curveOf(meterLosses[device.size]!);
    case 'reducing-valve':
      return curveOf(bySize(reducingValveFallOff, device.size ?? runSize));
    case 'backflow':
      return curveOf(
        device.type === 'dual-check-vented'
          ? deviceCurves['backflow-dual-check-vented']
          : bySize(backflowLoss[device.type], device.size ?? runSize),
      );
    case 'softener':
      return curveOf(deviceCurves.softener);
    case 'filter':
      return curveOf(deviceCurves.filter);
    case 'heater':
      return curveOf(deviceCurves[`heater-${device.type}`]);
    case 'manifold': {
      const cited = lookUp(manifoldCv, device.size, 'cv');
      return cvCurve(cited.printed, cited);
    }
    case 'mixing-valve':
      return device.cv === undefined ? curveOf(deviceCurves['mixing-valve']) : cvCurve(device.cv, 'maker');
    case 'expansion-tank':
    case 'arrester':
      return noLoss;
    case 'other':
      return makersCurve(device.curve);
  }
}
