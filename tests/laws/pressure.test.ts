import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Job, Quantity, Run } from '../../engine/job/job.ts';
import { ledger } from '../../engine/network/ledger.ts';
import { feeds } from '../../engine/network/path.ts';
import { solve } from '../../engine/network/solve.ts';
import { report } from '../../engine/report.ts';
import { units } from '../../tables/units/definitions.ts';
import { arbitraryHouse, houseAndShuffle } from '../arbitrary/house.ts';
import { arbitraryJob } from '../arbitrary/job.ts';
import { quantity } from '../arbitrary/quantity.ts';
import { at, networkOf, q } from '../jobs/written-job.ts';

const anyJob = fc.oneof(arbitraryJob, arbitraryHouse);
const place = fc.nat({ max: 1000 });

/** The job with other runs in its only scheme. */
function withRuns(house: Job, runs: readonly Run[]): Job {
  return { ...house, schemes: [{ ...house.schemes[0]!, runs }] };
}

/** Equal to nine digits, with a floor for what is nearly nothing, Pa. */
function expectSame(one: number, other: number): void {
  expect(Math.abs(one - other)).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(one), Math.abs(other)) + 1e-6);
}

describe('residual pressure', () => {
  it('never rises when a run is made longer or climbs higher', async () => {
    await fc.assert(
      fc.property(
        arbitraryHouse,
        place,
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.boolean(),
        (house, which, metres, climbs) => {
          const { runs } = house.schemes[0]!;
          const chosen = which % runs.length;
          const changed = runs.map((run, index): Run => {
            if (index !== chosen) return run;
            const length = q(run.length.si + metres, 'm');
            return climbs
              ? { ...run, length, rise: q((run.rise?.si ?? 0) + metres, 'm') }
              : { ...run, length };
          });
          const network = networkOf(house);
          const before = solve(network);
          const after = solve(networkOf(withRuns(house, changed)));
          const position = network.positionOf.get(runs[chosen]!.id)!;
          before.residual.forEach((residual, other) => {
            expect(after.flow[other]).toBe(before.flow[other]);
            if (feeds(network, position, other))
              expect(after.residual[other]!).toBeLessThanOrEqual(residual + 1e-6);
            else expect(after.residual[other]).toBe(residual);
          });
        },
      ),
    );
  });

  it('is the street’s pressure less every line of the ledger', async () => {
    await fc.assert(
      fc.property(anyJob, place, (job, which) => {
        const network = networkOf(job);
        const solution = solve(network);
        const position = which % network.size;
        const lines = ledger(network, solution, position);
        const lost = lines.reduce((sum, { loss }) => sum + loss, 0);
        expectSame(solution.supplyPressure - lost, solution.residual[position]!);
        lines.forEach((line, index) => {
          expect(line.after).toBe(line.before - line.loss);
          expect(line.before).toBe(index === 0 ? solution.supplyPressure : lines[index - 1]!.after);
        });
      }),
    );
  });

  it('never comes to more than the static pressure', async () => {
    await fc.assert(
      fc.property(arbitraryHouse, (house) => {
        const { residual, staticPressure } = solve(networkOf(house));
        residual.forEach((left, position) => {
          expect(left).toBeLessThanOrEqual(staticPressure[position]! + 1e-6);
        });
      }),
    );
  });

  it('gains nothing in pipe, fittings or devices', async () => {
    await fc.assert(
      fc.property(anyJob, (job) => {
        const { pipeLoss, fittingLoss, deviceLoss } = solve(networkOf(job));
        for (const losses of [pipeLoss, fittingLoss, deviceLoss]) {
          // A sum of pressures may lose its last binary digits.
          expect(losses.every((loss) => loss >= -1e-6)).toBe(true);
        }
      }),
    );
  });
});

describe('a reducing valve', () => {
  it('never raises pressure, and holds what is behind it at its set pressure or under', async () => {
    await fc.assert(
      fc.property(arbitraryHouse, fc.integer({ min: 5, max: 150 }), (house, set) => {
        const { runs } = house.schemes[0]!;
        const [first, ...others] = runs;
        const valve: Run = { ...first!, end: { device: 'reducing-valve', set: q(set, 'psi') } };
        const network = networkOf(withRuns(house, [valve, ...others]));
        const solution = solve(network);
        const plain = solve(networkOf(house));
        const limit = q(set, 'psi').si;
        expect(solution.residual[0]!).toBeLessThanOrEqual(limit);
        expect(solution.staticPressure[0]!).toBeLessThanOrEqual(limit);
        plain.residual.forEach((residual, position) => {
          expect(solution.residual[position]!).toBeLessThanOrEqual(residual + 1e-6);
          expect(solution.staticPressure[position]!).toBeLessThanOrEqual(
            plain.staticPressure[position]! + 1e-6,
          );
        });
      }),
    );
  });
});

describe('a run cut in two', () => {
  it('loses what it lost in one piece', async () => {
    await fc.assert(
      fc.property(
        arbitraryHouse,
        place,
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (house, which, share) => {
          const { runs } = house.schemes[0]!;
          const chosen = runs[which % runs.length]!;
          const part = (value: number): Quantity => q(value, 'm');
          const { end, ...pipe } = chosen;
          const length = chosen.length.si;
          const rise = chosen.rise?.si ?? 0;
          const upper: Run = {
            ...pipe,
            id: 'upper',
            length: part(share * length),
            rise: part(share * rise),
            fittings: [],
          };
          const lower: Run = {
            ...chosen,
            from: 'upper',
            length: part(length - share * length),
            rise: part(rise - share * rise),
          };
          const cut = withRuns(
            house,
            runs.flatMap((run) => (run === chosen ? [upper, lower] : [run])),
          );
          const whole = networkOf(house);
          const pieces = networkOf(cut);
          const before = solve(whole);
          const after = solve(pieces);
          for (const { id } of runs) {
            expectSame(at(pieces, after.residual, id), at(whole, before.residual, id));
            expectSame(at(pieces, after.staticPressure, id), at(whole, before.staticPressure, id));
            expect(at(pieces, after.flow, id)).toBe(at(whole, before.flow, id));
          }
        },
      ),
    );
  });
});

describe('the order of runs in the file', () => {
  it('changes no figure and no finding', async () => {
    await fc.assert(
      fc.property(houseAndShuffle, ({ house, runs }) => {
        const one = report(networkOf(house));
        const other = report(networkOf(withRuns(house, runs)));
        for (const { id } of runs) {
          expectSame(
            at(one.network, one.solution.residual, id),
            at(other.network, other.solution.residual, id),
          );
          const units = at(one.network, one.solution.units, id);
          expect(at(other.network, other.solution.units, id)).toBeCloseTo(units, 6);
        }
        const codes = (findings: typeof one.findings): string[] => findings.map(({ code }) => code).sort();
        expect(codes(other.findings)).toEqual(codes(one.findings));
        expect(other.passes).toBe(one.passes);
      }),
    );
  });
});

/** Every quantity in a value, said again in the first other unit of its dimension. */
function inOtherUnits<T>(value: T, as: (quantity: Quantity) => Quantity): T {
  if (Array.isArray(value)) return value.map((each) => inOtherUnits(each, as)) as T;
  if (typeof value !== 'object' || value === null) return value;
  if ('typed' in value && 'si' in value) return as(value as unknown as Quantity) as T;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, inOtherUnits(each, as)])) as T;
}

describe('quantities typed in other units', () => {
  const other: Readonly<
    Record<string, readonly ['kPa' | 'L/min' | 'm' | 'C', 'pressure' | 'flow' | 'length' | 'temperature']>
  > = {
    psi: ['kPa', 'pressure'],
    gpm: ['L/min', 'flow'],
    ft: ['m', 'length'],
    F: ['C', 'temperature'],
  };

  it('change no figure', async () => {
    await fc.assert(
      fc.property(arbitraryHouse, (house) => {
        let count = 0;
        const again = inOtherUnits(house, (typed) => {
          const [unit, dimension] = other[typed.typed.split(' ').at(-1)!]!;
          const { factor, offset = 0 }: { factor: number; offset?: number } = units[unit];
          count++;
          const value = (typed.si - offset) / factor;
          // Plain digits: a person does not write powers of ten.
          return quantity(`${value.toFixed(12)} ${unit}`, dimension);
        });
        expect(count).toBeGreaterThan(4);
        const one = solve(networkOf(house));
        const two = solve(networkOf(again));
        one.residual.forEach((residual, position) => {
          // The straight line between rows of the water table carries the last digits of a temperature along.
          expect(Math.abs(two.residual[position]! - residual)).toBeLessThanOrEqual(
            1e-7 * Math.abs(residual) + 0.01,
          );
        });
      }),
    );
  });
});
