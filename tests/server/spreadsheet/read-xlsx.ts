import { strFromU8, unzipSync } from 'fflate';

/** The sheets of a workbook by name, and the XML of its parts; read without what wrote it. */
export function readXlsx(bytes: Uint8Array): {
  readonly sheets: ReadonlyMap<string, (string | number)[][]>;
  readonly parts: ReadonlyMap<string, string>;
} {
  const parts = new Map(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
  const shared = [...parts.get('xl/sharedStrings.xml')!.matchAll(/<si>(.*?)<\/si>/gs)].map(([, item]) =>
    [...item!.matchAll(/<t[^>]*>(.*?)<\/t>/gs)].map(([, text]) => plain(text!)).join(''),
  );
  const names = [...parts.get('xl/workbook.xml')!.matchAll(/<sheet [^>]*name="([^"]*)"/g)].map(([, name]) =>
    plain(name!),
  );
  const sheets = new Map(
    names.map((name, at) => [name, rowsOf(parts.get(`xl/worksheets/sheet${at + 1}.xml`)!, shared)]),
  );
  return { sheets, parts };
}

function rowsOf(xml: string, shared: readonly string[]): (string | number)[][] {
  return [...xml.matchAll(/<row [^>]*?(?:\/>|>(.*?)<\/row>)/gs)].map(([, cells = '']) => {
    const row: (string | number)[] = [];
    for (const [, column, attributes, content = ''] of cells.matchAll(
      /<c r="([A-Z]+)\d+"([^>]*?)(?:\/>|>(.*?)<\/c>)/gs,
    )) {
      const value = /<v>(.*?)<\/v>/s.exec(content)?.[1];
      if (value === undefined) continue;
      const text = attributes!.includes('t="s"');
      while (row.length < columnNumber(column!)) row.push('');
      row[columnNumber(column!)] = text ? shared[Number(value)]! : Number(value);
    }
    return row;
  });
}

function columnNumber(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

function plain(text: string): string {
  return text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&apos;', "'")
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');
}
