import { describe, expect, it } from 'vitest';
import { lossAt } from '../../../engine/hydraulics/curve.ts';
import { deviceCurve } from '../../../engine/hydraulics/device-curve.ts';
import { deviceCurves } from '../../../tables/devices/curves.ts';
import { meterLosses } from '../../../tables/devices/meters.ts';
import { fromSI, toSI } from '../../../tables/units/definitions.ts';
import { gpm, psi } from '../../jobs/written-job.ts';

const psiAt = (curve: ReturnType<typeof deviceCurve>, flow: number): number =>
  fromSI(lossAt(curve, toSI(flow, 'gpm')), 'psi');

describe('deviceCurve', () => {
  it('takes the maker’s points before the generic curve', () => {
    const curve = deviceCurve({ device: 'softener', curve: [{ flow: gpm(10), loss: psi(4) }] });
    expect(curve.from).toBe('maker');
    expect(psiAt(curve, 10)).toBeCloseTo(4, 9);
  });

  it.each([
    [{ device: 'meter', size: '3/4' }, meterLosses['3/4']],
    [{ device: 'reducing-valve', set: psi(60) }, deviceCurves['reducing-valve-fall-off']],
    [{ device: 'backflow', type: 'reduced-pressure' }, deviceCurves['backflow-reduced-pressure']],
    [{ device: 'backflow', type: 'double-check' }, deviceCurves['backflow-double-check']],
    [{ device: 'backflow', type: 'dual-check-vented' }, deviceCurves['backflow-dual-check-vented']],
    [{ device: 'softener' }, deviceCurves.softener],
    [{ device: 'filter' }, deviceCurves.filter],
    [{ device: 'heater', type: 'storage' }, deviceCurves['heater-storage']],
    [{ device: 'heater', type: 'tankless' }, deviceCurves['heater-tankless']],
    [{ device: 'mixing-valve' }, deviceCurves['mixing-valve']],
  ] as const)('$device has its printed curve', (device, table) => {
    const curve = deviceCurve(device);
    expect(curve.from).toBe(table);
    for (const [flow, loss] of table!.points) expect(psiAt(curve, flow)).toBeCloseTo(loss, 9);
  });

  it('makes (gpm / Cv)² psi of a Cv', () => {
    const curve = deviceCurve({ device: 'mixing-valve', cv: 3 });
    expect(psiAt(curve, 3)).toBeCloseTo(1, 9);
    expect(psiAt(curve, 6)).toBeCloseTo(4, 9);
    expect(psiAt(curve, 1.5)).toBeCloseTo(0.25, 9);
  });

  it('reads a manifold’s Cv by its size: 25.1 for 1 in', () => {
    expect(psiAt(deviceCurve({ device: 'manifold', size: '1', ports: 6, valved: true }), 25.1)).toBeCloseTo(
      1,
      9,
    );
  });

  it('loses nothing in a tank or an arrester', () => {
    expect(psiAt(deviceCurve({ device: 'expansion-tank' }), 10)).toBe(0);
    expect(psiAt(deviceCurve({ device: 'arrester', size: 'A' }), 10)).toBe(0);
  });
});
