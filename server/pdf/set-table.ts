import type { SheetColumn, SheetRow, SheetTable } from '../../views/sheet.ts';
import { columnWidths } from './column-widths.ts';
import type { Flow, Piece } from './flow.ts';
import { line, type Mark, type Measure, moved, type TextStyle, text } from './marks.ts';
import { linesOf } from './set-text.ts';
import { styles } from './styles.ts';
import { wrap } from './wrap.ts';

interface Grid {
  readonly columns: readonly SheetColumn[];
  readonly widths: readonly number[];
  readonly starts: readonly number[];
  readonly room: number;
  readonly measure: Measure;
}

/** Between two columns. */
const gutter = 8;
const above = 2.2;
const below = 1.8;

/** Lines of one cell at most; what is over goes on in a row behind, so that no row is higher than a page. */
const mostLines = 40;

/**
 * A table: its title if it has one, its head over a rule, a hair line under each row, figures to the right. Where it is broken over
 * pages the head stands again, with the title and `continued`.
 */
export function setTable(table: SheetTable, room: number, measure: Measure): Flow {
  const grid = gridOf(table, room, measure);
  const rows = table.rows.flatMap((row) => setRow(row, grid));
  const head = setHead(grid);
  const title = titled(table.title, room, measure);
  const note = table.note === '' ? [] : noteUnder(table.note, room, measure);
  const last = rows.length - 1;
  const pieces = rows.map((row, at): Piece => {
    const tied = row.tied === true || at === 0 || at === last - 1 || (at === last && note.length > 0);
    return { ...row, tied: tied && !(at === last && note.length === 0) };
  });
  return {
    pieces: [...title, { ...head, tied: true }, ...pieces, ...note],
    whole: true,
    again: joined([...titled(`${table.title}, continued`, room, measure), head]),
    before: 10,
  };
}

function titled(title: string, room: number, measure: Measure): Piece[] {
  if (title === '') return [];
  return linesOf(title, styles.heading, room, measure).map((piece) => ({ ...piece, tied: true }));
}

function noteUnder(note: string, room: number, measure: Measure): Piece[] {
  const lines = linesOf(note, styles.note, room, measure);
  return [
    { height: 3, marks: [], tied: true },
    ...lines.map((piece, at) => ({ ...piece, tied: at < lines.length - 1 })),
  ];
}

function joined(pieces: readonly Piece[]): Piece {
  let y = 0;
  const marks: Mark[] = [];
  for (const piece of pieces) {
    marks.push(...piece.marks.map((mark) => moved(mark, 0, y)));
    y += piece.height;
  }
  return { height: y, marks, tied: true };
}

function gridOf({ columns, rows }: SheetTable, room: number, measure: Measure): Grid {
  const plain = rows.filter(({ kind }) => kind !== 'group');
  const needs = columns.map(({ head, align }, at) => {
    const cells = plain.map(({ cells, kind }) => [cells[at] ?? '', styleOf(kind)] as const);
    const widestOf = (texts: readonly (readonly [string, TextStyle])[]): number =>
      texts.reduce((most, [words, style]) => Math.max(most, measure(words, style)), 0);
    const words = (text: string): string[] => text.split(/ |(?<=\p{Ll}{2}[-/–])(?=\p{Ll}{2})/u);
    const longest = widestOf(
      cells.flatMap(([text, style]) => words(text).map((word) => [word, style] as const)),
    );
    const headed = widestOf(words(head).map((word) => [word, styles.head] as const));
    const left = align === 'left';
    return {
      widest: Math.max(widestOf(cells), headed),
      // A figure is never broken from its unit; words may be, down to the longest of them.
      least: left ? Math.max(Math.min(longest, 90), headed) : Math.max(widestOf(cells), headed),
      words: left,
    };
  });
  const widths = columnWidths(needs, room - gutter * (columns.length - 1));
  let x = 0;
  const starts = widths.map((width) => {
    const start = x;
    x += width + gutter;
    return start;
  });
  return { columns, widths, starts, room, measure };
}

function styleOf(kind: SheetRow['kind']): TextStyle {
  return kind === 'plain' ? styles.cell : styles.strong;
}

function setHead(grid: Grid): Piece {
  const cells = grid.columns.map(({ head }, at) => broken(head, grid, at, styles.head));
  const most = Math.max(...cells.map(({ length }) => length));
  const marks = cells.flatMap((lines, at) =>
    lines.flatMap((words, row) => cellMark(grid, at, words, styles.head, row + most - lines.length, above)),
  );
  const height = above + most * styles.head.lead + below;
  return { height: height + 1.5, marks: [...marks, line(0, height, grid.room, height, 0.7, 'ink')] };
}

function setRow(row: SheetRow, grid: Grid): Piece[] {
  const style = styleOf(row.kind);
  if (row.kind === 'group') return [setGroup(row.cells[0] ?? '', grid)];
  const cells = row.cells.map((words, at) => broken(words, grid, at, style));
  const most = Math.max(...cells.map(({ length }) => length));
  const pieces: Piece[] = [];
  for (let from = 0; from < most; from += mostLines) {
    const shown = cells.map((lines) => lines.slice(from, from + mostLines));
    const lines = Math.min(mostLines, most - from);
    const marks = shown.flatMap((part, at) =>
      part.flatMap((words, index) => cellMark(grid, at, words, style, index, above)),
    );
    const height = above + lines * style.lead + below;
    const rule = line(0, height, grid.room, height, 0.3, 'rule');
    const sum: Mark[] = row.kind === 'total' ? [line(0, 0, grid.room, 0, 0.5, 'ink')] : [];
    pieces.push({ height, marks: [...marks, rule, ...sum] });
  }
  return pieces;
}

/** A title between rows, over the whole width, which stays with the row below it. */
function setGroup(title: string, grid: Grid): Piece {
  const lines = wrap(title, grid.room, (part) => grid.measure(part, styles.strong));
  const gap = 5;
  const height = gap + above + lines.length * styles.strong.lead + below;
  const marks = lines.map((words, at) =>
    text(0, gap + above + baseline(styles.strong, at), words, styles.strong),
  );
  return { height, marks: [...marks, line(0, height, grid.room, height, 0.3, 'rule')], tied: true };
}

function broken(words: string, grid: Grid, column: number, style: TextStyle): string[] {
  // A hair more than measured: sums of widths differ from the width of a sum.
  return wrap(words, grid.widths[column]! + 0.01, (part) => grid.measure(part, style));
}

function baseline(style: TextStyle, row: number): number {
  return row * style.lead + style.size;
}

function cellMark(
  grid: Grid,
  column: number,
  words: string,
  style: TextStyle,
  row: number,
  y: number,
): Mark[] {
  if (words === '') return [];
  const start = grid.starts[column]!;
  const right = grid.columns[column]!.align === 'right';
  const x = right ? start + grid.widths[column]! - grid.measure(words, style) : start;
  return [text(x, y + baseline(style, row), words, style)];
}
