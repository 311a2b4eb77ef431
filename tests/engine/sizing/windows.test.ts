import { describe, expect, it } from 'vitest';
import { solve } from '../../../engine/network/solve.ts';
import type { PipeChoice } from '../../../engine/sizing/least-cost.ts';
import { windows } from '../../../engine/sizing/windows.ts';
import { toSI } from '../../../tables/units/definitions.ts';
import { cold, fixture, job, networkOf, psi, run } from '../../jobs/written-job.ts';

const choice = (loss: number): PipeChoice => ({
  pipe: `${loss}`,
  inches: 1,
  cost: 1,
  loss: toSI(loss, 'psi'),
});

describe('windows', () => {
  it('reach from the street less every greatest loss to the street less every least, and no higher than a valve', () => {
    const valve = { device: 'reducing-valve', set: psi(40), curve: [] } as const;
    const network = networkOf(
      job(
        [fixture('closet', 'water-closet-tank')],
        [run('S', 'street', {}), run('V', 'S', { end: valve }), run('C', 'V', { end: cold('closet') })],
      ),
    );
    const { flow } = solve(network);
    const { most, least } = windows({
      network,
      flow,
      choices: [[choice(1), choice(4)], [choice(2), choice(6), choice(3)], [choice(9)]],
      between: { least: toSI(45, 'psi'), most: toSI(60, 'psi') },
    });
    const psiOf = (values: Float64Array): number[] => Array.from(values, (value) => value / toSI(1, 'psi'));
    // Before V: 60 - 1 and 45 - 4. Behind it: 59 - 2 = 57, held to 40 by the valve; 41 - 6 = 35.
    psiOf(most).forEach((value, at) => {
      expect(value).toBeCloseTo([60, 59, 40][at]!, 9);
    });
    psiOf(least).forEach((value, at) => {
      expect(value).toBeCloseTo([45, 41, 35][at]!, 9);
    });
  });

  it('have no bounds where no pressures are asked for', () => {
    const network = networkOf(
      job([fixture('closet', 'water-closet-tank')], [run('C', 'street', { end: cold('closet') })]),
    );
    const { most, least } = windows({ network, flow: solve(network).flow, choices: [[choice(1)]] });
    expect([most[0], least[0]]).toEqual([Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]);
  });
});
