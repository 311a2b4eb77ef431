import { expect } from 'vitest';
import type { Report } from '../../engine/index.ts';

/**
 * A path worked as with pencil and tables, in US units. Nothing here comes from the rooms under test: the laws are
 * written out again with their own constants, exact definitions of units apart.
 */
export interface RunByHand {
  readonly run: string;
  /** Fixture units that the run serves. */
  readonly units: number;
  readonly gpm: number;
  readonly boreIn: number;
  /** Developed length and what the fittings are worth, ft. */
  readonly lengthFt: number;
  readonly fittingsFt: number;
  /** psi through the port of a manifold that the line leaves by. */
  readonly portPsi?: number;
  readonly riseFt?: number;
  /** psi behind the device at the end of the run from psi in front of it. */
  readonly device?: (psi: number) => number;
}

export interface Water {
  /** Hazen-Williams C of the pipe. */
  readonly c: number;
  /** psi for a foot of height. */
  readonly psiPerFt: number;
}

/** psi of a foot of water: kg/m3 x 9.80665 m/s2 x 0.3048 m, with 6894.757 Pa to the psi. */
export const columnOf = (density: number): number => (density * 9.80665 * 0.3048) / 6894.757;

/** Flow of a number of units between two rows of the demand table, by a straight line. */
export function between(x: number, [x1, y1]: readonly [number, number], [x2, y2]: readonly [number, number]) {
  return y1 + ((y2 - y1) * (x - x1)) / (x2 - x1);
}

const psi = 6894.757293168361;
const gpm = 0.003785411784 / 60;
const ft = 0.3048;

/**
 * Walks a path from the street, each run by hand, and holds every figure of the engine against it; gives back the
 * psi that is left at the end.
 *
 * Tolerance 2 in 100,000 for a run's own figures and 0.001 psi for what is left: the densities here carry five
 * figures, and the engine has nothing else to round, so that any slip in a table value, a count or a sign shows.
 */
export function walk(
  { network, solution }: Report,
  street: number,
  path: readonly (RunByHand & { readonly water: Water })[],
): number {
  const near = (got: number, hand: number, what: string): void => {
    expect(Math.abs(got - hand), `${what}: ${got}, by hand ${hand}`).toBeLessThanOrEqual(
      Math.max(Math.abs(hand) * 2e-5, 1e-9),
    );
  };
  let left = street;
  near(solution.supplyPressure / psi, street, 'street');
  let from = -1;
  for (const {
    run,
    units,
    gpm: flow,
    boreIn,
    lengthFt,
    fittingsFt,
    portPsi = 0,
    riseFt = 0,
    device,
    water,
  } of path) {
    const at = network.positionOf.get(run)!;
    expect(network.parent[at], `${run} comes from the run before it`).toBe(from);
    from = at;
    // A gallon is 231 in3, a foot 12 in: gpm over in2 of bore is ft/s by this factor.
    const ftPerS = ((231 / 12 ** 3 / 60) * flow) / ((Math.PI / 4) * (boreIn / 12) ** 2);
    const headPer100Ft = (0.2083 * (100 / water.c) ** 1.852 * flow ** 1.852) / boreIn ** 4.8655;
    const psiPer100Ft = headPer100Ft * water.psiPerFt;
    const pipe = (psiPer100Ft * lengthFt) / 100;
    const fittings = (psiPer100Ft * fittingsFt) / 100 + portPsi;
    const height = riseFt * water.psiPerFt;
    const before = left - pipe - fittings - height;
    left = device === undefined ? before : device(before);

    near(solution.units[at]!, units, `${run} units`);
    near(solution.flow[at]! / gpm, flow, `${run} gpm`);
    near(solution.velocity[at]! / ft, ftPerS, `${run} ft/s`);
    near((solution.gradient[at]! / psi) * 100 * ft, psiPer100Ft, `${run} psi/100 ft`);
    near(solution.pipeLoss[at]! / psi, pipe, `${run} pipe`);
    near(solution.fittingLoss[at]! / psi, fittings, `${run} fittings`);
    near(solution.elevationLoss[at]! / psi, height, `${run} height`);
    expect(
      Math.abs(solution.deviceLoss[at]! / psi - (before - left)),
      `${run} device, by hand ${before - left}`,
    ).toBeLessThanOrEqual(0.001);
    expect(
      Math.abs(solution.residual[at]! / psi - left),
      `${run} left ${solution.residual[at]! / psi}, by hand ${left}`,
    ).toBeLessThanOrEqual(0.001);
  }
  return left;
}
