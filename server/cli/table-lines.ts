import { cleanText } from '../words/clean-text.ts';
import { displayWidth, shortenTo } from '../words/display-width.ts';
import { pageWidth } from './wrap.ts';

export interface Column {
  readonly title: string;
  /** Figures stand to the right and are never cut; words stand to the left and give way where a line is too wide. */
  readonly holds: 'words' | 'figures';
}

const gap = '  ';
const leastWords = 8;

/** A table as lines of at most the page's width: titles, a rule, rows. */
export function tableLines(columns: readonly Column[], rows: readonly (readonly string[])[]): string[] {
  const cleaned = rows.map((row) => row.map(cleanText));
  const widths = fitted(
    columns,
    columns.map(({ title }, at) =>
      cleaned.reduce((most, row) => Math.max(most, displayWidth(row[at] ?? '')), displayWidth(title)),
    ),
  );
  const lineOf = (cells: readonly string[]): string =>
    columns
      .map(({ holds }, at) => {
        const text = shortenTo(cells[at] ?? '', widths[at]!);
        const space = ' '.repeat(widths[at]! - displayWidth(text));
        return holds === 'figures' ? `${space}${text}` : `${text}${space}`;
      })
      .join(gap)
      .trimEnd();
  const rule = widths.map((width) => '-'.repeat(width)).join(gap);
  return [lineOf(columns.map(({ title }) => title)), rule, ...cleaned.map(lineOf)];
}

/** Natural widths where they fit; else the widest columns of words give way first. */
function fitted(columns: readonly Column[], natural: readonly number[]): number[] {
  const widths = [...natural];
  const between = gap.length * (columns.length - 1);
  let over = widths.reduce((sum, width) => sum + width, between) - pageWidth;
  for (; over > 0; over--) {
    let widest = -1;
    columns.forEach(({ holds }, at) => {
      if (holds !== 'words' || widths[at]! <= leastWords) return;
      if (widest === -1 || widths[at]! > widths[widest]!) widest = at;
    });
    if (widest === -1) break;
    widths[widest]!--;
  }
  return widths;
}
