/** A query string as it is read; a name may stand in it several times. */
export type Query = Readonly<Record<string, string | string[] | undefined>>;

/** The values of a name, with commas between them. */
export function queryText(value: string | string[] | undefined): string {
  return Array.isArray(value) ? value.join(',') : (value ?? '');
}
