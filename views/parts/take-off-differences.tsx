import type { UnitSystem } from '../../engine/job/job.ts';
import type { TakeOffDifference, TakeOffSheet } from '../take-off.ts';
import { money } from '../text/money.ts';
import { PriceNote } from './price-note.tsx';
import { quantityText } from './take-off-table.tsx';

/** What is added and dropped from another scheme to the one on the page. */
export function TakeOffDifferences(props: {
  readonly sheet: TakeOffSheet;
  readonly against: NonNullable<TakeOffSheet['against']>;
}): JSX.Element {
  const { sheet, against } = props;
  const { book, job, scheme } = sheet;
  const { added, dropped, more, name } = against;
  const sum =
    more === undefined
      ? 'A price is missing in one of them, so the difference in price is not known.'
      : `It comes to ${money(Math.abs(more), book.currency)} ${more < 0 ? 'less' : 'more'}.`;
  return (
    <section id="differences" aria-labelledby="differences-title">
      <h2 id="differences-title" safe>{`Differences against ${name}`}</h2>
      <PriceNote book={book} brief />
      <p>
        <span safe>{`From ${name} to ${scheme.name}, by what is bought, over all levels and phases. `}</span>
        <span safe>{sum}</span>
      </p>
      <List title="Added" word="more" differences={added} units={job.units} />
      <List title="Dropped" word="less" differences={dropped} units={job.units} />
    </section>
  );
}

function List(props: {
  readonly title: string;
  readonly word: string;
  readonly differences: readonly TakeOffDifference[];
  readonly units: UnitSystem;
}): JSX.Element {
  const { title, word, differences, units } = props;
  if (differences.length === 0) return <p safe>{`${title}: nothing.`}</p>;
  return (
    <table class="parts differences">
      <caption safe>{`${title} (${differences.length})`}</caption>
      <thead>
        <tr>
          <th scope="col" class="numeric" safe>
            {`So much ${word}`}
          </th>
          <th scope="col">Item</th>
          <th scope="col" class="numeric">
            Before
          </th>
          <th scope="col" class="numeric">
            After
          </th>
        </tr>
      </thead>
      <tbody>
        {differences.map(({ item, unit, by, before, after }) => (
          <tr>
            <td class="numeric" safe>
              {quantityText(by, unit, units)}
            </td>
            <th scope="row" safe>
              {item}
            </th>
            <td class="numeric" safe>
              {quantityText(before, unit, units)}
            </td>
            <td class="numeric" safe>
              {quantityText(after, unit, units)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
