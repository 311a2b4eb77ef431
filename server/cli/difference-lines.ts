import type { UnitSystem } from '../../engine/index.ts';
import { articleName } from '../../engine/takeoff/article.ts';
import type { Difference } from '../../engine/takeoff/differences.ts';
import type { Earlier } from '../answers/taken-off.ts';
import { quantityWords } from '../takeoff/in-units.ts';
import { money, moneyMore } from '../words/money-words.ts';
import { labelled } from './job-head.ts';
import { tableLines } from './table-lines.ts';

/** What is added and what is dropped since an earlier revision, as two lists. */
export function differenceLines(
  { name, differences, more }: Earlier,
  currency: string,
  units: UnitSystem,
): string[] {
  const { added, dropped } = differences;
  const price =
    more === undefined
      ? 'no difference of price: prices are missing'
      : `${more === 0 ? money(0) : moneyMore(more)} ${currency}`;
  return [
    '',
    ...labelled('Against', `${name}: ${added.length} added, ${dropped.length} dropped; ${price}`),
    ...listLines('Added', added, units),
    ...listLines('Dropped', dropped, units),
  ];
}

function listLines(title: string, list: readonly Difference[], units: UnitSystem): string[] {
  if (list.length === 0) return [];
  const rows = list.map(({ article, unit, before, after, by }) => {
    const amount = (value: typeof by): string => quantityWords(value, unit, units);
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
