import type { z } from 'zod';
import { metricSize } from '../../engine/hydraulics/nominal-inches.ts';
import { lineUnit, type PriceLine } from '../../engine/takeoff/price-line.ts';
import { shorten } from '../../engine/units/shorten.ts';
import { priceEntries } from '../document/schema-prices.ts';
import { tellIssue } from '../document/tell-issue.ts';
import { inventedMark, type PriceColumn } from './price-columns.ts';

export type Cells = Readonly<Record<PriceColumn, string>>;

export type ReadLine =
  | { readonly ok: true; readonly line: PriceLine }
  | { readonly ok: false; readonly problem: string };

/** The book into which lines are read, as far as they must agree with it. */
export interface LineTarget {
  readonly currency: string;
  readonly invented: boolean;
}

const common: readonly PriceColumn[] = ['item', 'size', 'unit', 'price', 'hours', 'currency', 'book'];
const columnsOf: Readonly<Record<string, ReadonlySet<PriceColumn>>> = {
  pipe: new Set([...common, 'material']),
  fitting: new Set([...common, 'kind', 'material', 'joint']),
  device: new Set([...common, 'kind']),
  manifold: new Set([...common, 'kind', 'valved', 'price per port', 'hours per port']),
  part: new Set([...common, 'kind', 'material', 'joint']),
};

/** Reads one row of a table of prices; what is wrong with it is one sentence that names the column. */
export function readPriceLine(cells: Cells, target: LineTarget): ReadLine {
  const item = cells.item.trim();
  const kind = cells.kind.trim();
  const used = columnsOf[item === 'device' && kind === 'manifold' ? 'manifold' : item];
  if (used === undefined || item === 'manifold') {
    return refuse(`item: ${came(item)}; expected pipe, fitting, device or part`);
  }
  for (const column of Object.keys(cells) as PriceColumn[]) {
    if (used.has(column) || cells[column].trim() === '') continue;
    return refuse(`${column}: ${came(cells[column])}; expected nothing there for ${item} ${kind}`.trimEnd());
  }
  for (const column of ['price', 'hours', 'price per port', 'hours per port'] as const) {
    if (!used.has(column) || cells[column].trim() !== '') continue;
    return refuse(
      `${column} is empty, and a missing figure is never taken as zero; fill it in or leave the line out`,
    );
  }
  const date = /^\d{1,2}[-/ ]?[A-Za-z]{3}\b|^\d{4}-\d{2}-\d{2}/.exec(cells.size.trim());
  if (date !== null && kind !== 'other') {
    return refuse(
      `size: ${came(cells.size)}, a day that a spreadsheet made of a fraction; expected a size such as 3/4 in, in a column of text`,
    );
  }
  const currency = cells.currency.trim();
  if (currency !== '' && currency !== target.currency) {
    return refuse(`currency: ${came(currency)}; this book is in ${target.currency}`);
  }
  if (cells.book.startsWith(inventedMark.trim()) && !target.invented) {
    return refuse(
      'book: the line says that its price is invented, and this book is not; clear the cell where the price is your own',
    );
  }

  const read = readEntry(item, kind, cells);
  if (!read.ok) return read;
  const unit = cells.unit.trim();
  const own = lineUnit(read.line);
  return unit === '' || unit === own ? read : refuse(`unit: ${came(unit)}; this item is priced by ${own}`);
}

function readEntry(item: string, kind: string, cells: Cells): ReadLine {
  const material = cells.material.trim();
  const joint = cells.joint.trim();
  const size = withoutUnit(cells.size);
  const price = cells.price.trim();
  const hours = numberOf(cells.hours);
  switch (item) {
    case 'pipe':
      return check(
        priceEntries.pipe,
        { material, size, perFoot: price, hoursPerFoot: hours },
        cells,
        (read) => {
          return { list: 'pipe', price: read };
        },
      );
    case 'fitting':
      return check(
        priceEntries.fitting,
        { material, joint, kind, size, each: price, hours },
        cells,
        (read) => {
          return { list: 'fittings', price: read };
        },
      );
    case 'device': {
      const own = kind === 'other' ? cells.size : size;
      const valves = {
        valved: yesOrNo(cells.valved),
        perPort: cells['price per port'].trim(),
        hoursPerPort: numberOf(cells['hours per port']),
      };
      const raw = {
        device: kind,
        ...(own === '' ? {} : { size: own }),
        each: price,
        hours,
        ...(kind === 'manifold' ? valves : {}),
      };
      return check(priceEntries.device, raw, cells, (read) => ({ list: 'devices', price: read }));
    }
    default: {
      const raw = {
        kind,
        ...(material === '' ? {} : { material }),
        ...(joint === '' ? {} : { joint }),
        ...(size === '' ? {} : { sizes: sizesIn(size) }),
        each: price,
        hours,
      };
      return check(priceEntries.part, raw, cells, (read) => ({ list: 'parts', price: read }));
    }
  }
}

const money = 'expected digits, with a point and at most 4 decimals where it has any, such as 12.50';

const columnOfField: Readonly<Record<string, PriceColumn>> = {
  perFoot: 'price',
  each: 'price',
  hoursPerFoot: 'hours',
  perPort: 'price per port',
  hoursPerPort: 'hours per port',
  device: 'kind',
  sizes: 'size',
};

function check<Price>(
  schema: z.ZodType<Price>,
  raw: object,
  cells: Cells,
  line: (price: Price) => PriceLine,
): ReadLine {
  const read = schema.safeParse(raw);
  if (read.success) return { ok: true, line: line(read.data) };
  const told = read.error.issues.map((issue) => {
    if (issue.code === 'unrecognized_keys') {
      return `size: ${came(cells.size)}; this kind has no sizes, expected nothing there`;
    }
    const [field, ...rest] = issue.path;
    const column = columnOfField[String(field)] ?? String(field);
    if (column === 'price' || column === 'price per port')
      return `${column}: ${came(cells[column])}; ${money}`;
    const path = column === 'size' ? [column] : [column, ...rest];
    return tellIssue({ ...issue, path }, cells, 'line');
  });
  return refuse([...new Set(told)].join('; '));
}

/** Sizes stand apart by ` x `, those in inches by `x` alone as well; `20x2.8` is one size. */
function sizesIn(text: string): string[] {
  return text
    .split(/\s+x\s+/i)
    .flatMap((part) => (metricSize(withoutUnit(part)) === undefined ? part.split(/x/i) : [part]))
    .map(withoutUnit);
}

function withoutUnit(size: string): string {
  return size.trim().replace(/\s*(?:in\.?|mm|")$/, '');
}

/** A plain decimal as its number; anything else as it came, for the schema to refuse in words. */
function numberOf(cell: string): number | string {
  const text = cell.trim();
  return /^\d+(?:\.\d+)?(?:e[+-]?\d+)?$/i.test(text) ? Number(text) : text;
}

function yesOrNo(cell: string): boolean | string {
  const word = cell.trim().toLowerCase();
  if (word === 'yes' || word === 'true') return true;
  return word === 'no' || word === 'false' ? false : word;
}

function came(cell: string): string {
  return cell.trim() === '' ? 'nothing came' : `${shorten(cell.trim())} came`;
}

function refuse(problem: string): ReadLine {
  return { ok: false, problem };
}
