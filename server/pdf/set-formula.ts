import type { SheetFormula } from '../../views/sheet.ts';
import type { Flow, Piece } from './flow.ts';
import { type Measure, moved } from './marks.ts';
import { setTable } from './set-table.ts';
import { linesOf } from './set-text.ts';
import { styles } from './styles.ts';

/** A formula as it is printed, the same with numbers, what its symbols are and where they come from, and its source. */
export function setFormula(formula: SheetFormula, room: number, measure: Measure): Flow {
  const { title, step, printed, arithmetic, result, terms, source } = formula;
  const indent = 12;
  const set = (words: string, style: (typeof styles)[keyof typeof styles], inset: number): Piece[] =>
    linesOf(words, style, room, measure, inset).map((piece) => ({ ...piece, tied: true }));
  const table = setTable(
    {
      is: 'table',
      title: '',
      columns: [
        { head: 'Symbol', align: 'left' },
        { head: 'Value', align: 'right' },
        { head: 'What it is', align: 'left' },
        { head: 'Where it comes from', align: 'left' },
      ],
      rows: terms.map(({ symbol, value, meaning, origin }) => ({
        cells: [symbol, value, meaning, origin],
        kind: 'plain',
      })),
      note: '',
    },
    room - indent,
    measure,
  );
  const rows = table.pieces.map((piece) => ({
    ...piece,
    marks: piece.marks.map((mark) => moved(mark, indent, 0)),
  }));
  const last = rows.length - 1;
  const pieces: Piece[] = [
    ...set(`${title}, here for ${step}`, styles.heading, 0),
    ...set(printed, styles.formula, indent),
    ...set(`= ${arithmetic} = ${result}`, styles.formula, indent),
    ...rows.map((row, at) => (at === last ? { ...row, tied: true } : row)),
    { height: 3, marks: [], tied: true },
    ...linesOf(source, styles.note, room, measure, indent),
  ];
  return { pieces, whole: true, before: 12 };
}
