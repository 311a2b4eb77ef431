import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** One piece of text as a reader of PDF finds it: points from the upper left corner of the page. */
export interface TextItem {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly baseline: number;
  readonly size: number;
}

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly items: readonly TextItem[];
  /** Pieces on one baseline, from left to right; from top to bottom. */
  readonly rows: readonly (readonly TextItem[])[];
}

/** Reads the text of a PDF with its places, by another program than the one that wrote it. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPage[]> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0, useSystemFonts: false });
  const document = await task.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    const { items } = await page.getTextContent();
    const found = items.flatMap((item): TextItem[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [, , , size, left, bottom] = item.transform as number[];
      return [
        { text: item.str, left: left!, right: left! + item.width, baseline: height - bottom!, size: size! },
      ];
    });
    pages.push({ width, height, items: found, rows: rowsOf(found) });
  }
  await task.destroy();
  return pages;
}

function rowsOf(items: readonly TextItem[]): TextItem[][] {
  const rows = new Map<number, TextItem[]>();
  for (const item of items) {
    const at = Math.round(item.baseline * 4);
    const row = rows.get(at) ?? rows.get(at - 1) ?? rows.get(at + 1);
    if (row === undefined) rows.set(at, [item]);
    else row.push(item);
  }
  return [...rows.entries()]
    .sort(([one], [other]) => one - other)
    .map(([, row]) => row.sort((one, other) => one.left - other.left));
}

/** The whole text of a page, a row a line. */
export function textOf({ rows }: ReadPage): string {
  return rows.map((row) => row.map(({ text }) => text).join(' ')).join('\n');
}
