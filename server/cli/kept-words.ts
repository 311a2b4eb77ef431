/** What a backup holds, by the rows of its tables: `3 jobs in 41 revisions, 1 price book`. */
export function keptWords(rows: Readonly<Record<string, number>>): string {
  const { job = 0, revision = 0, price_book: books = 0 } = rows;
  return `${counted(job, 'job')} in ${counted(revision, 'revision')}, ${counted(books, 'price book')}`;
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`;
}
