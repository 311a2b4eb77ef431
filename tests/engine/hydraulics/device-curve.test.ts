import { describe, expect, it } from 'vitest';
import { lossAt } from '../../../engine/hydraulics/curve.ts';
import { deviceCurve } from '../../../engine/hydraulics/device-curve.ts';
import { deviceCurves } from '../../../tables/devices/curves.ts';
import { meterLosses } from '../../../tables/devices/meters.ts';
import { backflowLoss, reducingValveFallOff } from '../../../tables/devices/sized-curves.ts';
import { fromSI, toSI } from '../../../tables/units/definitions.ts';
import { gpm, psi } from '../../jobs/written-job.ts';

const psiAt = (curve: ReturnType<typeof deviceCurve>, flow: number): number =>
  fromSI(lossAt(curve, toSI(flow, 'gpm')), 'psi');

describe('deviceCurve', () => {
  it('takes the maker’s points before the generic curve', () => {
    const curve = deviceCurve({ device: 'softener', curve: [{ flow: gpm(10), loss: psi(4) }] }, '1');
    expect(curve.from).toBe('maker');
    expect(psiAt(curve, 10)).toBeCloseTo(4, 9);
  });

  it.each([
    [{ device: 'meter', size: '3/4' }, meterLosses['3/4']],
    [{ device: 'reducing-valve', set: psi(60) }, reducingValveFallOff['1-1/4']],
    [{ device: 'reducing-valve', size: '3/4', set: psi(60) }, reducingValveFallOff['3/4']],
    [{ device: 'backflow', type: 'reduced-pressure' }, backflowLoss['reduced-pressure']['1-1/4']],
    [{ device: 'backflow', type: 'reduced-pressure', size: '1' }, backflowLoss['reduced-pressure']['1']],
    [{ device: 'backflow', type: 'double-check' }, backflowLoss['double-check']['1-1/4']],
    [{ device: 'backflow', type: 'dual-check-vented' }, deviceCurves['backflow-dual-check-vented']],
    [{ device: 'softener' }, deviceCurves.softener],
    [{ device: 'filter' }, deviceCurves.filter],
    [{ device: 'heater', type: 'storage' }, deviceCurves['heater-storage']],
    [{ device: 'heater', type: 'tankless' }, deviceCurves['heater-tankless']],
    [{ device: 'mixing-valve' }, deviceCurves['mixing-valve']],
  ] as const)('$device has its printed curve, that of its own size or of a 1-1/4 in run', (device, table) => {
    const curve = deviceCurve(device, '1-1/4');
    expect(curve.from).toBe(table);
    for (const [flow, loss] of table!.points) expect(psiAt(curve, flow)).toBeCloseTo(loss, 9);
  });

  it.each([
    ['5/8', '1/2'],
    ['2-1/2', '2'],
    ['4', '2'],
    ['3/8', '1/2'],
  ])('takes a reducing valve of %s in as the listed %s in', (size, listed) => {
    const curve = deviceCurve({ device: 'reducing-valve', set: psi(60) }, size);
    expect(curve.from).toBe(reducingValveFallOff[listed]);
  });

  it('makes (gpm / Cv)² psi of a Cv', () => {
    const curve = deviceCurve({ device: 'mixing-valve', cv: 3 }, '1');
    expect(psiAt(curve, 3)).toBeCloseTo(1, 9);
    expect(psiAt(curve, 6)).toBeCloseTo(4, 9);
    expect(psiAt(curve, 1.5)).toBeCloseTo(0.25, 9);
  });

  it('reads a manifold’s Cv by its size: 25.1 for 1 in', () => {
    expect(
      psiAt(deviceCurve({ device: 'manifold', size: '1', ports: 6, valved: true }, '1-1/4'), 25.1),
    ).toBeCloseTo(1, 9);
  });

  it('loses nothing in a tank or an arrester', () => {
    expect(psiAt(deviceCurve({ device: 'expansion-tank' }, '1'), 10)).toBe(0);
    expect(psiAt(deviceCurve({ device: 'arrester', size: 'A' }, '1'), 10)).toBe(0);
  });
});
