import { type CsvRow, cell, readCsv } from '../../tables/second-reading/read-csv.ts';

/** One of the printed tables that stand beside this file, each with its source in its first lines. */
export function readData(name: string): CsvRow[] {
  return readCsv(`../../published/data/${name}`);
}

/** A cell that must hold a number. */
export function numberIn(row: CsvRow, column: string): number {
  const value = cell(row, column);
  if (value === undefined) throw new Error(`no value at ${column}`);
  return value;
}

/** A cell that must hold a word. */
export function wordIn(row: CsvRow, column: string): string {
  const text = row[column];
  if (text === undefined || text === '') throw new Error(`no word at ${column}`);
  return text;
}
