import PDFDocument from 'pdfkit';
import type { Sheet } from '../../views/sheet.ts';
import { fonts } from './fonts.ts';
import type { Ink, Mark } from './marks.ts';
import { measuredBy } from './measure.ts';
import { paginate } from './paginate.ts';
import { pageSize } from './paper.ts';
import { runningLines } from './running-lines.ts';
import { setSheet } from './set-sheet.ts';

/** Dark enough for a copier; the accent is told from the ink by its place, never by its tone alone. */
const inks: Record<Ink, string> = {
  ink: '#1d2124',
  soft: '#54595a',
  accent: '#14586b',
  rule: '#bdb7a8',
  wash: '#f1eee4',
};

export interface Pdf {
  readonly bytes: Uint8Array;
  readonly pages: number;
}

/**
 * The sheet as a PDF. Pure but for the fonts, which are read once: the same sheet gives the same bytes, for the only
 * date in it is the sheet's own.
 */
export async function sheetPdf(sheet: Sheet): Promise<Pdf> {
  const page = pageSize(sheet.paper);
  const day = new Date(sheet.date === '' ? 0 : `${sheet.date}T00:00:00Z`);
  const doc = new PDFDocument({
    size: [page.width, page.height],
    margin: 0,
    autoFirstPage: false,
    lang: 'en',
    displayTitle: true,
    info: {
      Title: `${sheet.title}: water supply calculation`,
      Subject: `Job file ${sheet.hash}`,
      Creator: 'Hightap',
      Producer: 'Hightap',
      CreationDate: day,
    },
  });
  // The library computes with a date, but what it cannot enumerate it does not write: a file has no day that nobody gave.
  if (sheet.date === '') Object.defineProperty(doc.info, 'CreationDate', { enumerable: false });
  for (const [name, bytes] of Object.entries(fonts())) {
    // Opened in this order, and not as they are first measured: widths are remembered from one sheet to the next.
    doc.registerFont(name, bytes as Buffer).font(name);
  }
  const measure = measuredBy(doc);
  const pages = paginate(setSheet(sheet, page.roomWidth, measure), page.roomHeight);
  const done = collected(doc);
  pages.forEach((marks, at) => {
    doc.addPage();
    for (const mark of runningLines(sheet, page, at + 1, pages.length, measure)) paint(doc, mark, 0, 0);
    for (const mark of marks) paint(doc, mark, page.left, page.top);
  });
  doc.end();
  return { bytes: await done, pages: pages.length };
}

function paint(doc: PDFKit.PDFDocument, mark: Mark, dx: number, dy: number): void {
  switch (mark.is) {
    case 'text':
      doc
        .font(mark.style.font, mark.style.size)
        .fillColor(inks[mark.style.ink])
        .text(mark.text, mark.x + dx, mark.y + dy, { lineBreak: false, baseline: 'alphabetic' });
      return;
    case 'line':
      doc
        .lineWidth(mark.weight)
        .strokeColor(inks[mark.ink])
        .moveTo(mark.from[0] + dx, mark.from[1] + dy)
        .lineTo(mark.to[0] + dx, mark.to[1] + dy)
        .stroke();
      return;
    case 'box':
      doc.rect(mark.x + dx, mark.y + dy, mark.width, mark.height).fill(inks[mark.ink]);
  }
}

async function collected(doc: PDFKit.PDFDocument): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of doc) chunks.push(chunk as Uint8Array);
  return Buffer.concat(chunks);
}
