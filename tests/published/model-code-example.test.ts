import { describe, it } from 'vitest';
import { demandColumnOf, flowOfUnits } from '../../engine/demand/demand-table.ts';
import { solve } from '../../engine/network/solve.ts';
import { demandValve } from '../../tables/ipc-2018/demand.ts';
import { fromSI } from '../../tables/units/definitions.ts';
import { at, cold, fixture, ft, job, networkOf, psi, q, run } from '../jobs/written-job.ts';
import { expectPrinted } from './expect-printed.ts';
import { boreOf, hazenWilliamsPsi } from './gradients.ts';

/**
 * IPC 2018 Appendix E (also IRC Appendix P), the print’s own version of the factory. From memory, not verified: that its
 * products and sums close is the only evidence. The hot half is read from the valve column as well.
 */
const sections = [
  { section: 'AB', size: '2-1/2', units: 288, gpm: 108, length: 54, fittings: 15, gradient: 3.2, loss: 2.21 },
  {
    section: 'BC',
    size: '2-1/2',
    units: 264,
    gpm: 104.5,
    length: 8,
    fittings: 0.5,
    gradient: 3.1,
    loss: 0.26,
  },
  { section: 'CD', size: '2-1/2', units: 132, gpm: 77, length: 13, fittings: 7, gradient: 1.9, loss: 0.38 },
  { section: 'CF', size: '2-1/2', units: 132, gpm: 77, length: 150, fittings: 12, gradient: 1.9, loss: 3.08 },
  { section: "B'C'", size: '2', units: 24, gpm: 38, length: 8, fittings: 7.5, gradient: 1.4, loss: 0.22 },
  {
    section: "C'D'",
    size: '1-1/2',
    units: 12,
    gpm: 28.6,
    length: 13,
    fittings: 4,
    gradient: 3.2,
    loss: 0.54,
  },
  {
    section: "C'F'",
    size: '1-1/2',
    units: 12,
    gpm: 28.6,
    length: 150,
    fittings: 7,
    gradient: 3.2,
    loss: 5.02,
  },
] as const;

describe('IPC Appendix E example (from memory)', () => {
  const valve = demandColumnOf(demandValve);

  it.each(sections)('$section: $units units are $gpm gpm, rounded up', ({ units, gpm }) => {
    expectPrinted(fromSI(flowOfUnits(valve, units, true), 'gpm'), gpm, 0);
  });

  /** C = 140 against a chart of log scales: 10 %. The chart lies between C = 136 and C = 150. */
  it.each(sections)('$section: $gradient psi per 100 ft', ({ size, gpm, gradient }) => {
    expectPrinted(hazenWilliamsPsi(boreOf('copper-l', size), gpm, 140), gradient, 0.1 * gradient);
  });

  it.each(sections)('$section: $loss psi', ({ length, fittings, gradient, loss }) => {
    expectPrinted(((length + fittings) / 100) * gradient, loss, 0.011);
  });
});

describe('IPC section E103.2.2: static head', () => {
  /** Read: 0.433 psi/ft, and 20 ft are 8.66 psi (59.8 kPa). To the last digit. */
  const tower = networkOf(
    job(
      [fixture('top', 'hose-bibb')],
      [run('up', 'street', { length: ft(20), rise: ft(20), end: cold('top') })],
      {
        basis: { elevationFactor: q(0.433, 'psi/ft') },
        supply: { kind: 'static', elevation: ft(0), low: psi(60), high: psi(60) },
      },
    ),
  );
  const loss = at(tower, solve(tower).elevationLoss, 'up');

  it('20 ft: 8.66 psi', () => expectPrinted(fromSI(loss, 'psi'), 8.66, 0.005));
  it('20 ft: 59.8 kPa', () => expectPrinted(fromSI(loss, 'kPa'), 59.8, 0.1));
});
