import type { Sheet, SheetBlock, SheetSection } from '../../views/sheet.ts';
import { type Flow, headed, type Piece, together } from './flow.ts';
import { type Measure, text } from './marks.ts';
import { setFormula } from './set-formula.ts';
import { setTable } from './set-table.ts';
import { linesOf, setBlanks, setFacts, setList, setParagraph } from './set-text.ts';
import { styles } from './styles.ts';

/** The whole sheet as flows, ready to be set on pages. */
export function setSheet(sheet: Sheet, room: number, measure: Measure): Flow[] {
  const title: Flow = {
    pieces: [
      ...linesOf(sheet.title, styles.title, room, measure),
      ...linesOf(sheet.subtitle, styles.subtitle, room, measure),
    ],
    whole: true,
    before: 0,
  };
  return [title, ...sheet.sections.flatMap((section, at) => setSection(section, at + 1, room, measure))];
}

function setSection(section: SheetSection, number: number, room: number, measure: Measure): Flow[] {
  const { title, blocks } = section;
  const flows = blocks.map((block) => setBlock(block, room, measure));
  const [first, ...others] = section.whole === true ? [together(flows)] : flows;
  if (first === undefined) return [];
  return [headed(first, sectionHead(title, number), 22), ...others];
}

function sectionHead(title: string, number: number): Piece {
  return {
    height: styles.section.lead + 6,
    marks: [text(0, 14, String(number), styles.number), text(22, 14, title, styles.section)],
  };
}

function setBlock(block: SheetBlock, room: number, measure: Measure): Flow {
  switch (block.is) {
    case 'paragraph':
      return setParagraph(block, room, measure);
    case 'list':
      return setList(block.items, room, measure);
    case 'facts':
      return setFacts(block.rows, room, measure);
    case 'table':
      return setTable(block, room, measure);
    case 'formula':
      return setFormula(block, room, measure);
    case 'blanks':
      return setBlanks(block.labels, room);
  }
}
