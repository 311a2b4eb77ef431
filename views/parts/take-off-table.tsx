import type { UnitSystem } from '../../engine/job/job.ts';
import type { PriceBook } from '../../engine/takeoff/price-book.ts';
import { toSI } from '../../tables/units/definitions.ts';
import type { TakeOffGroup, TakeOffRow } from '../take-off.ts';
import { figureWithUnit, fixed } from '../text/figure.ts';
import { money, unitMoney } from '../text/money.ts';

/** One group of a take-off; its head says on every printed page that the prices are invented. */
export function TakeOffTable(props: {
  readonly group: TakeOffGroup;
  readonly book: PriceBook;
  readonly units: UnitSystem;
}): JSX.Element {
  const { group, book, units } = props;
  const { currency, invented } = book;
  const price = invented ? 'Price (invented)' : 'Price';
  return (
    <table class="parts">
      <caption safe>{group.title}</caption>
      <thead>
        <tr>
          <th scope="col" class="numeric">
            Quantity
          </th>
          <th scope="col">Item</th>
          <th scope="col" class="numeric">
            Each
          </th>
          <th scope="col" class="numeric">
            {price}
          </th>
          <th scope="col" class="numeric">
            Labor
          </th>
        </tr>
      </thead>
      <tbody>
        {group.rows.map((row) => (
          <tr>
            <td class="numeric" safe>
              {quantityText(row.quantity.toNumber(), row.unit, units)}
            </td>
            <th scope="row" safe>
              {row.item}
            </th>
            <td class="numeric each" safe>
              {eachText(row, currency, units)}
            </td>
            <td class="numeric" safe>
              {typeof row.price === 'string' ? priceWords[row.price] : money(row.price.cents, currency)}
            </td>
            <td class="numeric" safe>
              {typeof row.price === 'string' ? '' : `${fixed(row.price.hours, 2)} h`}
            </td>
          </tr>
        ))}
      </tbody>
      <tbody>
        <tr class="total">
          <td></td>
          <th scope="row" safe>
            {group.missing === 0 ? 'Together' : `What has a price; ${group.missing} without`}
          </th>
          <td class="each"></td>
          <td class="numeric" safe>
            {money(group.cents, currency)}
          </td>
          <td class="numeric" safe>{`${fixed(group.hours, 2)} h`}</td>
        </tr>
      </tbody>
    </table>
  );
}

const priceWords = { 'with fittings': 'in fittings', missing: 'missing' } as const;

function eachText({ each, unit }: TakeOffRow, currency: string, system: UnitSystem): string {
  if (each === undefined) return '';
  if (unit !== 'ft') return unitMoney(each, currency);
  return system === 'si'
    ? `${unitMoney(each / toSI(1, 'ft'), currency)} / m`
    : `${unitMoney(each, currency)} / ft`;
}

/** A count, or a length in the reader's unit. */
export function quantityText(quantity: number, unit: 'each' | 'ft', units: UnitSystem): string {
  return unit === 'ft' ? figureWithUnit(toSI(quantity, 'ft'), 'length', units) : String(quantity);
}
