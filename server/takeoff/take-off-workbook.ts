import type { Job, PriceBook, UnitSystem } from '../../engine/index.ts';
import { type CutPlan, cutPipe, type PipeCuts } from '../../engine/takeoff/cut-pipe.ts';
import { fromCutUnits } from '../../engine/takeoff/cut-stock-unit.ts';
import { materials } from '../../tables/pipe/names.ts';
import { questionText } from '../../views/text/question-text.ts';
import { sizeUnit } from '../../views/text/size-text.ts';
import type { Field } from '../spreadsheet/csv-text.ts';
import type { Sheet } from '../spreadsheet/xlsx-file.ts';
import { lengthIn, unitIn } from './in-units.ts';
import { itemName } from './item-name.ts';
import { bookName, takeOffHead, takeOffRows } from './take-off-rows.ts';
import type { PricedTakeOff } from './take-off-scheme.ts';

const cutHead = (unit: string) => [
  'material',
  'size',
  'length no.',
  'form',
  `length ${unit}`,
  'run',
  'part',
  `cut ${unit}`,
  `off-cut ${unit}`,
];

const boughtHead = (unit: string) => [
  'material',
  'size',
  'form',
  `length ${unit}`,
  'count',
  `bought ${unit}`,
];

/** A take-off as a workbook: what it comes to, its lines, the lengths of pipe that are bought, and their cuts. */
export function takeOffWorkbook(
  job: Job,
  one: PricedTakeOff,
  book: PriceBook,
  plan: CutPlan,
): readonly Sheet[] {
  const pipes = cutPipe(one.taken, plan);
  const { units } = job;
  const unit = unitIn('ft', units);
  return [
    { name: 'Summary', rows: summaryRows(job, one, book), widths: [24, 70] },
    {
      name: 'Take-off',
      head: takeOffHead,
      rows: takeOffRows(job, one.priced, book),
      widths: [22, 26, 20, 18, 22, 22, 12, 7, 10, 7, 13, 16, 10, 30, 11, 11, 10, 10, 30],
    },
    {
      name: 'Pipe lengths',
      head: boughtHead(unit),
      rows: pipes.flatMap((pipe) => boughtRows(pipe, units)),
      widths: [18, 9, 8, 11, 8, 11],
    },
    {
      name: 'Pipe cuts',
      head: cutHead(unit),
      rows: pipes.flatMap((pipe) => cutRows(pipe, units)),
      widths: [18, 9, 11, 8, 11, 16, 9, 11, 11],
    },
  ];
}

function summaryRows(
  job: Job,
  { taken, priced }: PricedTakeOff,
  book: PriceBook,
): readonly (readonly Field[])[] {
  const { currency, effective, source, invented } = book;
  const { total } = priced;
  return [
    ['Job', job.name],
    ['Scheme', `${taken.scheme.name} (${taken.scheme.id})`],
    ['Price book', bookName(book)],
    ...(invented ? [['', 'Every price here is made up; none may stand in a bid.']] : []),
    ['Prices from', effective],
    ['Source of prices', source],
    ['Currency', currency],
    ['Total', total === undefined ? 'none: prices are missing' : total.toNumber()],
    ['Lines with a price', priced.priced.toNumber()],
    ['Labor h', priced.hours],
    ['Left out', 'tax, overhead, waste of pipe, and fixtures'],
    ['Rounding', 'each line to whole cents, half a cent going up; then added'],
    ...priced.missing.map((article) => ['No price', itemName(article)]),
    ...taken.questions.map((question) => ['Question', questionText(question)]),
  ];
}

function boughtRows({ material, size, cut }: PipeCuts, system: UnitSystem): readonly (readonly Field[])[] {
  if (cut.is !== 'packed' && cut.is !== 'allowed') return [];
  const { counts } = cut.is === 'packed' ? cut.packing.totals : cut.allowance;
  return counts.map(({ stock, count }) => [
    materials[material],
    `${size} ${sizeUnit(size)}`,
    stock.form,
    inUnits(stock.length, system),
    count,
    inUnits(stock.length * count, system),
  ]);
}

function cutRows({ material, size, cut }: PipeCuts, system: UnitSystem): readonly (readonly Field[])[] {
  if (cut.is !== 'packed') return [];
  return cut.packing.sticks.flatMap(({ stock, cuts, offCut }, at) =>
    cuts.map(({ id, part, parts, length }, place) => [
      materials[material],
      `${size} ${sizeUnit(size)}`,
      at + 1,
      stock.form,
      inUnits(stock.length, system),
      id,
      parts === 1 ? 'whole' : `${part} of ${parts}`,
      inUnits(length, system),
      place === cuts.length - 1 ? inUnits(offCut, system) : '',
    ]),
  );
}

/** Cut units as feet or metres, to the thousandth: a cut unit is a twenty-five-thousandth of a foot. */
function inUnits(cutUnits: number, system: UnitSystem): number {
  return lengthIn(fromCutUnits(cutUnits), system);
}
