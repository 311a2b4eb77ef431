import { describe, expect, it } from 'vitest';
import { waterDensity, waterVapourPressure, waterViscosity } from '../../../tables/water/liquid-water.ts';
import { cell, readCsv } from '../second-reading/read-csv.ts';

const pound = 0.45359237;
const foot = 0.3048;
const psi = (pound * 9.80665) / 0.0254 ** 2;

/** Temperatures that both readings print. */
const both = readCsv('water.csv').flatMap((row) => {
  const celsius = ((cell(row, 'T_F')! - 32) * 5) / 9;
  const at = waterDensity.points.findIndex(([t]) => Math.abs(t - celsius) < 1e-4);
  return at < 0 ? [] : [{ row, at, celsius }];
});

describe('liquid water against a second reading (IAPWS-95 by way of NIST)', () => {
  it('shares six temperatures with it', () => {
    expect(both.map(({ row }) => cell(row, 'T_F'))).toEqual([50, 60, 120, 140, 180]);
  });

  it('density within 0.02 %, of which the pressure of 0.4 MPa makes nearly all', () => {
    for (const { row, at } of both) {
      const read = (cell(row, 'rho_lb_per_ft3')! * pound) / foot ** 3;
      expect(Math.abs(waterDensity.points[at]![1] / read - 1), row.T_F).toBeLessThan(0.0002);
    }
  });

  it('viscosity within 0.1 %', () => {
    for (const { row, at } of both) {
      const read = (cell(row, 'mu_lb_ft_s')! * pound) / foot;
      expect(Math.abs(waterViscosity.points[at]![1] / read - 1), row.T_F).toBeLessThan(0.001);
    }
  });

  it('vapour pressure within 0.1 %', () => {
    for (const { row, at } of both) {
      const read = cell(row, 'vapour_psia')! * psi;
      expect(Math.abs(waterVapourPressure.points[at]![1] / read - 1), row.T_F).toBeLessThan(0.001);
    }
  });

  it('has the same 24 temperatures in all three, from 1 to 95 C', () => {
    const temperatures = waterDensity.points.map(([t]) => t);
    expect(temperatures).toHaveLength(24);
    expect([temperatures[0], temperatures.at(-1)]).toEqual([1, 95]);
    for (const table of [waterViscosity, waterVapourPressure]) {
      expect(table.points.map(([t]) => t)).toEqual(temperatures);
    }
  });
});
