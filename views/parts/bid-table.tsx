import type { TakeOffSheet } from '../take-off.ts';
import { money } from '../text/money.ts';

/** The price built up from material, tax, labor, overhead and margin, or why the rates make none. */
export function BidTable({ sheet }: { readonly sheet: TakeOffSheet }): JSX.Element {
  const { bid, book } = sheet;
  if (bid === undefined) return '';
  if (typeof bid === 'string') {
    return (
      <p class="problem" role="alert" safe>
        {`No price: ${bid}.`}
      </p>
    );
  }
  return (
    <table class="bid">
      <caption safe>{`The price built up${book.invented ? ', on invented prices' : ''}`}</caption>
      <tbody>
        {bid.map(({ what, cents, sum }) => (
          <tr class={sum ? 'sum' : undefined}>
            <th scope="row" safe>
              {what}
            </th>
            <td class="numeric" safe>
              {money(cents, book.currency)}
            </td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <td colspan={2}>
            Each amount rounded to whole cents, half a cent up, then added. The order is common practice; what
            is taxed is the law’s of the place.
          </td>
        </tr>
      </tfoot>
    </table>
  );
}
