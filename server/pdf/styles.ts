import type { Font, Ink, TextStyle } from './marks.ts';

function style(font: Font, size: number, lead: number, ink: Ink): TextStyle {
  return { font, size, lead, ink };
}

/** Every way in which the sheet sets text. Figures of this typeface are all of one width. */
export const styles = {
  title: style('semibold', 21, 25, 'ink'),
  subtitle: style('regular', 11, 15, 'soft'),
  section: style('semibold', 13.5, 18, 'ink'),
  number: style('regular', 13.5, 18, 'accent'),
  heading: style('semibold', 9.5, 13, 'ink'),
  body: style('regular', 9.5, 13, 'ink'),
  answer: style('semibold', 12, 16, 'ink'),
  name: style('regular', 9, 12.5, 'soft'),
  value: style('regular', 9, 12.5, 'ink'),
  note: style('italic', 8.25, 11, 'soft'),
  head: style('semibold', 7.25, 8.75, 'soft'),
  cell: style('regular', 8, 10.25, 'ink'),
  strong: style('semibold', 8, 10.25, 'ink'),
  formula: style('regular', 9.5, 13, 'ink'),
  running: style('regular', 8, 10, 'soft'),
} as const satisfies Record<string, TextStyle>;
