import { describe, expect, it } from 'vitest';
import { compareSchemes } from '../../../engine/index.ts';
import { priceOfPressure } from '../../../engine/sizing/price-of-pressure.ts';
import { priceOfPsi } from '../../../engine/sizing/price-of-psi.ts';
import { openExample, reportOf } from '../../examples/open-example.ts';
import { shippedPrices } from './shipped-prices.ts';

const prices = await shippedPrices();

describe('the price of pressure', () => {
  it('has the other schemes in it that leave more at their worst fixture, and nothing else new', async () => {
    const job = await openExample('large-house.json');
    const { compared } = compareSchemes(job, prices);
    const [halves] = compared.filter(({ id }) => id === 'trunk-halves');
    const worst = halves!.report.worst!;
    const found = priceOfPressure(halves!.report, worst.inlet, prices);
    const others = compared
      .filter(({ report }) => report.worst!.margin > worst.margin)
      .map(({ id, report, price }) => ({
        scheme: id,
        gain: report.worst!.margin - worst.margin,
        cents: price.total!.money.minus(halves!.price.total!.money).times(100).toNumber(),
      }));
    expect(others.map(({ scheme }) => scheme).sort()).toEqual(['home-run', 'trunk', 'zones']);
    for (const { scheme, gain, cents } of others) {
      const [line] = found.filter(({ change }) => change.do === 'other-scheme' && change.scheme === scheme);
      expect(line?.gain).toBeCloseTo(gain, 9);
      expect(line?.cents).toBe(cents);
    }
    const own = priceOfPsi(halves!.report, worst.inlet, prices);
    expect(found.filter(({ change }) => change.do !== 'other-scheme')).toEqual(own);
  });

  it('is that of the single changes where a job has one scheme', async () => {
    const drawn = reportOf(await openExample('three-level-house.json'));
    expect(priceOfPressure(drawn, drawn.worst!.inlet, prices)).toEqual(
      priceOfPsi(drawn, drawn.worst!.inlet, prices),
    );
  });
});
