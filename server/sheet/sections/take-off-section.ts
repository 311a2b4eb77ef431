import type { Job, PriceBook, TakeOff, TakeOffPrice } from '../../../engine/index.ts';
import { toCents } from '../../../engine/takeoff/money.ts';
import { quantityText } from '../../../views/parts/take-off-table.tsx';
import type { SheetBlock, SheetSection } from '../../../views/sheet.ts';
import type { TakeOffGroup } from '../../../views/take-off.ts';
import { fixed } from '../../../views/text/figure.ts';
import { money } from '../../../views/text/money.ts';
import { questionText } from '../../../views/text/question-text.ts';
import { groupLines } from '../../takeoff/group-lines.ts';
import { itemName } from '../../takeoff/item-name.ts';
import { figures, group, paragraph, row, table, total, words } from '../blocks.ts';

/** What the layout takes, by diameter, with the total of what has a price. */
export function takeOffSection(
  job: Job,
  taken: TakeOff,
  priced: TakeOffPrice,
  book: PriceBook,
): SheetSection {
  const groups = groupLines(job, priced.lines, 'size');
  const sum = money(toCents(priced.priced), book.currency);
  const last = total(
    '',
    priced.total === undefined ? 'What has a price; other prices are missing' : 'Total',
    sum,
    fixed(priced.hours, 2),
  );
  const rows = groups.flatMap((one) => [group(one.title), ...groupRows(one, job, book.currency)]);
  return {
    id: 'takeoff',
    title: 'Take-off',
    blocks: [
      ...(book.invented ? [invented(book)] : []),
      table(
        'Pipe, fittings, valves, devices, supports and insulation',
        [
          figures('Quantity'),
          words('Item'),
          figures(book.invented ? 'Price (invented)' : 'Price'),
          figures('Labor, h'),
        ],
        [...rows, last],
        'Pipe is the developed length without waste; joints are in the price of their fittings. Material and hours alone: no tax, overhead or margin.',
      ),
      ...told('No price in the book', priced.missing.map(itemName)),
      ...told('Questions about the drawing', taken.questions.map(questionText)),
    ],
  };
}

function invented({ name, currency, effective }: PriceBook): SheetBlock {
  return paragraph(
    `Invented prices: every price here is made up (${name}, ${currency}, from ${effective}). They tell layouts apart; none may stand in a bid.`,
    'caution',
  );
}

function groupRows({ rows }: TakeOffGroup, job: Job, currency: string) {
  return rows.map(({ item, quantity, unit, price }) => {
    const many = quantityText(quantity.toNumber(), unit, job.units);
    if (price === 'with fittings') return row(many, item, 'in fittings', '');
    if (price === 'missing') return row(many, item, 'missing', '');
    return row(many, item, money(price.cents, currency), fixed(price.hours, 2));
  });
}

function told(title: string, items: readonly string[]): SheetBlock[] {
  return items.length === 0 ? [] : [paragraph(`${title} (${items.length})`), { is: 'list', items }];
}
