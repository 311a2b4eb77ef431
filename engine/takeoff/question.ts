import type { MaterialId } from '../../tables/pipe/names.ts';

/** Where the drawing and the tree disagree, or leave something open: to be asked before a take-off is used. */
export type Question =
  /** A run leaves where others do, and no leg of a tee is drawn in it; the tee is counted. */
  | { readonly code: 'tee-not-drawn'; readonly run: string; readonly from: string }
  /** More legs of tees are drawn in a run than there are tees where it begins; they are not counted. */
  | { readonly code: 'tee-without-junction'; readonly run: string; readonly legs: number }
  /** None or several runs are drawn going straight on. */
  | { readonly code: 'straight-unclear'; readonly run: string; readonly taken: string }
  /** A fixture needs a stop and its run has no shut-off; the stop is counted. */
  | { readonly code: 'stop-not-drawn'; readonly run: string; readonly fixture: string }
  /** Several fixtures on one inlet: their ends are counted, tees and pipe between them are not drawn. */
  | { readonly code: 'shared-inlet'; readonly run: string; readonly fixture: string; readonly count: number }
  /** A run ends nowhere; a cap is counted. */
  | { readonly code: 'open-end'; readonly run: string }
  /** More runs leave a manifold than it has ports. */
  | { readonly code: 'ports-short'; readonly run: string; readonly ports: number; readonly lines: number }
  /** A mixing valve's other inlet is not drawn. */
  | { readonly code: 'mixing-valve-inlet'; readonly run: string }
  /** The support table has no row for the pipe; no hangers are counted. */
  | {
      readonly code: 'no-support-spacing';
      readonly run: string;
      readonly material: MaterialId;
      readonly size: string;
    };
