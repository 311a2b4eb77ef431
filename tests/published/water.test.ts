import { describe, it } from 'vitest';
import { readCurve, waterAt } from '../../engine/hydraulics/water.ts';
import { fromSI, standardGravity, toSI } from '../../tables/units/definitions.ts';
import { waterVapourPressure } from '../../tables/water/liquid-water.ts';
import { numberIn, readData } from './data/read-data.ts';
import { expectPrinted } from './expect-printed.ts';

const pound = 0.45359237;
const foot = 0.3048;
/** Temperatures that are rows of our table of water, where no straight line comes between. */
const rowsOfOurs = new Set([50, 60, 120, 140, 180]);

/**
 * The book gives water on the saturation line (IAPWS-95, by NIST), our table water at 0.4 MPa (IAPWS-IF97): 0.3 MPa of
 * pressure make it 0.014 % denser, which is allowed, besides half of the last digit. Between rows 5 K apart a straight
 * line is off by the curvature of the property: at most 0.004 % of density, 0.35 % of viscosity, 1.2 % of vapour
 * pressure, all to one side.
 */
describe('liquid water, an engineering data book after the NIST WebBook (SRD 69)', () => {
  const rows = readData('water-data-book.csv');

  it.each(rows)('density at $f F: $density_lb_ft3 lb/ft3', (row) => {
    const printed = numberIn(row, 'density_lb_ft3');
    const { density } = waterAt(toSI(numberIn(row, 'f'), 'F'));
    expectPrinted((density * foot ** 3) / pound, printed, 0.0005 + (0.00018 + 0.00004) * printed);
  });

  it.each(rows)('viscosity at $f F: $viscosity_lb_ft_s lb/(ft s)', (row) => {
    const printed = numberIn(row, 'viscosity_lb_ft_s');
    const { viscosity } = waterAt(toSI(numberIn(row, 'f'), 'F'));
    // The two viscosities come from different releases of the formulation: up to 0.05 % apart.
    const line = rowsOfOurs.has(numberIn(row, 'f')) ? 0.0006 : 0.0035;
    expectPrinted((viscosity * foot) / pound, printed, 5e-9 + line * printed);
  });

  it.each(rows)('vapour pressure at $f F: $vapour_psia psia', (row) => {
    const printed = numberIn(row, 'vapour_psia');
    const pressure = fromSI(readCurve(waterVapourPressure, toSI(numberIn(row, 'f'), 'F')), 'psi');
    const line = rowsOfOurs.has(numberIn(row, 'f')) ? 0.0003 : 0.012;
    expectPrinted(pressure, printed, 0.000005 + line * printed);
  });

  /** The same set in metric units: density kg/m3, viscosity mPa s, vapour pressure bar; all rows of our table. */
  it.each([
    { celsius: 10, density: 999.65, viscosity: 1.3056, vapour: 0.01229 },
    { celsius: 20, density: 998.16, viscosity: 1.0014, vapour: 0.023408 },
    { celsius: 40, density: 992.17, viscosity: 0.65285, vapour: 0.073889 },
    { celsius: 60, density: 983.16, viscosity: 0.46631, vapour: 0.19956 },
    { celsius: 80, density: 971.76, viscosity: 0.35429, vapour: 0.47434 },
  ])('at $celsius C', ({ celsius, density, viscosity, vapour }) => {
    const water = waterAt(toSI(celsius, 'C'));
    expectPrinted(water.density, density, 0.005 + 0.0002 * density);
    expectPrinted(water.viscosity * 1000, viscosity, 0.00005 + 0.0005 * viscosity);
    const pressure = readCurve(waterVapourPressure, toSI(celsius, 'C')) / 1e5;
    expectPrinted(pressure, vapour, 0.0000055 + 0.0008 * vapour);
  });
});

describe('pressure of a foot of water', () => {
  /** Density x g as computed from the same book’s density, four digits: psi per foot of head. */
  it.each([
    [40, 0.4335],
    [50, 0.4334],
    [60, 0.4331],
    [70, 0.4326],
    [80, 0.432],
    [90, 0.4313],
    [100, 0.4305],
    [110, 0.4296],
    [120, 0.4285],
    [130, 0.4274],
    [140, 0.4262],
    [150, 0.425],
    [160, 0.4236],
    [170, 0.4222],
    [180, 0.4207],
  ])('at %d F: %f psi/ft', (fahrenheit, printed) => {
    const { density } = waterAt(toSI(fahrenheit, 'F'));
    expectPrinted(fromSI(density * standardGravity, 'psi/ft'), printed, 0.00005 + 0.0002 * printed);
  });
});
