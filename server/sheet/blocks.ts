import type { SheetColumn, SheetParagraph, SheetRow, SheetTable } from '../../views/sheet.ts';

/** A column of words. */
export function words(head: string): SheetColumn {
  return { head, align: 'left' };
}

/** A column of figures. */
export function figures(head: string): SheetColumn {
  return { head, align: 'right' };
}

export function row(...cells: readonly string[]): SheetRow {
  return { cells, kind: 'plain' };
}

export function total(...cells: readonly string[]): SheetRow {
  return { cells, kind: 'total' };
}

export function group(title: string): SheetRow {
  return { cells: [title], kind: 'group' };
}

export function table(
  title: string,
  columns: readonly SheetColumn[],
  rows: readonly SheetRow[],
  note = '',
): SheetTable {
  return { is: 'table', title, columns, rows, note };
}

export function paragraph(text: string, tone: SheetParagraph['tone'] = 'plain'): SheetParagraph {
  return { is: 'paragraph', text, tone };
}
