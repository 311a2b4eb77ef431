/** What a file is written from; a field that is undefined is left out. */
export type Json = string | number | boolean | readonly Json[] | JsonObject;
export type JsonObject = { readonly [field: string]: Json | undefined };

/** A list with each row on a line of its own. */
export function rowsOf(rows: readonly JsonObject[], indent: string): string {
  return rows.length === 0
    ? '[]'
    : `[\n${rows.map((row) => `${indent}  ${inline(row)}`).join(',\n')}\n${indent}]`;
}

/** An object with a line for each field; anything else on one line. */
export function block(value: Json | undefined, indent: string): string {
  if (!isObject(value)) return inline(value);
  const fields = fieldsIn(value).map(
    ([field, inner]) => `${indent}  ${JSON.stringify(field)}: ${inline(inner)}`,
  );
  return `{\n${fields.join(',\n')}\n${indent}}`;
}

/** Everything on one line. */
export function inline(value: Json | undefined): string {
  if (Array.isArray(value)) return `[${value.map(inline).join(', ')}]`;
  if (!isObject(value)) return JSON.stringify(value);
  const fields = fieldsIn(value).map(([field, inner]) => `${JSON.stringify(field)}: ${inline(inner)}`);
  return `{ ${fields.join(', ')} }`;
}

function isObject(value: Json | undefined): value is JsonObject {
  return typeof value === 'object' && !Array.isArray(value);
}

function fieldsIn(value: JsonObject): [string, Json | undefined][] {
  return Object.entries(value).filter(([, inner]) => inner !== undefined);
}
