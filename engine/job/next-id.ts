/** The first of `stem`1, `stem`2, ... that is not taken. */
export function nextId(stem: string, taken: Iterable<string>): string {
  const known = new Set(taken);
  let number = 1;
  while (known.has(`${stem}${number}`)) number++;
  return `${stem}${number}`;
}
