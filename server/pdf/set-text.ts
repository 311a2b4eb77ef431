import type { SheetParagraph } from '../../views/sheet.ts';
import type { Flow, Piece } from './flow.ts';
import { line, type Mark, type Measure, moved, type TextStyle, text } from './marks.ts';
import { styles } from './styles.ts';
import { wrap } from './wrap.ts';

/** Lines of text, each a piece; the first and the last two stay together. */
export function linesOf(
  words: string,
  style: TextStyle,
  room: number,
  measure: Measure,
  indent = 0,
): readonly Piece[] {
  const lines = wrap(words, room - indent, (part) => measure(part, style));
  return lines.map((one, at) => ({
    height: style.lead,
    marks: [text(indent, style.lead - (style.lead - style.size) / 2 - style.size * 0.18, one, style)],
    tied: at === 0 ? lines.length > 1 : at === lines.length - 2,
  }));
}

const toneStyles = {
  plain: styles.body,
  answer: styles.answer,
  caution: styles.body,
  note: styles.note,
} as const satisfies Record<SheetParagraph['tone'], TextStyle>;

/** A paragraph; a caution has a bar beside it, which no copier loses as it would a colour. */
export function setParagraph(paragraph: SheetParagraph, room: number, measure: Measure): Flow {
  const { tone } = paragraph;
  const indent = tone === 'caution' ? 10 : 0;
  const lines = linesOf(paragraph.text, toneStyles[tone], room, measure, indent);
  const pieces = tone === 'caution' ? lines.map(barred) : lines;
  return { pieces, whole: tone === 'caution', before: tone === 'note' ? 3 : 6 };
}

function barred(piece: Piece): Piece {
  return { ...piece, marks: [...piece.marks, line(1.5, 0, 1.5, piece.height, 2, 'accent')] };
}

/** A list with a dash before each item. */
export function setList(items: readonly string[], room: number, measure: Measure): Flow {
  const pieces = items.flatMap((item) => {
    const [first, ...others] = linesOf(item, styles.value, room, measure, 12);
    const dash: Mark = text(2, first!.height - 3.6, '–', styles.name);
    const lines = [{ ...first!, marks: [dash, ...first!.marks] }, ...others];
    return [...lines.slice(0, -1), { ...lines.at(-1)!, height: lines.at(-1)!.height + 1.5 }];
  });
  return { pieces, whole: false, before: 4 };
}

const nameWidth = 132;

/** Names to the left, what they are to the right. */
export function setFacts(
  rows: readonly (readonly [name: string, value: string])[],
  room: number,
  measure: Measure,
): Flow {
  const pieces = rows.map(([name, value]): Piece => {
    const names = linesOf(name, styles.name, nameWidth - 10, measure);
    const values = linesOf(value, styles.value, room, measure, nameWidth);
    const height = Math.max(names.length, values.length) * styles.value.lead + 2;
    return { height, marks: [...stacked(names), ...stacked(values)] };
  });
  return { pieces, whole: true, before: 4 };
}

/** Marks of lines one below the other. */
export function stacked(lines: readonly Piece[]): Mark[] {
  let y = 0;
  return lines.flatMap((piece) => {
    const marks = piece.marks.map((mark) => moved(mark, 0, y));
    y += piece.height;
    return marks;
  });
}

/** Lines to write on, three in a row, each with its name below. */
export function setBlanks(labels: readonly string[], room: number): Flow {
  const gap = 18;
  const shares = [0.46, 0.3, 0.24] as const;
  const pieces: Piece[] = [];
  for (let at = 0; at < labels.length; at += shares.length) {
    let x = 0;
    const marks = labels.slice(at, at + shares.length).flatMap((label, place): Mark[] => {
      const width = shares[place]! * (room - gap * (shares.length - 1));
      const start = x;
      x += width + gap;
      return [line(start, 34, start + width, 34, 0.6, 'ink'), text(start, 44, label, styles.running)];
    });
    pieces.push({ height: 52, marks });
  }
  return { pieces, whole: true, before: 8 };
}
