import type { BookHead } from '../../views/prices.ts';
import { Refusal } from '../http/refusal.ts';
import type { AppContext } from './context.ts';

/**
 * The price book of an address.
 *
 * @throws a refusal in words where there is none
 */
export async function openBookOrRefuse({ books }: AppContext, id: string): Promise<BookHead> {
  const open = await books.open(id);
  if (open === undefined) {
    throw new Refusal(
      404,
      'No such price book',
      'There is no price book at this address. It may have been deleted.',
    );
  }
  return { id, revision: open.revision, kept: open.kept, book: open.prices.book };
}

/**
 * The price book of an address, to be changed.
 *
 * @throws a refusal in words where there is none, or where it is the one that ships
 */
export async function openKeptOrRefuse(context: AppContext, id: string): Promise<BookHead> {
  const head = await openBookOrRefuse(context, id);
  if (head.kept) return head;
  throw new Refusal(
    403,
    'Read-only',
    'The book that ships with Hightap is read-only; make a copy of it and change that. Nothing was changed.',
  );
}
