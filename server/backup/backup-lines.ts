import { z } from 'zod';

/*
 * A backup is a gzip file of JSON lines, the same for both stores: a head, a line for each row, and an end with the
 * number of rows of each table and the SHA-256 of all bytes before the end's line.
 */

export const backupVersion = 1;

export type Row = Readonly<Record<string, unknown>>;

const bytes = z.object({ base64: z.base64() });

export const headLine = z.object({
  format: z.literal('hightap-backup'),
  version: z.number().int().positive(),
  /** The changes of shape that the store had, in their order. */
  changes: z.array(z.string()).min(1),
  made: z.string(),
});

export const rowLine = z.object({
  table: z.string(),
  row: z.record(z.string(), z.union([z.string(), z.number(), z.null(), bytes])),
});

export const endLine = z.object({
  end: z.object({ rows: z.record(z.string(), z.number().int().nonnegative()), sha256: z.string() }),
});

export type BackupHead = z.infer<typeof headLine>;
export type BackupEnd = z.infer<typeof endLine>['end'];

/** A row as a line without its end: bytes stand as base64. */
export function writeRow(table: string, row: Row): string {
  const values = Object.entries(row)
    // The driver of SQLite adds its own time to each row.
    .filter(([column]) => column !== '_metadata')
    .map(([column, value]) => [column, isBytes(value) ? { base64: base64Of(value) } : value]);
  return JSON.stringify({ table, row: Object.fromEntries(values) });
}

/** The row of a line as it goes into a table. */
export function rowOf(line: z.infer<typeof rowLine>): Row {
  const values = Object.entries(line.row).map(([column, value]) => [
    column,
    typeof value === 'object' && value !== null ? Buffer.from(value.base64, 'base64') : value,
  ]);
  return Object.fromEntries(values);
}

function isBytes(value: unknown): value is Uint8Array | ArrayBuffer {
  return value instanceof Uint8Array || value instanceof ArrayBuffer;
}

function base64Of(value: Uint8Array | ArrayBuffer): string {
  return Buffer.from(value instanceof ArrayBuffer ? new Uint8Array(value) : value).toString('base64');
}
