import { spreadsheetText } from './spreadsheet-text.ts';

/** What a spreadsheet shows in one field: numbers stay numbers. */
export type Field = string | number;

/**
 * Rows as CSV by RFC 4180: fields with commas, quotes or line breaks in quotes, lines ended by CR LF. Text is held to
 * what no spreadsheet runs as a formula; numbers stay as they are.
 */
export function csvText(rows: readonly (readonly Field[])[]): string {
  return rows.map((row) => `${row.map(csvField).join(',')}\r\n`).join('');
}

/** Before a CSV file that is opened by hand: without it many spreadsheets take UTF-8 for an older code page. */
export const byteOrderMark = '\ufeff';

function csvField(value: Field): string {
  if (typeof value === 'number') return `${value}`;
  const text = spreadsheetText(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
