import { readFileSync } from 'node:fs';

export type CsvRow = Readonly<Record<string, string>>;

/** A transcription that stands beside this file: comment lines begin with '#', no cell holds a comma. */
export function readCsv(name: string): CsvRow[] {
  const lines = readFileSync(new URL(name, import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
  const [head, ...body] = lines.map((line) => line.split(','));
  return body.map((cells) => {
    if (cells.length !== head!.length)
      throw new Error(`${name}: ${cells.join()} has not ${head!.length} cells`);
    return Object.fromEntries(head!.map((column, at) => [column, cells[at]!]));
  });
}

/** A cell as a number; a blank is undefined, anything else that is no number throws. */
export function cell(row: CsvRow, column: string): number | undefined {
  const text = row[column];
  if (text === undefined) throw new Error(`no column ${column}`);
  if (text === '') return undefined;
  const value = Number(text);
  if (Number.isNaN(value)) throw new Error(`${column}: ${text} is no number`);
  return value;
}
