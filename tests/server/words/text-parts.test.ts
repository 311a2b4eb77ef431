import { describe, expect, it } from 'vitest';
import { tableLines } from '../../../server/cli/table-lines.ts';
import { wrap } from '../../../server/cli/wrap.ts';
import { cleanText } from '../../../server/words/clean-text.ts';
import { displayWidth, shortenTo } from '../../../server/words/display-width.ts';
import { nearest } from '../../../server/words/nearest.ts';

describe('cleanText', () => {
  it.each([
    ['red\u001b[31m', 'red[31m'],
    ['a\u202eb\u2066c\u200bd', 'abcd'],
    ['line\r\nbreak\ttab', 'line break tab'],
    ['e\u0301', 'e\u0301'],
    [`z${'\u0335'.repeat(50)}`, 'z\u0335\u0335\u0335'],
    ['half \ud83d pair', 'half  pair'],
  ])('%j', (text, cleaned) => {
    expect(cleanText(text)).toBe(cleaned);
  });
});

describe('displayWidth', () => {
  // East Asian Width of Unicode Standard Annex 11: W and F two columns, combining marks none.
  it.each([
    ['abc', 3],
    ['é', 1],
    ['e\u0301', 1],
    ['水', 2],
    ['ｗ', 2],
    ['한', 2],
    ['🚿', 2],
    ['½', 1],
    ['−', 1],
  ])('of %j is %i', (text, width) => {
    expect(displayWidth(text)).toBe(width);
  });
});

describe('shortenTo', () => {
  it.each([
    ['shower', 6, 'shower'],
    ['showers', 6, 'showe…'],
    ['水水水水', 6, '水水…'],
    ['ab cd', 4, 'ab…'],
  ])('%j in %i columns', (text, width, kept) => {
    expect(shortenTo(text, width)).toBe(kept);
  });
});

describe('wrap', () => {
  it('breaks between words and indents what follows', () => {
    const lines = wrap(`${'x'.repeat(60)} ${'y'.repeat(60)}`, 'Note  ');
    expect(lines).toEqual([`Note  ${'x'.repeat(60)}`, `      ${'y'.repeat(60)}`]);
  });

  it('cuts a word that is wider than a line', () => {
    expect(wrap('x'.repeat(150))).toEqual(['x'.repeat(100), 'x'.repeat(50)]);
  });

  it('gives an empty text one empty line', () => {
    expect(wrap('')).toEqual(['']);
  });
});

describe('tableLines', () => {
  const columns = [
    { title: 'Name', holds: 'words' },
    { title: 'psi', holds: 'figures' },
  ] as const;

  it('sets words to the left and figures to the right', () => {
    expect(
      tableLines(columns, [
        ['a', '1.5'],
        ['bcdefg', '-20.5'],
      ]),
    ).toEqual(['Name      psi', '------  -----', 'a         1.5', 'bcdefg  -20.5']);
  });

  it('aligns figures behind wide letters', () => {
    const [, , row] = tableLines(columns, [['水', '1.5']]);
    expect(row).toBe('水    1.5');
  });

  it('cuts words, never figures', () => {
    const [, rule, row] = tableLines(columns, [['n'.repeat(200), '123456789.5']]);
    expect(rule).toHaveLength(100);
    expect(row).toMatch(/^n+… {2}123456789\.5$/);
  });
});

describe('nearest', () => {
  it('puts the likeliest first and gives at most three', () => {
    expect(nearest('showr', ['basin', 'shower', 'shower-2', 'sink'])[0]).toBe('shower');
    expect(nearest('T1', ['T2', 'T3', 'T4', 'T5'])).toHaveLength(3);
  });

  it('gives none that are no likeness', () => {
    expect(nearest('qqqq', ['basin', 'shower'])).toEqual([]);
  });

  it('reads capitals as small letters', () => {
    expect(nearest('SHOWER', ['shower'])).toEqual(['shower']);
  });
});
