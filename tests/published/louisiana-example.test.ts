import { describe, expect, it } from 'vitest';
import type { Device } from '../../engine/job/job.ts';
import { ledger } from '../../engine/network/ledger.ts';
import { solve } from '../../engine/network/solve.ts';
import { fromSI } from '../../tables/units/definitions.ts';
import { at, cold, fixture, ft, gpm, hot, job, networkOf, psi, q, run } from '../jobs/written-job.ts';
import { apart, expectPrinted } from './expect-printed.ts';
import { knownFlows } from './plug-in.ts';

/**
 * Louisiana Administrative Code 51:XIV.1805, Table 1805.A (read, to section DE): a two-story factory with back-to-back
 * toilet rooms on each floor, type L copper of 2-1/2 in, 55 psi at the main. The setting (what stands in the rooms, the
 * 21 ft of rise) is from memory; every figure below is from the table.
 */
const table = {
  main: 55,
  fixture: 15,
  meter: 11,
  tap: 1.61,
  staticHead: 9.03,
  backflow: 9,
  total: 45.64,
  available: 9.36,
  average: 4.16,
} as const;

const sections = [
  { id: 'AB', units: 288, gpm: 108, length: 54, fittings: 12, hundreds: 0.66, gradient: 3.6, loss: 2.38 },
  { id: 'BC', units: 264, gpm: 104.5, length: 8, fittings: 2.5, hundreds: 0.105, gradient: 3.2, loss: 0.34 },
  { id: 'CD', units: 132, gpm: 77, length: 13, fittings: 8, hundreds: 0.21, gradient: 1.9, loss: 0.4 },
  { id: 'CF', units: 132, gpm: 77, length: 150, fittings: 12, hundreds: 1.62, gradient: 1.9, loss: 3.08 },
  { id: 'DE', units: 132, gpm: 77, length: 150, fittings: 14.5, hundreds: 1.645, gradient: 1.9, loss: 3.12 },
] as const;
const printedOf = (id: string) => sections.find((section) => section.id === id)!;

/** A device that loses so much at the printed flow. */
const loses = (name: string, flow: number, loss: number): Device => ({
  device: 'other',
  name,
  curve: [{ flow: gpm(flow), loss: psi(loss) }],
});
const none = ft(0);

/**
 * The same as a network. The fittings are such as sum to the printed feet by our table of copper fittings (12 ft: a tee
 * to the side; 2.5: a 45 degree ell; 8: an ell and a gate valve; 14.5: a tee and a 45 degree ell). Twelve flushometer
 * closets (10 units each) and eight public lavatories (1.5 cold) make the 132 units of a floor; lavatories with both
 * inlets need a heater, whose branch leaves at B.
 */
const section = (id: string, from: string, fittings: Parameters<typeof run>[2]) => {
  const { length } = printedOf(id);
  return run(id, from, { size: '2-1/2', material: 'copper-l', length: ft(length), ...fittings });
};
const pipe = { size: '2-1/2', material: 'copper-l', length: none } as const;
const factory = job(
  ['F', 'E'].flatMap((floor) => [
    fixture(`closets-${floor}`, 'water-closet-flushometer', {
      use: 'public',
      count: 12,
      flow: gpm(0.1),
      pressure: psi(15),
    }),
    fixture(`lavatories-${floor}`, 'lavatory', {
      use: 'public',
      count: 8,
      flow: gpm(0.1),
      pressure: psi(8),
    }),
  ]),
  [
    run('tap', 'street', { ...pipe, end: loses('tap in the main', 108, table.tap) }),
    run('meter', 'tap', { ...pipe, end: loses('meter', 108, table.meter) }),
    run('backflow', 'meter', { ...pipe, end: loses('backflow preventer', 108, table.backflow) }),
    section('AB', 'backflow', { fittings: { 'tee-branch': 1 } }),
    section('BC', 'AB', { fittings: { 'ell-45': 1 } }),
    section('CD', 'BC', { rise: ft(13), fittings: { ell: 1, 'gate-valve': 1 } }),
    section('CF', 'BC', { fittings: { 'tee-branch': 1 } }),
    section('DE', 'CD', { rise: ft(8), fittings: { 'tee-branch': 1, 'ell-45': 1 } }),
    run('heater', 'AB', { ...pipe, end: { device: 'heater', type: 'storage' } }),
    ...[
      ['F', 'CF'],
      ['E', 'DE'],
    ].flatMap(([floor, from]) => [
      run(`closets-${floor}`, from!, { ...pipe, end: cold(`closets-${floor}`) }),
      run(`lavatories-${floor}`, from!, { ...pipe, end: cold(`lavatories-${floor}`) }),
      run(`hot-${floor}`, 'heater', { ...pipe, end: hot(`lavatories-${floor}`) }),
    ]),
  ],
  {
    basis: { between: 'round-up', elevationFactor: q(0.43, 'psi/ft') },
    supply: { kind: 'static', elevation: none, low: psi(table.main), high: psi(table.main) },
  },
);
const network = networkOf(factory);

describe('Louisiana Administrative Code, Table 1805.A: demand', () => {
  const solution = solve(network);

  it.each(sections.filter(({ id }) => id !== 'AB'))(
    '$id: $units units, $gpm gpm',
    ({ id, units, gpm: flow }) => {
      expectPrinted(at(network, solution.units, id), units, 1e-9);
      expectPrinted(fromSI(at(network, solution.flow, id), 'gpm'), flow, 1e-9);
    },
  );
});

describe('Louisiana Administrative Code, Table 1805.A: friction and pressure', () => {
  /** Flows as printed: what the main carries is a disagreement of its own. */
  const flow = Float64Array.from(network.runs, ({ id }, position) => {
    const known = sections.find((each) => each.id === id);
    if (known !== undefined) return gpm(known.gpm).si;
    return position < network.positionOf.get('AB')! ? gpm(108).si : 0;
  });
  const solution = solve({ ...network, served: knownFlows(flow) });

  it.each(sections)('$id: $fittings ft of fittings, $hundreds hundred feet in all', (printed) => {
    const { id, length, fittings, hundreds } = printed;
    expectPrinted(fromSI(at(network, network.fittingLength, id), 'ft'), fittings, 1e-9);
    const feet = fromSI(at(network, network.length, id) + at(network, network.fittingLength, id), 'ft');
    expectPrinted(feet / 100, hundreds, 0.0005);
    expect(length + fittings).toBeCloseTo(100 * hundreds, 9);
  });

  /** Read off a chart of log scales: 5 %, and half of the last digit. */
  it.each(sections)('$id: $gradient psi per 100 ft', ({ id, gradient }) => {
    const computed = fromSI(at(network, solution.gradient, id), 'psi/100ft');
    expectPrinted(computed, gradient, 0.05 + 0.05 * gradient);
  });

  it.each(sections)('$id: $loss psi', ({ id, loss }) => {
    const computed = at(network, solution.pipeLoss, id) + at(network, solution.fittingLoss, id);
    expectPrinted(fromSI(computed, 'psi'), loss, 0.005 + 0.075 * loss);
  });

  it('takes off the printed losses of tap, meter, backflow preventer and height', () => {
    const end = network.positionOf.get('closets-E')!;
    const lines = ledger(network, solution, end);
    const sum = (what: string): number =>
      lines.filter((line) => line.what === what).reduce((total, { loss }) => total + fromSI(loss, 'psi'), 0);
    expectPrinted(sum('device'), table.tap + table.meter + table.backflow, 1e-9);
    expectPrinted(sum('elevation'), table.staticHead, 1e-9);
    const available = table.main - table.fixture - sum('device') - sum('elevation');
    expectPrinted(available, table.available, 0.005);
    expectPrinted(table.main - available, table.total, 0.005);
  });

  /** 225 ft of pipe along A-B-C-D-E, without fittings. */
  it('has the printed average gradient', () => {
    const path = ['AB', 'BC', 'CD', 'DE'];
    const feet = path.reduce((total, id) => total + fromSI(at(network, network.length, id), 'ft'), 0);
    expectPrinted((100 * table.available) / feet, table.average, 0.005);
  });

  /** 9.36 less 2.38 + 0.34 + 0.40 + 3.12: 3.12 psi are left over the 15 psi. 5 % of the friction, the chart’s. */
  it('leaves the pressure that the printed friction leaves', () => {
    const friction = 2.38 + 0.34 + 0.4 + 3.12;
    const left = fromSI(at(network, solution.residual, 'closets-E'), 'psi') - table.fixture;
    expectPrinted(left, table.available - friction, 0.05 * friction);
  });

  it('keeps every printed product of length and gradient', () => {
    for (const { hundreds, gradient, loss } of sections) {
      expect(Math.abs(apart(hundreds * gradient, loss))).toBeLessThan(0.02);
    }
  });
});
