/**
 * Rows as CSV by RFC 4180: fields with commas, quotes or line breaks in quotes, lines ended by CR LF. A text that a
 * spreadsheet would run as a formula gets an apostrophe before it; numbers stay as they are.
 */
export function csvText(rows: readonly (readonly (string | number)[])[]): string {
  return rows.map((row) => `${row.map(csvField).join(',')}\r\n`).join('');
}

function csvField(value: string | number): string {
  if (typeof value === 'number') return `${value}`;
  const text = /^[\s]*[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
