const most = 3;

/** The names most like one that is not there, best first, at most three; none that are no likeness at all. */
export function nearest(wanted: string, names: readonly string[]): string[] {
  const plain = wanted.toLowerCase().slice(0, 64);
  const ranked: { readonly name: string; readonly edits: number }[] = [];
  for (const name of names) {
    const other = name.toLowerCase();
    const furthest = Math.max(1, Math.ceil(Math.max(plain.length, other.length) / 2));
    if (Math.abs(plain.length - other.length) > furthest) continue;
    const edits = editsBetween(plain, other);
    if (edits <= furthest && edits < Math.max(plain.length, other.length)) ranked.push({ name, edits });
  }
  return ranked
    .sort((one, other) => one.edits - other.edits)
    .slice(0, most)
    .map(({ name }) => name);
}

/** Least number of characters put in, left out or exchanged between two texts (Levenshtein 1966). */
function editsBetween(from: string, to: string): number {
  let above = Array.from({ length: to.length + 1 }, (_, at) => at);
  for (let row = 1; row <= from.length; row++) {
    const line = [row];
    for (let at = 1; at <= to.length; at++) {
      const exchanged = above[at - 1]! + (from[row - 1] === to[at - 1] ? 0 : 1);
      line.push(Math.min(exchanged, above[at]! + 1, line[at - 1]! + 1));
    }
    above = line;
  }
  return above[to.length]!;
}

/** The end of a sentence about a name that is not there: the nearest names, or the first few. */
export function insteadOf(wanted: string, names: readonly string[]): string {
  if (names.length === 0) return 'there is none';
  const near = nearest(wanted, names);
  if (near.length > 0) return `nearest: ${near.join(', ')}`;
  const first = names.slice(0, most).join(', ');
  return names.length > most
    ? `expected one of ${first} and ${names.length - most} more`
    : `expected ${names.join(' or ')}`;
}
