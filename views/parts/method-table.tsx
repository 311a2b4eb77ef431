import type { MethodResult, SizingFound, SizingView } from '../sizing.ts';
import { fixed, signedPressure } from '../text/figure.ts';
import { methodTexts } from '../text/method-text.ts';
import { money, signedMoney } from '../text/money.ts';
import { worstName } from './scheme-rows.tsx';

/** The ways to size the same scheme, beside each other. */
export function MethodTable({ view, found }: { view: SizingView; found: SizingFound }): JSX.Element {
  const { currency } = view.book;
  const { units } = view.job;
  const least = found.methods.find(({ method }) => method === 'least-cost')?.cost?.cents;
  return (
    <table class="methods stacked">
      <thead>
        <tr>
          <th scope="col">Sized</th>
          <th scope="col" class="numeric">
            Pipe and fittings
          </th>
          <th scope="col" class="numeric">
            Against least cost
          </th>
          <th scope="col" class="numeric">
            Labor
          </th>
          <th scope="col">At the worst fixture</th>
          <th scope="col">Runs over and under least cost</th>
        </tr>
      </thead>
      <tbody>
        {found.methods.map(({ method, cost, worst, errors, against }) => (
          <tr class={method === 'least-cost' ? 'total' : undefined}>
            <th scope="row">
              <span class="method-name" safe>
                {methodTexts[method][0]}
              </span>
              <span class="source" safe>
                {methodTexts[method][1]}
              </span>
            </th>
            <td class="numeric" data-label="Pipe and fittings" safe>
              {cost === undefined ? 'a price is missing' : money(cost.cents, currency)}
            </td>
            <td class="numeric" data-label="Against least cost" safe>
              {cost === undefined || least === undefined ? '–' : signedMoney(cost.cents - least, currency)}
            </td>
            <td class="numeric" data-label="Labor" safe>
              {cost === undefined ? '–' : `${fixed(cost.hours, 1)} h`}
            </td>
            <td data-label="At the worst fixture">
              <strong safe>{worst === undefined ? '–' : marginText(worst.margin, units)}</strong>{' '}
              <span safe>{worstName(worst)}</span>
              <span class="source" safe>
                {errors === 0 ? '' : ` ${errors} broken rule${errors === 1 ? '' : 's'}`}
              </span>
            </td>
            <td data-label="Over and under" safe>
              {againstText(method, against)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function marginText(margin: number, units: SizingView['job']['units']): string {
  return margin < 0 ? `▼ ${signedPressure(margin, units)}` : signedPressure(margin, units);
}

function againstText(method: MethodResult['method'], against: MethodResult['against']): string {
  if (against === undefined || method === 'least-cost') return '–';
  const { larger, smaller } = against;
  if (larger === 0 && smaller === 0) return 'the same sizes';
  return [larger === 0 ? '' : `${larger} larger`, smaller === 0 ? '' : `${smaller} smaller`]
    .filter((part) => part !== '')
    .join(', ');
}
