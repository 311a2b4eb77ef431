import type { PriceBook } from '../../engine/takeoff/price-book.ts';
import {
  isManifold,
  lineFigures,
  lineUnit,
  type PriceLine,
  priceLines,
} from '../../engine/takeoff/price-line.ts';
import { sizeUnit } from '../../views/text/size-text.ts';
import { csvText } from '../spreadsheet/csv-text.ts';
import { inventedMark, type PriceColumn, priceColumns } from './price-columns.ts';

/** A price book as CSV, one price a row; reading it gives every price back. */
export function pricesCsv(book: PriceBook): string {
  const from = `${book.invented ? inventedMark : ''}${book.name}`;
  const columns = Object.keys(priceColumns) as PriceColumn[];
  const rows = priceLines(book).map((line) => {
    const { money, hours, ports } = lineFigures(line);
    const cells: Partial<Record<PriceColumn, string | number>> = {
      ...itemCells(line),
      unit: lineUnit(line),
      price: money,
      hours,
      currency: book.currency,
      book: from,
      ...(ports === undefined ? {} : { 'price per port': ports.money, 'hours per port': ports.hours }),
    };
    return columns.map((column) => cells[column] ?? '');
  });
  return csvText([columns, ...rows]);
}

function itemCells(line: PriceLine): Partial<Record<PriceColumn, string>> {
  switch (line.list) {
    case 'pipe':
      return { item: 'pipe', material: line.price.material, size: withUnit(line.price.size) };
    case 'fittings': {
      const { kind, material, joint, size } = line.price;
      return { item: 'fitting', kind, material, joint, size: withUnit(size) };
    }
    case 'devices': {
      const { price } = line;
      const { device: kind, size = '' } = price;
      // The size of another device is its name, and stands as it was typed.
      const shown = kind === 'other' ? size : withUnit(size);
      return {
        item: 'device',
        kind,
        size: shown,
        ...(isManifold(price) ? { valved: price.valved ? 'yes' : 'no' } : {}),
      };
    }
    case 'parts': {
      const { kind, material = '', joint = '', sizes = [] } = line.price;
      return { item: 'part', kind, material, joint, size: sizes.map(withUnit).join(' x ') };
    }
  }
}

/** With its unit, so that no spreadsheet takes 3/4 for a day; words and letters stay as they are. */
function withUnit(size: string): string {
  return /^\d/.test(size) ? `${size} ${sizeUnit(size)}` : size;
}
