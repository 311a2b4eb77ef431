import type { PriceBook } from '../../engine/takeoff/price-book.ts';
import { inline, rowsOf } from './json-layout.ts';

/**
 * A price book as the text of its file: JSON that a person can read and compare, each price on a line of its own,
 * fields always in one order, money as it was typed. `readPrices` gives the same book back.
 */
export function writePrices(book: PriceBook): string {
  const { format, version, name, note, invented, currency, effective, source } = book;
  const head = { format, version, name, note, invented, currency, effective, source };
  const lines = Object.entries(head)
    .filter(([, value]) => value !== undefined)
    .map(([field, value]) => `  "${field}": ${inline(value)}`);
  const lists = {
    pipe: book.pipe.map(({ material, size, perFoot, hoursPerFoot }) => {
      return { material, size, perFoot, hoursPerFoot };
    }),
    fittings: book.fittings.map(({ material, joint, kind, size, each, hours }) => {
      return { material, joint, kind, size, each, hours };
    }),
    devices: book.devices.map((price) => {
      const { device, size, each, hours } = price;
      if (price.device !== 'manifold') return { device, size, each, hours };
      const { valved, perPort, hoursPerPort } = price;
      return { device, size, valved, each, perPort, hours, hoursPerPort };
    }),
    ...(book.parts === undefined
      ? {}
      : {
          parts: book.parts.map(({ kind, material, joint, sizes, each, hours }) => {
            return { kind, material, joint, sizes, each, hours };
          }),
        }),
  };
  for (const [field, rows] of Object.entries(lists)) lines.push(`  "${field}": ${rowsOf(rows, '  ')}`);
  return `{\n${lines.join(',\n')}\n}\n`;
}
