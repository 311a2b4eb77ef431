import type { Job, PriceBook, TakeOffPrice } from '../../engine/index.ts';
import type { Area } from '../../engine/takeoff/place-of-runs.ts';
import { joints, materials } from '../../tables/pipe/names.ts';
import { partGroups, partKinds } from '../../tables/takeoff/part-kinds.ts';
import { csvText } from './csv-text.ts';

const head = [
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
  'currency',
  'price book',
];

/** The take-off as CSV, one line of it a row. Sizes carry their unit, so that no spreadsheet takes 3/4 for a day. */
export function takeOffCsv(job: Job, { lines }: TakeOffPrice, book: PriceBook): string {
  const from = `${book.invented ? 'INVENTED: ' : ''}${book.name}`;
  const rows = lines.map((priced) => {
    const { article, quantity, unit, phase, area, service, from: origins } = priced.line;
    const { kind, sizes, material, joint, to, type, ports } = article;
    const known = priced.price === 'known';
    return [
      partGroups[partKinds[kind].group],
      partKinds[kind].label,
      sizes.map(sizeText).join(' x '),
      material === undefined ? '' : materials[material],
      joint === undefined ? '' : joints[joint],
      to === undefined ? '' : `${materials[to.material]} with ${joints[to.joint]}`,
      type ?? '',
      ports ?? '',
      quantity.toNumber(),
      unit,
      phase,
      areaText(job, area),
      service,
      origins.map(({ runs, quantity: part }) => `${runs.join('+')}: ${part}`).join('; '),
      known ? priced.each.toNumber() : '',
      known ? priced.cents / 100 : priced.price,
      book.currency,
      from,
    ];
  });
  return csvText([head, ...rows]);
}

/** An arrester's size is a letter, all others are inches. */
function sizeText(size: string): string {
  return /^\d/.test(size) ? `${size} in` : size;
}

/** An area by its name. */
function areaText({ levels }: Job, area: Area): string {
  if (area.area !== 'level') return area.area;
  return levels.find(({ id }) => id === area.level)?.name ?? area.level;
}
