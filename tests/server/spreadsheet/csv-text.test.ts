import { describe, expect, it } from 'vitest';
import { csvText } from '../../../server/spreadsheet/csv-text.ts';

describe('CSV', () => {
  it('runs no text as a formula, and keeps numbers', () => {
    expect(csvText([['=1+1', '+1', '-1', '@x', '\t=1', ' =1', '＝1', -1, 1.5, 'a-b']])).toBe(
      `'=1+1,'+1,'-1,'@x,'\t=1,' =1,'＝1,-1,1.5,a-b\r\n`,
    );
    expect(csvText([['\rx', '\tx']])).toBe(`"'\rx",'\tx\r\n`);
  });

  it('quotes what would break a row', () => {
    expect(csvText([['a,b', 'say "x"', 'two\nlines'], ['']])).toBe('"a,b","say ""x""","two\nlines"\r\n\r\n');
  });
});
