import { describe, expect, it } from 'vitest';
import { type BusyKind, busyFlow, busyPercentile } from '../../../engine/demand/busy-fixtures.ts';
import { designFlows } from '../../../engine/demand/design-flow.ts';
import { busyNormalPercentile, normalPercentile } from '../../../engine/demand/normal-demand.ts';
import {
  busyOnAverage,
  statisticalFlow,
  statisticalForm,
} from '../../../engine/demand/statistical-demand.ts';
import { fromSI, toSI } from '../../../tables/units/definitions.ts';
import { at, cold, fixture, hot, job, networkOf, run } from '../../jobs/written-job.ts';

/** Invented values of today's order: a kitchen tap, a dishwasher, a basin, a tub. */
const of = (count: number, busy: number, gpm: number): BusyKind => ({ count, busy, flow: toSI(gpm, 'gpm') });
const sinks = of(2, 0.02, 2.2);
const dishwasher = of(1, 0.005, 1.3);
const basin = of(1, 0.02, 1.5);
const dwelling = (count: number): BusyKind[] => [
  of(count, 0.1, 2),
  of(count, 0.055, 5.5),
  of(count, 0.01, 3),
];
const inGpm = (flow: number): number => fromSI(flow, 'gpm');

describe('the percentile over the busy time', () => {
  const percentile = (kinds: readonly BusyKind[]): number =>
    inGpm(busyPercentile(busyFlow(kinds, toSI(0.1, 'gpm')), 0.99));

  it('of one fixture is its own flow', () => {
    expect(percentile([basin])).toBeCloseTo(1.5, 12);
    expect(percentile([dishwasher])).toBeCloseTo(1.3, 12);
  });

  /**
   * Two sinks: one runs with 2 × 0.02 × 0.98 = 0.0392, both with 0.0004, so that one alone is 0.0392 / 0.0396 = 98.99 %
   * of the busy time: short of 99 %, and the percentile is both, 4.4. With a dishwasher nothing runs for 0.9604 × 0.995
   * = 0.955598; up to 3.5 (one sink and it) comes 0.9604 × 0.005 + 0.0392 = 0.044002 of 0.044402: 99.10 %.
   */
  it('falls from 4.4 to 3.5 when a dishwasher joins two sinks, for it runs alone in some of the busy time', () => {
    expect(percentile([sinks])).toBeCloseTo(4.4, 12);
    expect(percentile([sinks, dishwasher])).toBeCloseTo(3.5, 12);
  });

  it('may fall so, but the run that feeds the two sinks and the dishwasher carries no less than the one to the sinks', () => {
    const fixtures = [fixture('A', 'kitchen-sink'), fixture('B', 'kitchen-sink'), fixture('D', 'dishwasher')];
    const network = networkOf(
      job(fixtures, [
        run('service', 'street'),
        run('heater', 'service', { end: { device: 'heater', type: 'storage' } }),
        run('sinks', 'heater'),
        run('A-hot', 'sinks', { end: hot('A') }),
        run('B-hot', 'sinks', { end: hot('B') }),
        run('D-hot', 'heater', { end: hot('D') }),
        run('A-cold', 'service', { end: cold('A') }),
        run('B-cold', 'service', { end: cold('B') }),
      ]),
    );
    const behind: { readonly [run: string]: readonly BusyKind[] } = {
      service: [sinks, dishwasher],
      heater: [sinks, dishwasher],
      sinks: [sinks],
    };
    const demand = Float64Array.from(network.runs, ({ id }) => statisticalFlow(behind[id] ?? [], 0.99));
    expect(inGpm(at(network, demand, 'heater'))).toBeCloseTo(3.5, 12);
    const flow = new Float64Array(network.size);
    designFlows({ ...network, demand: { ...network.demand, flow: demand } }, flow);
    expect(inGpm(at(network, flow, 'sinks'))).toBeCloseTo(4.4, 12);
    expect(inGpm(at(network, flow, 'heater'))).toBeCloseTo(4.4, 12);
    expect(inGpm(at(network, flow, 'service'))).toBeCloseTo(4.4, 12);
  });

  it('is nothing where nothing runs', () => expect(percentile([])).toBe(0));
});

describe('the normal forms', () => {
  /** Mean 0.02 × 1.5 = 0.03, variance 0.02 × 0.98 × 2.25 = 0.0441 = 0.21 squared; z at 99 % is 2.326348. */
  it('of one basin: 0.03 + 2.326348 × 0.21, and over its busy time its own flow without spread', () => {
    expect(inGpm(normalPercentile([basin], 0.99))).toBeCloseTo(0.518533, 6);
    expect(inGpm(busyNormalPercentile([basin], 0.99))).toBeCloseTo(1.5, 6);
  });

  /**
   * Two sinks: mean 0.088, variance 2 × 0.0196 × 4.84 = 0.189728, nothing runs for 0.9604;
   * (0.088 + 2.326348 × sqrt(0.0396 × 0.189728 - 0.9604 × 0.007744)) / 0.0396 = (0.088 + 2.326348 × 0.00875428) / 0.0396.
   */
  it('of two sinks over their busy time', () => {
    const spread = Math.sqrt(0.0396 * 0.189728 - 0.9604 * 0.007744);
    expect(inGpm(busyNormalPercentile([sinks], 0.99))).toBeCloseTo((0.088 + 2.326348 * spread) / 0.0396, 5);
  });
});

describe('the form that the method takes', () => {
  it('goes by how many fixtures run on average, 0.165 for each dwelling here', () => {
    expect(busyOnAverage(dwelling(7))).toBeCloseTo(1.155, 12);
    expect(statisticalForm(dwelling(7))).toBe('counted out');
    expect(statisticalForm(dwelling(8))).toBe('zero-truncated normal');
    expect(statisticalForm(dwelling(30))).toBe('zero-truncated normal');
    expect(statisticalForm(dwelling(31))).toBe('normal');
  });

  it('steps down where it passes from counting out to the normal form', () => {
    const counted = (count: number): number => statisticalFlow(dwelling(count), 0.99, 'counted out');
    expect(counted(8)).toBeGreaterThanOrEqual(counted(7));
    expect(statisticalFlow(dwelling(8), 0.99)).toBeLessThan(statisticalFlow(dwelling(7), 0.99));
  });

  it('counts a flow between two steps as the next: 1.234 gpm twice at once is 1.24 twice', () => {
    expect(inGpm(statisticalFlow([of(2, 0.1, 1.234)], 0.99, 'counted out'))).toBeCloseTo(2.48, 12);
  });
});
