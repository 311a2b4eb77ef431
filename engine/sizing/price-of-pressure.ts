import { compareSchemes } from '../compare/compare-schemes.ts';
import type { Inlet } from '../network/network.ts';
import type { Report } from '../network/report.ts';
import type { PriceIndex } from '../takeoff/index-prices.ts';
import { priceScheme } from '../takeoff/price-scheme.ts';
import { byPrice, type PsiPrice, priceOfPsi } from './price-of-psi.ts';

/**
 * What more pressure at an inlet costs, whatever way it is had: the single changes on its path, and the job's other
 * schemes as they are drawn, whose worst inlet may be left with more. The most pressure for the money first.
 */
export function priceOfPressure(report: Report, inlet: Inlet, prices: PriceIndex): PsiPrice[] {
  return byPrice([...priceOfPsi(report, inlet, prices), ...otherSchemes(report, prices)]);
}

function otherSchemes({ network, worst }: Report, prices: PriceIndex): PsiPrice[] {
  const own = priceScheme(prices, network.scheme).total;
  if (own === undefined || worst === undefined) return [];
  const ids = network.job.schemes.map(({ id }) => id).filter((id) => id !== network.scheme.id);
  return compareSchemes(network.job, prices, ids).compared.flatMap(
    ({ id, name, report: other, price }): PsiPrice[] =>
      other.worst === undefined || price.total === undefined
        ? []
        : [
            {
              change: { do: 'other-scheme', scheme: id, name },
              gain: other.worst.margin - worst.margin,
              cents: price.total.money.minus(own.money).times(100).toNumber(),
            },
          ],
  );
}
