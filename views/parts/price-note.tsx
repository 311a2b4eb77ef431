import type { PriceBook } from '../../engine/takeoff/price-book.ts';

/** Where the prices of a page come from; stands wherever a price is shown, in full at the first of them. */
export function PriceNote({ book, brief }: { book: PriceBook; brief?: boolean }): JSX.Element {
  if (brief) return book.invented ? <p class="price-note">Invented prices.</p> : '';
  const from = `${book.name}, ${book.currency}, from ${book.effective}`;
  return book.invented ? (
    <p class="price-note">
      <strong>Invented prices.</strong>{' '}
      <span
        safe
      >{`Every price here is made up (${from}). They tell layouts apart; none may stand in a bid.`}</span>
    </p>
  ) : (
    <p class="price-note" safe>{`Prices: ${from}. ${book.source}.`}</p>
  );
}
