import type { PsiPrice } from '../../engine/sizing/price-of-psi.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { displayUnits } from '../../tables/units/display.ts';
import type { SizingView } from '../sizing.ts';
import { signedPressure, unitSymbol } from '../text/figure.ts';
import { money, signedMoney } from '../text/money.ts';
import { worstName } from './scheme-rows.tsx';

const mostShown = 20;

function changeText(change: PsiPrice['change']): string {
  switch (change.do) {
    case 'larger-pipe':
      return `Run ${change.run}: ${change.from} → ${change.to}`;
    case 'larger-meter':
      return `Meter on run ${change.run}: ${change.from} → ${change.to}`;
    case 'shorter-run':
      return `Run ${change.run} shorter by ${change.by.typed}`;
    case 'other-scheme':
      return `${change.name} in place of this scheme, as drawn`;
  }
}

/** What a single change gains at the worst fixture, the most pressure for the money first. */
export function PsiList(props: {
  readonly view: SizingView;
  readonly prices: readonly PsiPrice[];
}): JSX.Element {
  const { view, prices } = props;
  const { units } = view.job;
  const { currency } = view.book;
  const { worst } = view.report;
  if (prices.length === 0) return <p>No single change gains anything there.</p>;
  const { unit, decimals } = displayUnits[units].pressure;
  const one = toSI(1, unit);
  const least = one * 10 ** -decimals;
  return (
    <>
      <p safe>
        {`At ${worstName(worst)}, which has ${signedPressure(worst?.margin ?? 0, units)} now. One change at a time, on the scheme as drawn; of another scheme, what its own worst fixture has more:`}
      </p>
      <table class="psi">
        <thead>
          <tr>
            <th scope="col">Change</th>
            <th scope="col" class="numeric">
              Gains
            </th>
            <th scope="col" class="numeric">
              Costs
            </th>
            <th scope="col" class="numeric" safe>
              {`Per ${unitSymbol('pressure', units)}`}
            </th>
          </tr>
        </thead>
        <tbody>
          {prices.slice(0, mostShown).map(({ change, gain, cents }) => (
            <tr>
              <th scope="row" safe>
                {changeText(change)}
              </th>
              <td class="numeric" safe>
                {gain < least / 2 ? `under ${signedPressure(least, units)}` : signedPressure(gain, units)}
              </td>
              <td class="numeric" safe>
                {signedMoney(cents, currency)}
              </td>
              <td class="numeric" safe>
                {cents <= 0 ? 'nothing' : money(Math.round((cents / gain) * one), currency)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {prices.length > mostShown ? (
        <p class="hint" safe>{`${prices.length - mostShown} more changes gain less for the money.`}</p>
      ) : (
        ''
      )}
    </>
  );
}
