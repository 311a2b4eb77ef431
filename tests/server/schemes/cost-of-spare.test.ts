import { describe, expect, it } from 'vitest';
import { buildNetwork, priceScheme, report } from '../../../engine/index.ts';
import { readJob } from '../../../server/document/read-job.ts';
import { shippedPrices } from '../../../server/prices/shipped-prices.ts';
import { costOfSpare } from '../../../server/schemes/cost-of-spare.ts';
import { leastCostAt } from '../../../views/parts/cost-curves.ts';
import { smallJob } from '../small-job.ts';

/** The small cottage with another end to its second run, as a network with its price. */
async function cottage(t1: string) {
  const [scheme] = smallJob.schemes;
  const runs = scheme.runs.map((run) => (run.id === 'T1' ? { ...run, line: t1 } : run));
  const read = await readJob(JSON.stringify({ ...smallJob, schemes: [{ ...scheme, runs }] }));
  if (!read.ok) throw new Error(read.problems.join('; '));
  const built = buildNetwork(read.job, 'S1');
  if (!built.ok) throw new Error('no tree');
  const prices = await shippedPrices();
  return { network: built.network, price: priceScheme(prices, built.network.scheme), prices };
}

describe('cost of spare pressure', () => {
  it('places the scheme as drawn at its price and its margin, where nothing holds pressure back', async () => {
    const { network, price, prices } = await cottage("1 PEX 12' 1 ell 1 ball valve");
    const { drawn, curve, why } = costOfSpare(network, price, prices);
    expect(why).toBe('');
    expect(drawn!.cents).toBeCloseTo(price.total!.money.times(100).toNumber(), 6);
    expect(drawn!.spare).toBeCloseTo(report(network).worst!.margin, 3);
    expect(leastCostAt(curve, drawn!.spare)!).toBeLessThanOrEqual(drawn!.cents);
  });

  it('rises with the spare pressure, and saves nothing for less', async () => {
    const { network, price, prices } = await cottage("1 PEX 12' 1 ell 1 ball valve");
    const { curve } = costOfSpare(network, price, prices);
    expect(curve.length).toBeGreaterThan(5);
    for (let at = 1; at < curve.length; at++) {
      expect(curve[at]!.cents).toBeGreaterThan(curve[at - 1]!.cents);
      expect(curve[at]!.spare).toBeGreaterThan(curve[at - 1]!.spare);
    }
  });

  it('has no place for a scheme whose reducing valve leaves too little at any pressure', async () => {
    const { network, price, prices } = await cottage("1 PEX 12' 1 ell 1 ball valve then prv 12 psi");
    const { drawn, curve, why } = costOfSpare(network, price, prices);
    expect(drawn).toBeUndefined();
    expect(curve).toEqual([]);
    expect(why).toContain('No sizes hold every limit');
  });

  it('says that a price is missing', async () => {
    const { network, prices } = await cottage("1 PEX 12' 1 ell 1 ball valve");
    const poorer = { ...prices, fittings: new Map() };
    const { curve, why } = costOfSpare(network, priceScheme(poorer, network.scheme), poorer);
    expect(curve).toEqual([]);
    expect(why).toBe('A price is missing.');
  });
});
