import { standardGravity } from '../../tables/units/definitions.ts';
import { darcyFactor } from '../hydraulics/colebrook.ts';
import { darcyWeisbach, reynolds } from '../hydraulics/darcy-weisbach.ts';
import { hazenWilliams, headGradient } from '../hydraulics/hazen-williams.ts';
import { velocity } from '../hydraulics/velocity.ts';
import type { Report } from '../network/report.ts';
import { lessAll } from './arithmetic.ts';
import { explainDevice } from './explain-device.ts';
import { explainFittings } from './explain-fittings.ts';
import { terms } from './fed-runs.ts';
import { cited, given, givenQuantity } from './leaf.ts';
import { columnOfWater, gradientOverLength, weightOfRise } from './pressure-formulas.ts';
import type { Explained } from './step.ts';
import type { Worksheet } from './worksheet.ts';

/**
 * Adds the steps from design flow to what is left at the end of one run: `velocity`, `gradient`, `pipe-loss`,
 * `fitting-loss`, `elevation-loss`, `device-loss`, `residual`, `static` and what they rest on.
 */
export function explainPressure(report: Report, at: number, sheet: Worksheet): void {
  const { network, solution } = report;
  const run = network.runs[at]!;
  const { id } = run;
  const side = network.hot[at] === 1 ? 'hot' : 'cold';
  const flow: Explained = { from: 'step', value: solution.flow[at]!, step: `${id}.flow` };
  const density: Explained = { from: 'step', value: network.density[at]!, step: `water-${side}.density` };
  const viscosity: Explained = {
    from: 'step',
    value: network.viscosity[at]!,
    step: `water-${side}.viscosity`,
  };
  const gravity = given(standardGravity, 'm/s2', 'standard gravity', '9.80665 m/s²');
  const bore = cited(network.sources.bore[at]!);
  const length = givenQuantity(run.length, 'ft', `run ${id}, length`);

  const v = sheet.apply(`${id}.velocity`, velocity, { Q: flow, d: bore });
  let gradient: Explained;
  if (network.basis.friction === 'hazen-williams') {
    const h = sheet.apply(`${id}.head`, hazenWilliams, {
      Q: flow,
      C: cited(network.sources.hazenWilliamsC[at]!),
      d: bore,
    });
    gradient = sheet.apply(`${id}.gradient`, headGradient, { h, ρ: density, g: gravity });
  } else {
    const Re = sheet.apply(`${id}.reynolds`, reynolds, { ρ: density, v, d: bore, μ: viscosity });
    const f = sheet.apply(`${id}.factor`, darcyFactor, {
      Re,
      ε: cited(network.sources.roughness[at]!),
      d: bore,
    });
    gradient = sheet.apply(`${id}.gradient`, darcyWeisbach, { f, ρ: density, v, d: bore });
  }
  const pipe = sheet.apply(`${id}.pipe-loss`, gradientOverLength, { R: gradient, L: length });
  const fittings = explainFittings(report, at, sheet, { flow, gradient, length, density, v });

  const rise =
    run.rise === undefined
      ? given(0, 'ft', `run ${id}, rise`, 'level')
      : givenQuantity(run.rise, 'ft', `run ${id}, rise`);
  const { elevationFactor } = network.basis;
  const elevation =
    elevationFactor === undefined
      ? sheet.apply(`${id}.elevation-loss`, columnOfWater, { ρ: density, g: gravity, z: rise })
      : sheet.apply(`${id}.elevation-loss`, weightOfRise, {
          w: givenQuantity(elevationFactor, 'psi/ft', 'basis, elevation factor'),
          z: rise,
        });

  const above = network.parent[at]!;
  const from = (quantity: 'residual' | 'static'): Explained => {
    if (above < 0) {
      const value = quantity === 'residual' ? solution.supplyPressure : solution.supplyStatic;
      return { from: 'step', value, step: quantity === 'residual' ? 'street.pressure' : 'street.static' };
    }
    const values = quantity === 'residual' ? solution.residual : solution.staticPressure;
    return { from: 'step', value: values[above]!, step: `${network.runs[above]!.id}.${quantity}` };
  };
  const start = above < 0 ? 'at the street' : `at the end of run ${network.runs[above]!.id}`;
  const leave = (
    quantity: 'residual' | 'static',
    title: string,
    lost: readonly [string, Explained][],
  ): Explained => {
    const placed = network.deviceAt[at]!;
    const before = placed < 0 ? quantity : `${quantity}-before-device`;
    const left = sheet.apply(
      `${id}.${before}`,
      lessAll({
        id: before,
        title,
        unit: 'psi',
        meaning: title,
        terms: [`pressure ${start}`, ...lost.map(([what]) => what)],
      }),
      terms([from(quantity), ...lost.map(([, term]) => term)]),
    );
    return placed < 0 ? left : explainDevice(report, network.devices[placed]!, sheet, quantity, left, flow);
  };
  leave('residual', 'Pressure left at the end of the run', [
    ['pipe', pipe],
    ['fittings', fittings],
    ['height', elevation],
  ]);
  leave('static', 'Static pressure at the end of the run', [['height', elevation]]);
}
