import type { MaterialId } from '../../tables/pipe/names.ts';
import { nominalSizes } from '../../tables/pipe/nominal-size.ts';
import { stockLengths } from '../../tables/pipe/stock-lengths.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { metricSize } from '../hydraulics/nominal-inches.ts';
import type { StockLength } from './cut-stock-model.ts';
import { toCutUnits } from './cut-stock-unit.ts';

/**
 * The sticks and coils in which a pipe is usually sold, by the table of stock lengths, the shortest first; lengths in
 * cut units, without prices. Empty where the table has none for the size.
 *
 * @param form only sticks, or only coils
 */
export function usualStock(material: MaterialId, size: string, form?: StockLength['form']): StockLength[] {
  const { columns, rows } = stockLengths[material];
  // Metric pipe is listed by its outside diameter.
  const named = columns.from === 'mm' ? metricSize(size)?.outside : nominalSizes[size];
  if (named === undefined) return [];
  return Object.entries(rows)
    .flatMap(([name, { values }]): StockLength[] => {
      const { length, from, to } = values;
      if (length === undefined || from === undefined || to === undefined || named < from || named > to)
        return [];
      return [
        {
          length: toCutUnits(toSI(length, columns.length)),
          form: name.startsWith('coil') ? 'coil' : 'stick',
        },
      ];
    })
    .filter((one) => form === undefined || one.form === form)
    .sort((one, other) => one.length - other.length);
}
