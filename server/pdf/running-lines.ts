import type { Sheet } from '../../views/sheet.ts';
import { line, type Mark, type Measure, text } from './marks.ts';
import type { PageSize } from './paper.ts';
import { styles } from './styles.ts';
import { wrap } from './wrap.ts';

/** What stands over and under each page: the job, the mark of its file, the day, and which page of how many. */
export function runningLines(
  sheet: Sheet,
  { width, height, left, roomWidth }: PageSize,
  page: number,
  pages: number,
  measure: Measure,
): Mark[] {
  const style = styles.running;
  const right = left + roomWidth;
  const toRight = (y: number, words: string): Mark => text(right - measure(words, style), y, words, style);
  const kind = 'Water supply calculation';
  const room = roomWidth - measure(kind, style) - 24;
  const [title = ''] = wrap(sheet.title, room, (part) => measure(part, style));
  const foot = height - 38;
  const file = `Job file ${sheet.mark}`;
  const day =
    sheet.date === '' ? [] : [text((width - measure(sheet.date, style)) / 2, foot, sheet.date, style)];
  return [
    text(left, 38, title, style),
    toRight(38, kind),
    line(left, 44, right, 44, 0.3, 'rule'),
    line(left, foot - 12, right, foot - 12, 0.3, 'rule'),
    text(left, foot, file, style),
    ...day,
    toRight(foot, `page ${page} of ${pages}`),
  ];
}
