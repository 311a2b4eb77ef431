import { setImmediate } from 'node:timers/promises';
import { lineKey, lineName, type PriceLine } from '../../engine/takeoff/price-line.ts';
import { shorten } from '../../engine/units/shorten.ts';
import { CsvFault, type CsvRow, csvLimits, readCsv } from '../spreadsheet/read-csv.ts';
import { typedText } from '../spreadsheet/spreadsheet-text.ts';
import { type PriceColumn, priceColumns } from './price-columns.ts';
import { type Cells, type LineTarget, readPriceLine } from './read-price-line.ts';

/** A line that is not read, and why, in one sentence. */
export interface BadLine {
  readonly line: number;
  readonly why: string;
}

export interface ReadTable {
  readonly lines: readonly PriceLine[];
  readonly bad: readonly BadLine[];
  /** Headings of columns that a price book does not have. */
  readonly passedOver: readonly string[];
}

export type TableResult =
  | ({ readonly ok: true } & ReadTable)
  | { readonly ok: false; readonly problem: string };

/** How far the reading is, from 0 to 1. */
export type Progress = (share: number, lines: number) => void;

const columns = Object.keys(priceColumns) as PriceColumn[];
const needed: readonly PriceColumn[] = ['item', 'price', 'hours'];
const blank = Object.fromEntries(columns.map((column) => [column, ''])) as Record<PriceColumn, string>;

/** Rows read before others may have their turn. */
const turn = 250;

/**
 * Reads a table of prices: a row of headings, then one price a row. A row that is wrong is told and left out; a file
 * that is no such table, or is not to be trusted from some line on, is refused as a whole.
 */
export async function readPriceTable(
  text: string,
  target: LineTarget,
  progress: Progress = () => {},
): Promise<TableResult> {
  const lines: PriceLine[] = [];
  const bad: BadLine[] = [];
  const firsts = new Map<string, number>();
  let heading: Heading | undefined;
  let rows = 0;
  try {
    for (const row of readCsv(text, separatorOf(text))) {
      if (heading === undefined) {
        heading = readHeading(row);
        continue;
      }
      if (++rows % turn === 0) {
        progress(row.read / text.length, rows);
        await setImmediate();
      }
      const read = readRow(row, heading, target);
      if (!read.ok) {
        bad.push({ line: row.line, why: read.problem });
        continue;
      }
      const key = lineKey(read.line);
      const first = firsts.get(key);
      if (first !== undefined) {
        bad.push({ line: row.line, why: `${lineName(read.line)} is priced on line ${first} already` });
        continue;
      }
      firsts.set(key, row.line);
      lines.push(read.line);
    }
  } catch (error) {
    if (error instanceof CsvFault)
      return { ok: false, problem: `${error.message} Nothing of the file was read.` };
    throw error;
  }
  if (heading === undefined || rows === 0) {
    return {
      ok: false,
      problem: 'The file holds no line of prices; expected a line of headings and lines below it.',
    };
  }
  return { ok: true, lines, bad, passedOver: heading.passedOver };
}

interface Heading {
  readonly places: readonly (PriceColumn | undefined)[];
  readonly passedOver: readonly string[];
}

/** A semicolon where the headings have no comma, as spreadsheets write it that use the comma for decimals. */
function separatorOf(text: string): ',' | ';' {
  const [first = ''] = /^[^\r\n]*/.exec(text.slice(0, csvLimits.columns * csvLimits.fieldLength)) ?? [];
  return first.includes(';') && !first.includes(',') ? ';' : ',';
}

function readHeading({ line, cells }: CsvRow): Heading {
  const passedOver: string[] = [];
  const places = cells.map((cell) => {
    const name = cell.trim().toLowerCase();
    const known = columns.find((column) => column === name);
    if (known === undefined) passedOver.push(shorten(cell.trim()));
    return known;
  });
  for (const column of columns) {
    const times = places.filter((place) => place === column).length;
    if (times > 1) throw new CsvFault(line, `the heading ${column} stands ${times} times; expected it once.`);
    if (times === 0 && needed.includes(column)) {
      throw new CsvFault(
        line,
        `there is no heading ${column}; expected a line of headings with at least ${needed.join(', ')}.`,
      );
    }
  }
  return { places, passedOver };
}

function readRow({ cells }: CsvRow, { places }: Heading, target: LineTarget) {
  if (cells.length !== places.length) {
    const why = `it has ${cells.length} cells under ${places.length} headings; a cell with a comma must stand in quotes`;
    return { ok: false, problem: why } as const;
  }
  const named: Record<PriceColumn, string> = { ...blank };
  places.forEach((column, at) => {
    if (column !== undefined) named[column] = typedText(cells[at]!);
  });
  return readPriceLine(named satisfies Cells, target);
}
