import { citePoint } from '../../tables/look-up.ts';
import { pointsRead } from '../hydraulics/curve.ts';
import type { PlacedDevice } from '../network/network.ts';
import type { Report } from '../network/report.ts';
import { between, bySquare, lessAll, readOff } from './arithmetic.ts';
import { xOf } from './explain-table.ts';
import { terms } from './fed-runs.ts';
import { cited, given, givenQuantity } from './leaf.ts';
import { flowCoefficient, reducingValve } from './pressure-formulas.ts';
import type { Explained } from './step.ts';
import type { Worksheet } from './worksheet.ts';

/**
 * Adds the steps across a device: its loss at the flow, and what is left behind it as `residual` or `static`.
 *
 * @param before pressure in front of it
 */
export function explainDevice(
  report: Report,
  placed: PlacedDevice,
  sheet: Worksheet,
  quantity: 'residual' | 'static',
  before: Explained,
  flow: Explained,
): Explained {
  const { id, end } = report.network.runs[placed.run]!;
  const still = given(0, 'gpm', 'no flow', '0');
  const loss = curveLoss(id, placed, sheet, quantity === 'residual' ? flow : still, quantity);
  let after: Explained;
  if (placed.device.device === 'reducing-valve') {
    const s = givenQuantity(placed.device.set, 'psi', `run ${id}, set pressure`);
    after = sheet.apply(`${id}.${quantity}`, reducingValve, { p: before, s, f: loss });
  } else {
    const title =
      quantity === 'residual' ? 'Pressure left behind the device' : 'Static pressure behind the device';
    const what = end !== undefined && 'device' in end ? end.device : 'device';
    const formula = lessAll({
      id: 'behind-device',
      title,
      unit: 'psi',
      meaning: title,
      terms: ['pressure in front', what],
    });
    after = sheet.apply(`${id}.${quantity}`, formula, terms([before, loss]));
  }
  if (quantity === 'residual') {
    const title = 'Loss across the device';
    const formula = lessAll({
      id: 'device-loss',
      title,
      unit: 'psi',
      meaning: title,
      terms: ['in front', 'behind'],
    });
    sheet.apply(`${id}.device-loss`, formula, terms([before, after]));
  }
  return after;
}

/** The flow coefficient of a device that is given by one and not by a curve. */
function coefficientOf(run: string, { curve: { from }, device }: PlacedDevice): Explained | undefined {
  if (typeof from === 'object') return 'points' in from ? undefined : cited(from);
  if (device.device !== 'mixing-valve' || device.curve !== undefined || device.cv === undefined)
    return undefined;
  return given(device.cv, 'Cv', `run ${run}, Cv`, `${device.cv}`);
}

/** Loss read from a device's curve, or worked from its flow coefficient. */
function curveLoss(
  run: string,
  placed: PlacedDevice,
  sheet: Worksheet,
  flow: Explained,
  quantity: 'residual' | 'static',
): Explained {
  const { curve, device } = placed;
  const id = `${run}.device-curve${quantity === 'static' ? '-at-rest' : ''}`;
  const what =
    device.device === 'reducing-valve' ? 'fall-off below the set pressure' : `loss of the ${device.device}`;
  const y = { unit: 'psi', meaning: what } as const;
  const point = (at: number): { x: Explained; y: Explained } => {
    const { from } = curve;
    if (typeof from === 'object' && 'points' in from) {
      return { x: xOf(from, at), y: cited(citePoint(from, at)) };
    }
    const makers = 'curve' in device ? device.curve?.[at] : undefined;
    const field = `run ${run}, maker's curve, point ${at + 1}`;
    return {
      x: given(curve.flow[at]!, 'gpm', field, makers?.flow.typed ?? ''),
      y: given(curve.loss[at]!, 'psi', field, makers?.loss.typed ?? ''),
    };
  };
  const coefficient = coefficientOf(run, placed);
  if (coefficient !== undefined) return sheet.apply(id, flowCoefficient, { Q: flow, Cv: coefficient });
  const [first, second] = pointsRead(curve, flow.value);
  if (first === undefined)
    return sheet.apply(id, readOff('no-loss', what, 'psi', what), { y: given(0, 'psi', 'no loss', '0') });
  const low = point(first);
  if (second === undefined) {
    if (curve.flow[first] === flow.value)
      return sheet.apply(id, readOff('curve-point', what, 'psi', what), { y: low.y });
    return sheet.apply(id, bySquare('curve-square', what), { y: low.y, Q: flow, 'Q₁': low.x });
  }
  const high = point(second);
  return sheet.apply(id, between('curve', what, { unit: 'gpm', meaning: 'flow' }, y), {
    x: flow,
    'x₁': low.x,
    'y₁': low.y,
    'x₂': high.x,
    'y₂': high.y,
  });
}
