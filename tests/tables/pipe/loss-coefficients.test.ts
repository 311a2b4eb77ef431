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

  /** A second reading: an engineering data book's charts of screwed fittings, 1/2 to 4 in, good to 10 % and more. */
  it.each([
    ['ell', 0.65, 2],
    ['ell-45', 0.28, 0.37],
    ['tee-branch', 1, 2.4],
    ['gate-valve', 0.12, 0.3],
    ['check-valve', 2.1, 5],
    ['coupling', 0.04, 0.12],
    ['ball-valve', 0.1, 0.1],
  ] as const)('lie within 10 %% of the charts of a data book: %s', (kind, least, most) => {
    expect(k(kind)).toBeGreaterThanOrEqual(least * 0.9);
    expect(k(kind)).toBeLessThanOrEqual(most * 1.1);
  });

  /** A second reading: Crane's N times the fully turbulent friction factor at 2 in, 0.0188. */
  it('take the butterfly valve from N = 45', () => {
    expect(k('butterfly-valve')).toBeCloseTo(45 * 0.0188, 2);
  });

  it('print the threaded fittings of the reference page', () => {
    const page = {
      ell: 1.5,
      'ell-45': 0.4,
      'tee-run': 0.9,
      'tee-branch': 2,
      'globe-valve': 10,
      'gate-valve': 0.15,
    };
    for (const [kind, value] of Object.entries(page)) expect(k(kind as FittingKind), kind).toBe(value);
  });
});
