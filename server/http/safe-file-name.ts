/** A file name for any system, from a job's name: letters, digits, space, dot, dash; never empty, never hidden. */
export function safeFileName(name: string, ending: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/[^A-Za-z0-9 ._-]+/g, '')
    .replace(/\s+/g, ' ')
    .replace(/^[ .]+|[ .]+$/g, '')
    .slice(0, 80);
  return `${plain === '' ? 'job' : plain}${ending}`;
}
