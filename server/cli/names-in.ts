/** The names of an option's value, `C1,C2`. */
export function namesIn(text: string): string[] {
  return text
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
}
