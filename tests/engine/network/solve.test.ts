import { describe, expect, it } from 'vitest';
import type { Basis, Device } from '../../../engine/job/job.ts';
import { ledger } from '../../../engine/network/ledger.ts';
import { solve } from '../../../engine/network/solve.ts';
import { fromSI, toSI } from '../../../tables/units/definitions.ts';
import { at, cold, fixture, ft, gpm, hot, job, networkOf, psi, q, run } from '../../jobs/written-job.ts';

/** One closet on one pipe: 3 gpm by IPC 2018 Table 604.3 through 100 ft of 1/2 in PEX that climbs 20 ft. */
const line = (basis: Partial<Basis> = {}, end?: Device) =>
  networkOf(
    job(
      [fixture('closet', 'water-closet-tank')],
      [
        run('service', 'street', { length: ft(0), ...(end === undefined ? {} : { end }) }),
        run('line', 'service', {
          size: '1/2',
          length: ft(100),
          rise: ft(20),
          fittings: { ell: 1 },
          end: cold('closet'),
        }),
      ],
      { basis },
    ),
  );

describe('one pipe', () => {
  const network = line();
  const solution = solve(network);
  const psiAt = (values: Float64Array): number => fromSI(at(network, values, 'line'), 'psi');

  /** 0.2083 (100/150)^1.852 3^1.852 / 0.475^4.8655 = 28.14 ft per 100 ft; of water at 60 F (0.43317 psi/ft). */
  it('friction by Hazen-Williams, written out', () => {
    const head = (0.2083 * (100 / 150) ** 1.852 * 3 ** 1.852) / 0.475 ** 4.8655;
    expect(psiAt(solution.pipeLoss)).toBeCloseTo(head * 0.433166, 3);
    // A brass insert ell is worth 9.4 ft of the tube.
    expect(psiAt(solution.fittingLoss)).toBeCloseTo(0.094 * head * 0.433166, 4);
  });

  it('height: 20 ft of water at 60 F', () =>
    expect(psiAt(solution.elevationLoss)).toBeCloseTo(20 * 0.433166, 3));

  it('what is left is the street’s pressure less the three', () => {
    const lost = psiAt(solution.pipeLoss) + psiAt(solution.fittingLoss) + psiAt(solution.elevationLoss);
    expect(psiAt(solution.residual)).toBeCloseTo(60 - lost, 9);
    expect(psiAt(solution.staticPressure)).toBeCloseTo(60 - psiAt(solution.elevationLoss), 9);
  });

  it('velocity: 3 gpm in 0.475 in', () => {
    expect(fromSI(at(network, solution.velocity, 'line'), 'ft/s')).toBeCloseTo((0.40853 * 3) / 0.475 ** 2, 3);
  });

  it('the ledger has its lines in order, without those that change nothing', () => {
    const lines = ledger(network, solution, network.positionOf.get('line')!);
    expect(lines.map(({ what }) => what)).toEqual(['pipe', 'fittings', 'elevation']);
    expect(fromSI(lines[0]!.before, 'psi')).toBeCloseTo(60, 9);
    expect(lines.at(-1)!.after).toBeCloseTo(at(network, solution.residual, 'line'), 6);
  });
});

describe('the basis', () => {
  const lossOf = (basis: Partial<Basis>, what: 'pipeLoss' | 'elevationLoss'): number => {
    const network = line(basis);
    return fromSI(at(network, solve(network)[what], 'line'), 'psi');
  };

  it('takes a prescribed factor of height: 20 x 0.5', () => {
    expect(lossOf({ elevationFactor: q(0.5, 'psi/ft') }, 'elevationLoss')).toBeCloseTo(10, 9);
  });

  it('takes Darcy-Weisbach, which in this small cold pipe loses more', () => {
    const ratio = lossOf({ friction: 'darcy-weisbach' }, 'pipeLoss') / lossOf({}, 'pipeLoss');
    // Comparison of the two laws for this pipe at 3 gpm: 10.6 % (second reading of manual A’s table).
    expect(ratio).toBeCloseTo(1.106, 2);
  });
});

describe('devices', () => {
  const curve = [{ flow: gpm(3), loss: psi(7) }];
  const left = (end: Device, what: 'residual' | 'staticPressure'): number => {
    const network = line({}, end);
    return fromSI(at(network, solve(network)[what], 'service'), 'psi');
  };

  it('a loss by its curve', () => {
    expect(left({ device: 'softener', curve }, 'residual')).toBeCloseTo(53, 9);
    expect(left({ device: 'softener', curve }, 'staticPressure')).toBeCloseTo(60, 9);
  });

  it('a backflow assembly loses its springs at no flow as well', () => {
    const springs = [
      { flow: gpm(0), loss: psi(6) },
      { flow: gpm(6), loss: psi(10) },
    ];
    const end: Device = { device: 'backflow', type: 'reduced-pressure', curve: springs };
    expect(left(end, 'residual')).toBeCloseTo(52, 9);
    expect(left(end, 'staticPressure')).toBeCloseTo(54, 9);
  });

  it('a reducing valve holds its set pressure less its fall-off', () => {
    expect(left({ device: 'reducing-valve', set: psi(45), curve }, 'residual')).toBeCloseTo(38, 9);
    expect(left({ device: 'reducing-valve', set: psi(45), curve }, 'staticPressure')).toBeCloseTo(45, 9);
  });

  it('a reducing valve set above what comes in raises nothing', () => {
    expect(left({ device: 'reducing-valve', set: psi(75), curve }, 'residual')).toBeCloseTo(53, 9);
    expect(left({ device: 'reducing-valve', set: psi(75), curve }, 'staticPressure')).toBeCloseTo(60, 9);
  });
});

describe('hot water', () => {
  it('weighs less and is easier to move than cold: the same pipe on both sides of a heater', () => {
    const up = { size: '1/2', length: ft(50), rise: ft(10) };
    const network = networkOf(
      job(
        [fixture('sink', 'kitchen-sink')],
        [
          run('service', 'street', { end: { device: 'heater', type: 'storage' } }),
          run('bypass', 'street-side', { end: cold('sink'), ...up }),
          run('hot', 'service', { end: hot('sink'), ...up }),
        ]
          .map((each) => (each.id === 'service' ? { ...each, from: 'street-side' } : each))
          .concat(run('street-side', 'street')),
        { basis: { friction: 'darcy-weisbach' } },
      ),
    );
    const { pipeLoss, elevationLoss } = solve(network);
    expect(at(network, pipeLoss, 'hot')).toBeLessThan(0.9 * at(network, pipeLoss, 'bypass'));
    // Densities at 140 and 60 F: 983.34 and 999.15 kg/m3.
    expect(at(network, elevationLoss, 'hot') / at(network, elevationLoss, 'bypass')).toBeCloseTo(
      983.34078 / 999.15452,
      6,
    );
    expect(toSI(10, 'ft') * 983.34078 * 9.80665).toBeCloseTo(at(network, elevationLoss, 'hot'), 3);
  });
});

describe('solving many times', () => {
  it('may write over the arrays of an earlier solution', () => {
    const network = line();
    const once = solve(network);
    const residual = [...once.residual];
    once.flow.fill(9);
    once.residual.fill(9);
    const again = solve(network, once);
    expect([...again.residual]).toEqual(residual);
    expect(again.residual).toBe(once.residual);
  });
});
