/** What a browser sent, by field name; of several values under one name the last, which is the nearest to the reader. */
export type FormFields = Readonly<Record<string, string>>;

/** Text fields of a posted form; anything else in the body is left out. */
export function formFields(body: unknown): FormFields {
  const fields = new Map<string, string>();
  if (typeof body === 'object' && body !== null) {
    for (const [name, value] of Object.entries(body)) {
      const last: unknown = Array.isArray(value) ? value.at(-1) : value;
      if (typeof last === 'string') fields.set(name, last);
    }
  }
  return Object.fromEntries(fields);
}
