import { describe, expect, it } from 'vitest';
import { xlsxFile } from '../../../server/spreadsheet/xlsx-file.ts';
import { readXlsx } from './read-xlsx.ts';

const sheet = { name: 'One', head: ['a', 'b'], widths: [10, 10] };

describe('a workbook', () => {
  it('keeps numbers as numbers and text as text', async () => {
    const rows = [
      [1.5, '1.5'],
      [-3, 'a & <b> "c"'],
      [0, '90° ell'],
    ];
    const { sheets } = readXlsx(
      await xlsxFile([
        { ...sheet, rows },
        { name: 'Two', rows: [['x', 1]], widths: [] },
      ]),
    );
    expect([...sheets.keys()]).toEqual(['One', 'Two']);
    expect(sheets.get('One')).toEqual([['a', 'b'], ...rows]);
    expect(sheets.get('Two')).toEqual([['x', 1]]);
  });

  it('holds no formula, and no text that becomes one when it is saved as CSV', async () => {
    const texts = ['=1+1', '+1', '-1', '@x', '\t=1', '\rx', ' =1', '＝1', "=cmd|' /c calc'!A0"];
    const { sheets, parts } = readXlsx(await xlsxFile([{ ...sheet, rows: texts.map((text) => [text]) }]));
    const cells = sheets.get('One')!.slice(1);
    expect(cells).toHaveLength(texts.length);
    for (const [cell] of cells) expect(cell).toMatch(/^'/);
    for (const [name, xml] of parts) if (name.includes('worksheets')) expect(xml).not.toContain('<f');
  });

  it('loses what XML does not allow, and stays readable', async () => {
    const { sheets } = readXlsx(await xlsxFile([{ ...sheet, rows: [['a\u0000b\u000bc\ufffe', '\ud800x']] }]));
    expect(sheets.get('One')![1]).toEqual(['abc', 'x']);
  });
});
