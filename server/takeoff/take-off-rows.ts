import type { Job, PriceBook, TakeOffPrice } from '../../engine/index.ts';
import { joints, materials } from '../../tables/pipe/names.ts';
import { partGroups, partKinds } from '../../tables/takeoff/part-kinds.ts';
import type { Field } from '../spreadsheet/csv-text.ts';
import { areaText } from './area-text.ts';
import { eachIn, quantityIn, unitIn } from './in-units.ts';
import { sizesText } from './item-name.ts';

/** The columns of a take-off in a spreadsheet. */
export const takeOffHead: readonly string[] = [
  'section',
  'item',
  'sizes',
  'material',
  'joint',
  'to',
  'type',
  'ports',
  'quantity',
  'unit',
  'phase',
  'area',
  'service',
  'runs',
  'price each',
  'price',
  'labor h',
  'currency',
  'price book',
];

/**
 * The take-off for a spreadsheet, one line of it a row; the prices and hours add up to its totals. Sizes carry their
 * unit, so that no spreadsheet takes 3/4 for a day.
 */
export function takeOffRows(
  job: Job,
  { lines }: TakeOffPrice,
  book: PriceBook,
): readonly (readonly Field[])[] {
  const from = bookName(book);
  return lines.map((priced) => {
    const { article, quantity, unit, phase, area, service, from: origins } = priced.line;
    const { kind, sizes, material, joint, to, type, ports } = article;
    const known = priced.price === 'known';
    return [
      partGroups[partKinds[kind].group],
      partKinds[kind].label,
      sizesText(sizes),
      material === undefined ? '' : materials[material],
      joint === undefined ? '' : joints[joint],
      to === undefined ? '' : `${materials[to.material]} with ${joints[to.joint]}`,
      type ?? '',
      ports ?? '',
      quantityIn(quantity, unit, job.units).toNumber(),
      unitIn(unit, job.units),
      phase,
      areaText(job, area),
      service,
      origins
        .map(({ runs, quantity: part }) => `${runs.join('+')}: ${quantityIn(part, unit, job.units)}`)
        .join('; '),
      known ? eachIn(priced.each, unit, job.units).toNumber() : '',
      known ? priced.cents / 100 : priced.price,
      known ? priced.hours : '',
      book.currency,
      from,
    ];
  });
}

/** A price book by its name, and that it is invented where it is. */
export function bookName({ invented, name }: PriceBook): string {
  return `${invented ? 'INVENTED: ' : ''}${name}`;
}
