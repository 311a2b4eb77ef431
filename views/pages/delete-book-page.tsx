import { Layout } from '../layout.tsx';

/** Asks before a price book is put into the bin. */
export function DeleteBookPage(props: {
  readonly id: string;
  readonly name: string;
  readonly usedBy: readonly string[];
}): JSX.Element {
  const { id, name, usedBy } = props;
  return (
    <Layout title="Delete a price book" class="prices">
      <main id="main" class="plain">
        <h1>Delete a price book</h1>
        <p safe>{`“${name}” goes to the bin, where it can be restored for 30 days.`}</p>
        {usedBy.length === 0 ? (
          ''
        ) : (
          <p
            safe
          >{`These jobs use it, and will be priced by the invented book that ships: ${usedBy.join(', ')}.`}</p>
        )}
        <form method="post" action={`/prices/${id}/delete`} class="actions">
          <button type="submit" class="act">
            Delete it
          </button>
          <a href="/prices">Keep it</a>
          <a href={`/prices/${id}/file.json`}>Download the book</a>
        </form>
      </main>
    </Layout>
  );
}
