import { describe, expect, it } from 'vitest';
import { columnOfWater, fittingLossByK } from '../../engine/explain/pressure-formulas.ts';
import { frictionFactor } from '../../engine/hydraulics/colebrook.ts';
import { darcyWeisbach, reynolds } from '../../engine/hydraulics/darcy-weisbach.ts';
import { velocity } from '../../engine/hydraulics/velocity.ts';
import { fromSI, toSI } from '../../tables/units/definitions.ts';
import { expectPrinted } from './expect-printed.ts';
import { plugIn } from './plug-in.ts';

/** University programming exercise: water from an elevated tank to a house (statement, unit values and sample run read). */
describe('elevated tank to a house', () => {
  const density = 998.2;
  const gravity = 9.80665;
  const viscosity = 0.0010016;
  const pipeLoss = (d: number, length: number, f: number, v: number): number =>
    (darcyWeisbach.compute({ f, ρ: density, v, d }) * length) / 1000;
  const byK = (K: number, v: number): number =>
    fittingLossByK.compute({ R: 0, L: 0, K, ρ: density, v }) / 1000;
  /** The exercise’s K of a reduction from D to d at a Reynolds number. */
  const reduction = (Re: number): number => (0.1 + 50 / Re) * ((0.28687 / 0.048692) ** 4 - 1);

  /** Printed to 0.001 kPa: half of the last digit. */
  it.each([
    [30.2, 295.628],
    [50, 489.45],
  ])('static pressure of %f m: %f kPa', (z, printed) => {
    expectPrinted(columnOfWater.compute({ ρ: density, g: gravity, z }) / 1000, printed, 0.0005);
  });

  it.each([
    [0.048692, 200, 0.018, 1.75, 113.008],
    [0.048692, 200, 0.018, 1.65, 100.462],
    [0.28687, 1000, 0.013, 1.65, 61.576],
    [0.28687, 1800.75, 0.013, 1.65, 110.884],
  ])('pipe %f m, %f m, f %f, %f m/s: %f kPa', (d, length, f, v, printed) => {
    expectPrinted(pipeLoss(d, length, f, v), printed, 0.0005);
  });

  it.each([
    [1.65, 2, 0.109],
    [1.75, 2, 0.122],
    [1.75, 5, 0.306],
  ])('fittings of K 0.04 at %f m/s, %d of them: %f kPa', (v, count, printed) => {
    expectPrinted(byK(0.04 * count, v), printed, 0.0005);
  });

  it.each([
    [0.048692, 1.65, 80069],
    [0.048692, 1.75, 84922],
    [0.28687, 1.65, 471729],
    [0.28687, 1.75, 500318],
  ])('Reynolds number, %f m, %f m/s: %d', (d, v, printed) => {
    expectPrinted(reynolds.compute({ ρ: density, v, d, μ: viscosity }), printed, 0.5);
  });

  it.each([
    [1.65, 471729, 163.744],
    [1.75, 500318, 184.182],
  ])('reduction at %f m/s, Re %d: %f kPa', (v, Re, printed) => {
    expectPrinted(byK(reduction(Re), v), printed, 0.0005);
  });

  /** Tower 36.6 m and three quarters of a wall of 9.1 m; the sample run prints 158.7 kPa. */
  it('leaves 158.7 kPa at the house', () => {
    const z = 36.6 + 0.75 * 9.1;
    const left =
      columnOfWater.compute({ ρ: density, g: gravity, z }) / 1000 -
      pipeLoss(0.28687, 1524, 0.013, 1.65) -
      byK(0.04 * 3, 1.65) -
      byK(reduction(471729), 1.65) -
      pipeLoss(0.048692, 15.2, 0.018, 1.75);
    expectPrinted(left, 158.7, 0.05);
  });
});

/**
 * Cengel and Cimbala, Fluid Mechanics, Example 8-9 (inputs read; flows of part b read, printed to 0.01 L/s; part a from
 * memory): a shower and a toilet on one branch, 200 kPa gauge at its start. With the printed flows the losses must use
 * up the 200 kPa. Half of the last digit of 0.42 is 1.2 %, which counts twice in the loss: 2.4 % of what goes with flow.
 */
describe('shower and toilet on one branch', () => {
  const water = { density: 998, viscosity: 1.002e-3, gravity: 9.81 };
  const pipe = { bore: 0.015, roughness: 1.5e-6 };
  const litres = (value: number): number => value / 1000;
  const common = (flow: number) => ({ id: 'common', from: 'street', flow, length: 5, ...pipe });
  const shower = (flow: number) => ({
    id: 'shower',
    from: 'common',
    flow,
    length: 6,
    k: 24.7,
    rise: 2,
    ...pipe,
  });

  it('shower with the toilet flushing: 0.42 and 0.48 L/s', () => {
    const toilet = { id: 'toilet', from: 'common', flow: litres(0.48), length: 1, k: 26.9, rise: 1, ...pipe };
    const { solution, at } = plugIn(
      [common(litres(0.9)), shower(litres(0.42)), toilet],
      200e3,
      'darcy-weisbach',
      water,
    );
    expectPrinted(solution.residual[at('shower')]!, 0, 0.024 * 180e3);
    expectPrinted(solution.residual[at('toilet')]!, 0, 0.021 * 190e3);
  });

  it('shower alone: 0.53 L/s (from memory)', () => {
    const flow = litres(0.53);
    const { solution, at } = plugIn([common(flow), shower(flow)], 200e3, 'darcy-weisbach', water);
    expectPrinted(solution.residual[at('shower')]!, 0, 0.019 * 180e3);
  });
});

/**
 * Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, Example 8.8 (from memory, not verified): 12 gpm through
 * 60 ft of copper of 0.0625 ft with 20 ft of rise to a faucet of 0.50 in. 0.1 psi: three digits, and a friction factor
 * that the book rounds to 0.0215.
 */
describe('pipe to a faucet upstairs (from memory)', () => {
  const density = 1.94 * 515.378818;
  const viscosity = 2.34e-5 * 47.8802589;
  const d = toSI(0.0625, 'ft');
  const flow = toSI(12, 'gpm');
  const v = velocity.compute({ Q: flow, d });
  const faucet = velocity.compute({ Q: flow, d: toSI(0.5, 'in') });
  const kinetic = (density * (faucet * faucet - v * v)) / 2;
  const height = density * toSI(32.2, 'ft') * toSI(20, 'ft');
  const Re = reynolds.compute({ ρ: density, v, d, μ: viscosity });
  const f = frictionFactor(Re, 5e-6 / 0.0625);
  const major = darcyWeisbach.compute({ f, ρ: density, v, d }) * toSI(60, 'ft');
  const minor = fittingLossByK.compute({ R: 0, L: 0, K: 18, ρ: density, v });

  it.each([
    ['without losses', kinetic + height, 10.7],
    ['with friction', kinetic + height + major, 21.3],
    ['with fittings', kinetic + height + major + minor, 30.5],
  ])('inlet pressure %s', (_, pascals, printed) => {
    expectPrinted(fromSI(pascals, 'psi'), printed, 0.1);
  });

  it('velocities 8.70 and 19.6 ft/s, Re 45 000', () => {
    expectPrinted(fromSI(v, 'ft/s'), 8.7, 0.02);
    expectPrinted(fromSI(faucet, 'ft/s'), 19.6, 0.05);
    expectPrinted(Re, 45000, 500);
  });
});

/** A technical paper on flow of fluids, TP-410, solved problems; answers as quoted in an open-source library’s notebook. */
describe('problems of TP-410', () => {
  /** 200 L/min of water at 30 C in a smooth pipe of 52.5 mm: Re printed to 100600, f to 0.0179. Water of its own: 0.5 %. */
  it('7.1: Reynolds number and friction factor', () => {
    const v = velocity.compute({ Q: toSI(200, 'L/min'), d: 0.0525 });
    const Re = reynolds.compute({ ρ: 995.6, v, d: 0.0525, μ: 0.0007972 });
    expectPrinted(Re, 100600, 0.005 * 100600);
    expectPrinted(frictionFactor(Re, 0), 0.0179, 0.0001);
  });

  /**
   * 1500 L/min of water at 15 C, 34 m of 4 in and 67 m of 5 in steel (102.26 and 128.19 mm), two ells of K 14 fT each
   * (their fT 0.0162), 22 m of rise: 2.6 bar, two digits.
   */
  it('7.14: pressure to lift and drive 1500 L/min', () => {
    const flow = toSI(1500, 'L/min');
    const water = { density: 999.1, viscosity: 0.001138, gravity: 9.80665 };
    const steel = { flow, roughness: 4.57e-5 };
    const { solution, at } = plugIn(
      [
        { id: 'five', from: 'street', length: 67, bore: 0.12819, ...steel },
        { id: 'four', from: 'five', length: 34, bore: 0.10226, rise: 22, k: 2 * 14 * 0.0162, ...steel },
      ],
      400e3,
      'darcy-weisbach',
      water,
    );
    expectPrinted((400e3 - solution.residual[at('four')]!) / 1e5, 2.6, 0.05);
    expectPrinted(solution.velocity[at('four')]!, 3.04, 0.005);
    expectPrinted(solution.velocity[at('five')]!, 1.94, 0.005);
  });
});

/**
 * Water-treatment education article on pressure in a house with a well and a softener: leg A-B at 4 gpm, read. Feet of
 * equivalent length as printed, 3.0 psi per 100 ft, 0.433 psi/ft, a softener of 6.0 psi at 4.0 gpm.
 */
describe('well house with a softener, leg A-B', () => {
  const gpm4 = toSI(4, 'gpm');
  const fittings = 1.2 + 3 * 2.1 + 3 * 4.2 + 2 * 23.1 + 0.9;
  const { solution, at } = plugIn(
    [
      {
        id: 'A-B',
        from: 'street',
        flow: gpm4,
        length: toSI(20, 'ft'),
        fittings: toSI(fittings, 'ft'),
        gradient: toSI(3, 'psi/100ft'),
        rise: toSI(6, 'ft'),
        device: {
          device: 'softener',
          curve: [{ flow: { typed: '4 gpm', si: gpm4 }, loss: { typed: '6 psi', si: toSI(6, 'psi') } }],
        },
      },
    ],
    toSI(40, 'psi'),
    'hazen-williams',
    { density: toSI(0.433, 'psi/ft') / 9.80665, viscosity: 0.00112, gravity: 9.80665 },
  );
  const psiOf = (values: Float64Array): number => fromSI(values[at('A-B')]!, 'psi');

  it('87.2 ft in all', () => expect(20 + fittings).toBeCloseTo(87.2, 9));
  it('2.6 psi of friction', () => {
    expectPrinted(psiOf(solution.pipeLoss) + psiOf(solution.fittingLoss), 2.6, 0.05);
  });
  it('2.6 psi of height', () => expectPrinted(psiOf(solution.elevationLoss), 2.6, 0.05));
  it('6.0 psi of softener', () => expectPrinted(psiOf(solution.deviceLoss), 6, 1e-9));
  it('11.2 psi from A to B', () => expectPrinted(40 - psiOf(solution.residual), 11.2, 0.05));
});
