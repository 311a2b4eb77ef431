import { sources } from '../sources.ts';

/** Advance widths of one face, in thousandths of the type size. */
export interface FaceWidths {
  /** From the space to the tilde, in the order of their codes. */
  readonly ascii: readonly number[];
  readonly beyond: Readonly<Record<string, number>>;
}

/**
 * Metrics of the sans-serif that is one of the standard fonts of every PDF reader; the usual sans-serifs of browsers
 * are drawn to the same widths.
 */
export const sansWidths = {
  id: 'sans-widths',
  title: 'Advance widths of the standard sans-serif',
  source: sources['standard-font-metrics'],
  at: { section: 'character metrics, font box', checkedOn: '2026-11-25' },
  verified: 'seen',
  /** How far a line reaches above and below its baseline, in type sizes: the font box. */
  ascent: 0.931,
  descent: 0.225,
  regular: {
    ascii: [
      278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556,
      556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722,
      278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278,
      469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333,
      500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
    ],
    beyond: {
      '−': 584,
      '–': 556,
      '—': 1000,
      '·': 278,
      '…': 1000,
      '×': 584,
      '’': 222,
      '‘': 222,
      '“': 333,
      '”': 333,
      '°': 400,
      '½': 834,
      '¼': 834,
      '¾': 834,
      ß: 611,
      ø: 611,
      Ø: 778,
      æ: 889,
      Æ: 1000,
      œ: 944,
      ł: 222,
      Ł: 556,
      đ: 556,
    },
  } as FaceWidths,
  bold: {
    ascii: [
      278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556,
      556, 556, 556, 556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278,
      556, 722, 611, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584,
      556, 333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556,
      333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584,
    ],
    beyond: {
      '−': 584,
      '–': 556,
      '—': 1000,
      '·': 278,
      '…': 1000,
      '×': 584,
      '’': 278,
      '‘': 278,
      '“': 500,
      '”': 500,
      '°': 400,
      '½': 834,
      '¼': 834,
      '¾': 834,
      ß: 611,
      ø: 611,
      Ø: 778,
      æ: 889,
      Æ: 1000,
      œ: 944,
      ł: 278,
      Ł: 611,
      đ: 611,
    },
  } as FaceWidths,
};
