import { nominalInches } from '../../engine/hydraulics/nominal-inches.ts';
import type { Job, PricedLine } from '../../engine/index.ts';
import { articleKey } from '../../engine/takeoff/article.ts';
import { phases } from '../../tables/takeoff/part-kinds.ts';
import type { TakeOffGroup, TakeOffGrouping, TakeOffRow } from '../../views/take-off.ts';
import { areaText } from './area-text.ts';
import { itemName } from './item-name.ts';

/**
 * The lines of a take-off in groups, one row an article in each. A row adds up the cents of its lines, so that rows,
 * groups and the whole have one sum.
 */
export function groupLines(
  job: Pick<Job, 'levels'>,
  lines: readonly PricedLine[],
  grouping: TakeOffGrouping,
): readonly TakeOffGroup[] {
  const groups = new Map<string, { place: number; lines: PricedLine[] }>();
  for (const priced of lines) {
    const { title, place } = groupOf(job, priced, grouping);
    const group = groups.get(title);
    if (group === undefined) groups.set(title, { place, lines: [priced] });
    else group.lines.push(priced);
  }
  return [...groups]
    .sort(([, one], [, other]) => one.place - other.place)
    .map(([title, group]) => groupRows(title, group.lines));
}

/** The title of a line's group, and the group's place among the others. */
function groupOf(
  job: Pick<Job, 'levels'>,
  { line }: PricedLine,
  grouping: TakeOffGrouping,
): { readonly title: string; readonly place: number } {
  switch (grouping) {
    case 'size':
      return sizeGroup(line.article.sizes);
    case 'area': {
      const { area } = line;
      if (area.area === 'outdoors') return { title: 'Outdoors', place: -2 };
      if (area.area === 'whole') return { title: 'The whole job', place: -1 };
      const title = areaText(job, area);
      return { title: `Level ${title}`, place: job.levels.findIndex(({ id }) => id === area.level) };
    }
    case 'phase': {
      const title = { underground: 'Underground', 'rough-in': 'Rough-in', trim: 'Trim' }[line.phase];
      return { title, place: Object.keys(phases).indexOf(line.phase) };
    }
  }
}

/** A part of several sizes is listed under the largest; arresters have letters, plates and gauges no size. */
function sizeGroup(sizes: readonly string[]): { readonly title: string; readonly place: number } {
  const inches = (size: string): number => nominalInches(size);
  const largest = sizes.reduce((best, size) => (inches(size) > inches(best) ? size : best), sizes[0] ?? '');
  const place = inches(largest);
  return place > 0 ? { title: `${largest} in`, place } : { title: 'Without a diameter', place: 1e6 };
}

function groupRows(title: string, lines: readonly PricedLine[]): TakeOffGroup {
  const rows = new Map<string, TakeOffRow>();
  for (const priced of lines) {
    const key = articleKey(priced.line.article);
    const before = rows.get(key);
    rows.set(key, before === undefined ? rowOf(priced) : added(before, priced));
  }
  const all = [...rows.values()];
  const known = all.flatMap(({ price }) => (typeof price === 'string' ? [] : [price]));
  return {
    title,
    rows: all,
    cents: known.reduce((sum, { cents }) => sum + cents, 0),
    hours: known.reduce((sum, { hours }) => sum + hours, 0),
    missing: all.filter(({ price }) => price === 'missing').length,
  };
}

function rowOf(priced: PricedLine): TakeOffRow {
  const { article, unit, quantity } = priced.line;
  const known = priced.price === 'known';
  return {
    item: itemName(article),
    each: known ? priced.each.toNumber() : undefined,
    unit,
    quantity,
    price: known ? { cents: priced.cents, hours: priced.hours } : priced.price,
  };
}

/** Lines of one article have one price, or all have none. */
function added(row: TakeOffRow, priced: PricedLine): TakeOffRow {
  const quantity = row.quantity.plus(priced.line.quantity);
  if (typeof row.price === 'string' || priced.price !== 'known') return { ...row, quantity };
  const { cents, hours } = row.price;
  return { ...row, quantity, price: { cents: cents + priced.cents, hours: hours + priced.hours } };
}
