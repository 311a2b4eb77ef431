/**
 * Text as it may stand in a message: quoted, on one line, control characters and broken surrogates as escapes,
 * cut after 40 characters. It is still text, to be escaped by whatever shows it.
 */
export function shorten(text: string): string {
  const points = [...text.slice(0, 120)];
  const long = points.length > 40 || text.length > 120;
  const kept = long ? `${points.slice(0, 40).join('')}...` : text;
  return JSON.stringify(kept).replace(
    /[\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
