import type { MethodResult } from '../sizing.ts';

/** Each way to size, and where it comes from. */
export const methodTexts: {
  readonly [method in MethodResult['method']]: readonly [name: string, source: string];
} = {
  drawn: ['As drawn', ''],
  'least-cost': ['Least cost', 'exact: no cheaper sizes hold every limit'],
  velocity: ['By velocity', 'the smallest pipe within the velocity limit; common practice, no source'],
  'uniform-friction': [
    'Uniform friction',
    'one friction loss over the longest path, UPC 2018 appendix A, A 104',
  ],
  'segment-free-table': ['By a table', 'IPC 2018 appendix E, Table E201.1, from memory'],
};
