/** Bounds of a table: far above any price book, low enough that a hostile file is refused before it costs much. */
export const csvLimits = { rows: 80_000, columns: 40, fieldLength: 1000 } as const;

export interface CsvRow {
  /** Line of the file on which the row starts, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
  /** How many characters of the text are read. */
  readonly read: number;
}

/** A table that cannot be read on: where, and why in one sentence. */
export class CsvFault extends Error {
  readonly line: number;

  constructor(line: number, sentence: string) {
    super(`Line ${line}: ${sentence}`);
    this.line = line;
  }
}

/**
 * The rows of a table as text (RFC 4180), one after the other; lines may end with CR LF, LF or CR, and blank lines are
 * passed over.
 *
 * @param separator the sign between cells
 * @throws a {@link CsvFault} where quotes do not match or a bound is passed; what follows cannot be trusted
 */
export function* readCsv(text: string, separator: ',' | ';' = ','): Generator<CsvRow, void, undefined> {
  let at = 0;
  let line = 1;
  let rows = 0;
  while (at < text.length) {
    const start = line;
    const cells: string[] = [];
    let ended = false;
    while (!ended) {
      const cell =
        text[at] === '"' ? quotedCell(text, at, line, separator) : bareCell(text, at, line, separator);
      cells.push(cell.text);
      if (cells.length > csvLimits.columns) {
        throw new CsvFault(start, `it has more than the ${csvLimits.columns} cells that a line may have.`);
      }
      line += cell.breaks;
      at = cell.end;
      if (text[at] === separator) {
        at++;
        continue;
      }
      ended = true;
      if (at < text.length) {
        at += text[at] === '\r' && text[at + 1] === '\n' ? 2 : 1;
        line++;
      }
    }
    if (cells.length === 1 && cells[0]!.trim() === '') continue;
    rows++;
    if (rows > csvLimits.rows) {
      throw new CsvFault(start, `the file has more than ${csvLimits.rows} lines; expected a file of fewer.`);
    }
    yield { line: start, cells, read: at };
  }
}

interface Cell {
  readonly text: string;
  readonly end: number;
  readonly breaks: number;
}

function bareCell(text: string, start: number, line: number, separator: string): Cell {
  let end = start;
  while (end < text.length) {
    const sign = text[end];
    if (sign === separator || sign === '\n' || sign === '\r') break;
    if (sign === '"') {
      throw new CsvFault(
        line,
        'a quote stands inside a cell; expected the whole cell in quotes, and a quote in it written twice.',
      );
    }
    end++;
    if (end - start > csvLimits.fieldLength) throw tooLong(line);
  }
  return { text: text.slice(start, end), end, breaks: 0 };
}

function quotedCell(text: string, start: number, line: number, separator: string): Cell {
  let found = '';
  let from = start + 1;
  for (;;) {
    const quote = text.indexOf('"', from);
    if (quote < 0 || found.length + quote - from > csvLimits.fieldLength) {
      if (quote < 0 && found.length + text.length - from <= csvLimits.fieldLength) {
        throw new CsvFault(line, 'a quote is opened and never closed.');
      }
      throw tooLong(line);
    }
    found += text.slice(from, quote);
    if (text[quote + 1] === '"') {
      found += '"';
      from = quote + 2;
      continue;
    }
    const after = text[quote + 1];
    if (after !== undefined && after !== separator && after !== '\n' && after !== '\r') {
      throw new CsvFault(
        line,
        'text stands behind a closing quote; expected a quote inside a cell written twice.',
      );
    }
    return { text: found, end: quote + 1, breaks: found.match(/\r\n|\n|\r/g)?.length ?? 0 };
  }
}

function tooLong(line: number): CsvFault {
  return new CsvFault(
    line,
    `a cell has more than ${csvLimits.fieldLength} characters; a quote may have been left open.`,
  );
}
