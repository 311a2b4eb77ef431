import writeXlsxFile from 'write-excel-file/node';
import type { Field } from './csv-text.ts';
import { spreadsheetText } from './spreadsheet-text.ts';

/** One sheet of a workbook. */
export interface Sheet {
  /** At most 31 characters, none of [ ] / \ : * ? */
  readonly name: string;
  /** Stays in sight and is set in bold; none where the sheet is no table. */
  readonly head?: readonly string[];
  readonly rows: readonly (readonly Field[])[];
  /** Width of each column, in characters. */
  readonly widths: readonly number[];
}

/**
 * A workbook as the bytes of an XLSX file. Numbers are numbers, text is held to what no spreadsheet runs as a formula,
 * also after it was saved again as CSV, and loses the characters that XML does not allow.
 */
export async function xlsxFile(sheets: readonly Sheet[]): Promise<Buffer> {
  return await writeXlsxFile(
    sheets.map(({ name, head, rows, widths }) => ({
      sheet: name,
      stickyRowsCount: head === undefined ? 0 : 1,
      columns: widths.map((width) => ({ width })),
      data: [
        ...(head === undefined
          ? []
          : [head.map((text) => ({ ...textCell(text), fontWeight: 'bold' as const }))]),
        ...rows.map((row) => row.map(cellOf)),
      ],
    })),
  ).toBuffer();
}

function cellOf(field: Field) {
  return typeof field === 'number' ? { value: field, type: Number } : textCell(field);
}

function textCell(text: string) {
  const allowed = text.replace(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, '');
  return allowed === '' ? null : { value: spreadsheetText(allowed), type: String };
}
