import { articleName } from '../../engine/takeoff/article.ts';
import type { Difference } from '../../engine/takeoff/differences.ts';
import type { Earlier } from '../answers/taken-off.ts';
import { money, moneyMore } from '../words/money-words.ts';
import { labelled } from './job-head.ts';
import { tableLines } from './table-lines.ts';

/** What is added and what is dropped since an earlier revision, as two lists. */
export function differenceLines({ name, differences, more }: Earlier, currency: string): string[] {
  const { added, dropped } = differences;
  const price =
    more === undefined
      ? 'no difference of price: prices are missing'
      : `${more === 0 ? money(0) : moneyMore(more)} ${currency}`;
  return [
    '',
    ...labelled('Against', `${name}: ${added.length} added, ${dropped.length} dropped; ${price}`),
    ...listLines('Added', added),
    ...listLines('Dropped', dropped),
  ];
}

function listLines(title: string, list: readonly Difference[]): string[] {
  if (list.length === 0) return [];
  const rows = list.map(({ article, unit, before, after, by }) => {
    const amount = (value: typeof by): string => `${value.toDecimalPlaces(1)}${unit === 'ft' ? ' ft' : ''}`;
    return [amount(by), amount(before), amount(after), articleName(article)];
  });
  const columns = [
    { title, holds: 'figures' },
    { title: 'Was', holds: 'figures' },
    { title: 'Is', holds: 'figures' },
    { title: 'Item', holds: 'words' },
  ] as const;
  return ['', ...tableLines(columns, rows)];
}
