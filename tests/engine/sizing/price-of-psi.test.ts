import { describe, expect, it } from 'vitest';
import type { Run } from '../../../engine/job/job.ts';
import { rebuild } from '../../../engine/network/rebuild.ts';
import { report } from '../../../engine/report.ts';
import { type PsiPrice, priceOfPsi } from '../../../engine/sizing/price-of-psi.ts';
import { priceScheme } from '../../../engine/takeoff/price-scheme.ts';
import { exampleNames, openExample, reportOf } from '../../examples/open-example.ts';
import { cold, fixture, ft, job, psi, run, reportOf as solved } from '../../jobs/written-job.ts';
import { shippedPrices } from './shipped-prices.ts';

const prices = await shippedPrices();

function changed(one: Run, { change }: PsiPrice): Run {
  if (change.do === 'other-scheme') throw new Error('no change of a run');
  if (one.id !== change.run) return one;
  if (change.do === 'shorter-run') {
    return { ...one, length: { typed: 'shorter', si: one.length.si - change.by.si } };
  }
  if (change.do === 'larger-pipe') {
    // A valve that has its run's size stays as it is.
    const { end } = one;
    const valve =
      end !== undefined && 'device' in end && (end.device === 'reducing-valve' || end.device === 'backflow');
    return { ...one, size: change.to, ...(valve ? { end: { ...end, size: end.size ?? one.size } } : {}) };
  }
  if (one.end === undefined || !('device' in one.end) || one.end.device !== 'meter')
    throw new Error('no meter');
  return { ...one, end: { ...one.end, size: change.to } };
}

describe.each(exampleNames)('the price of a psi in %s', (name) => {
  it('gains what the changed scheme has when it is solved, and costs what it costs more', async () => {
    const drawn = reportOf(await openExample(name));
    const { network, worst } = drawn;
    const found = priceOfPsi(drawn, worst!.inlet, prices);
    expect(found.length).toBeGreaterThan(3);
    const before = priceScheme(prices, network.scheme).total!.money;
    for (const one of found) {
      const scheme = { ...network.scheme, runs: network.scheme.runs.map((each) => changed(each, one)) };
      const after = report(rebuild(network, scheme));
      const margin = after.inlets.find(
        ({ inlet }) => inlet.fixture.id === worst!.inlet.fixture.id && inlet.side === worst!.inlet.side,
      )!.margin;
      expect(margin - worst!.margin, JSON.stringify(one.change)).toBeCloseTo(one.gain, 6);
      expect(priceScheme(prices, scheme).total!.money.minus(before).times(100).toNumber()).toBe(one.cents);
    }
    const each = found.map(({ cents, gain }) => cents / gain);
    expect(each).toEqual([...each].sort((one, other) => one - other));
  });
});

describe('the price of a psi', () => {
  const house = (valve: number) =>
    solved(
      job(
        [fixture('closet', 'water-closet-tank')],
        [
          run('S', 'street', { size: '3/4', length: ft(60), end: { device: 'meter', size: '5/8' } }),
          run('V', 'S', { end: { device: 'reducing-valve', set: psi(valve), curve: [] } }),
          run('C', 'V', { size: '1/2', length: ft(40), end: cold('closet') }),
        ],
      ),
    );
  const changes = (valve: number): string[] => {
    const drawn = house(valve);
    return priceOfPsi(drawn, drawn.worst!.inlet, prices).map(({ change }) =>
      change.do === 'other-scheme' ? change.do : `${change.do} ${change.run}`,
    );
  };

  it('leaves out what gains nothing behind a reducing valve', () => {
    // C is 40 ft of 1/2 in, on which a foot loses most; less pipe costs less, so that comes first.
    expect(changes(30)).toEqual(['shorter-run C', 'larger-pipe C']);
    expect(changes(90).sort()).toEqual([
      'larger-meter S',
      'larger-pipe C',
      'larger-pipe S',
      'larger-pipe V',
      'shorter-run C',
    ]);
  });
});
