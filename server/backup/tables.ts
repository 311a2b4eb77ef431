/** A table as a backup keeps it. */
export interface KeptTable {
  readonly name: string;
  /** Columns of its key, by which its rows are read in pages. */
  readonly key: readonly string[];
}

/** What a backup keeps, each table behind those that its rows refer to. */
export const keptTables: readonly KeptTable[] = [
  { name: 'price_book', key: ['id'] },
  { name: 'job', key: ['id'] },
  { name: 'revision', key: ['job', 'number'] },
  { name: 'trial', key: ['id'] },
];

/** Tables that a restore makes anew: the backup's head says which changes of shape its rows have. */
export const madeAnew: readonly string[] = ['migration'];
