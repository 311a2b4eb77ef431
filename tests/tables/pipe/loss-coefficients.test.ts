import { describe, expect, it } from 'vitest';
import { lookUp } from '../../../tables/look-up.ts';
import { copperTypeL } from '../../../tables/pipe/astm-b88/type-l.ts';
import { illinoisValveLengths } from '../../../tables/pipe/fitting-lengths/illinois-valves.ts';
import { serviceStopLengths } from '../../../tables/pipe/fitting-lengths/service-stops.ts';
import { lossCoefficients } from '../../../tables/pipe/loss-coefficients.ts';
import { type FittingKind, fittings } from '../../../tables/pipe/names.ts';

const k = (kind: FittingKind) => lookUp(lossCoefficients, kind, 'k').value;

describe('loss coefficients', () => {
  it('stand for every kind of fitting', () => {
    expect(Object.keys(lossCoefficients.rows).sort()).toEqual(Object.keys(fittings).sort());
    for (const kind of Object.keys(fittings) as FittingKind[]) expect(k(kind), kind).toBeGreaterThan(0);
  });

  /** K = f L / D, from the printed feet and the bore of type L copper, as the notes say. */
  it.each([
    ['compression-stop', illinoisValveLengths, '1', 0.022],
    ['corporation-stop', serviceStopLengths, '3/4', 0.0235],
    ['curb-stop', serviceStopLengths, '3/4', 0.0235],
  ] as const)('follow from the printed length: %s', (kind, table, size, friction) => {
    const feet = table.rows[size]!.values[kind]!;
    const bore = copperTypeL.rows[size]!.values.bore! / 12;
    expect(Math.abs(k(kind) - (friction * feet) / bore)).toBeLessThan(0.05);
  });

  it('lie within the 20 to 50 % by which handbooks differ of the IRC’s threaded fittings', () => {
    // IRC 2018 Table A.2.2: K 0.90, 0.42 and 1.80.
    expect(k('ell') / 0.9).toBeLessThan(1.7);
    expect(Math.abs(k('ell-45') / 0.42 - 1)).toBeLessThan(0.5);
    expect(Math.abs(k('tee-branch') / 1.8 - 1)).toBeLessThan(0.5);
  });
});
