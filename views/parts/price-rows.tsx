import type { PriceList } from '../../engine/takeoff/price-line.ts';
import { TextField } from '../components/field.tsx';
import { type BookView, type PriceRow, priceLists } from '../prices.ts';
import { PriceNote } from './price-note.tsx';

/** Address of one list of a book, as filtered. */
function listAddress({ id, text }: BookView, list: PriceList, page: number): string {
  const query = new URLSearchParams({ list, ...(text === '' ? {} : { text }) });
  if (page > 1) query.set('page', `${page}`);
  return `/prices/${id}?${query}#items`;
}

/** One list of a book: which list, a filter, and a row for each price. */
export function PriceRows({ view }: { view: BookView }): JSX.Element {
  const { id, list, text, counts, rows, found, book, kept } = view;
  return (
    <section id="items" aria-labelledby="items-title">
      <h2 id="items-title">Items</h2>
      <PriceNote book={book} brief />
      <nav class="lists" aria-label="Lists of this book">
        {(Object.keys(priceLists) as PriceList[]).map((one) => (
          <a href={listAddress(view, one, 1)} aria-current={one === list ? 'page' : undefined}>
            <span safe>{priceLists[one]}</span> <span class="caption" safe>{`${counts[one]}`}</span>
          </a>
        ))}
      </nav>
      <form id="filter" method="get" action={`/prices/${id}`} class="edit filter">
        <input type="hidden" name="list" value={list} />
        <TextField form="filter" name="text" label="Only items with these words" value={text} />
        <button type="submit">Show</button>
      </form>
      {found === 0 ? (
        <p>
          {text === ''
            ? 'No prices in this list yet. What a take-off needs and finds no price for is listed there as missing.'
            : 'No item has these words.'}
        </p>
      ) : (
        ''
      )}
      <ul class="price-rows">
        {rows.map((row) => (kept ? <EditRow view={view} row={row} /> : <PlainRow row={row} />))}
      </ul>
      <Pages view={view} />
    </section>
  );
}

function Pages({ view }: { view: BookView }): JSX.Element {
  const { found, page, pages, rows, list } = view;
  if (pages <= 1) return '';
  return (
    <p class="pages">
      {page > 1 ? <a href={listAddress(view, list, page - 1)}>Before</a> : ''}{' '}
      <span safe>{`${rows.length} of ${found}, page ${page} of ${pages}`}</span>{' '}
      {page < pages ? <a href={listAddress(view, list, page + 1)}>Next</a> : ''}
    </p>
  );
}

function PlainRow({ row }: { row: PriceRow }): JSX.Element {
  const { money, hours, ports } = row.figures;
  const plus = ports === undefined ? '' : `, each port ${ports.money} and ${ports.hours} h`;
  return (
    <li>
      <span class="price-name" safe>
        {row.name}
      </span>
      <span
        class="price-plain"
        safe
      >{`${money} ${row.unit === 'ft' ? 'a foot' : 'each'}, ${hours} h${plus}`}</span>
    </li>
  );
}

function EditRow({ view, row }: { view: BookView; row: PriceRow }): JSX.Element {
  const { id, list, revision, text, page } = view;
  const form = `row:${list}:${row.at}`;
  const refused = view.refusedRow?.at === row.at ? view.refusedRow.refused : undefined;
  const { money, hours, ports } = row.figures;
  const per = row.unit === 'ft' ? 'a foot' : 'each';
  const field = (name: string, label: string, value: string) => (
    <TextField form={form} name={name} label={label} value={value} numeric refused={refused} />
  );
  return (
    <li id={`item:${list}:${row.at}`}>
      <span class="price-name" id={`${form}:name`} safe>
        {row.name}
      </span>
      <form
        id={form}
        method="post"
        action={`/prices/${id}/items/${list}/${row.at}`}
        class="edit price-row"
        autocomplete="off"
        aria-labelledby={`${form}:name`}
      >
        <input type="hidden" name="revision" value={`${revision}`} />
        <input type="hidden" name="text" value={text} />
        <input type="hidden" name="page" value={`${page}`} />
        {field('price', `Price ${per}`, money) as 'safe'}
        {field('hours', `Hours ${per}`, `${hours}`) as 'safe'}
        {ports === undefined ? '' : (field('portPrice', 'Price a port', ports.money) as 'safe')}
        {ports === undefined ? '' : (field('portHours', 'Hours a port', `${ports.hours}`) as 'safe')}
        <span class="price-buttons">
          <button type="submit" name="do" value="keep">
            Keep<span class="visually-hidden" safe>{` the price of ${row.name}`}</span>
          </button>
          <button type="submit" name="do" value="remove" class="lesser">
            Remove<span class="visually-hidden" safe>{` the price of ${row.name}`}</span>
          </button>
        </span>
      </form>
    </li>
  );
}
