import { FormProblem, TextField, TickField } from '../components/field.tsx';
import { Layout } from '../layout.tsx';
import { Notice } from '../parts/here.tsx';
import { PriceNote } from '../parts/price-note.tsx';
import { PriceRows } from '../parts/price-rows.tsx';
import { UploadField } from '../parts/upload-field.tsx';
import type { BookView } from '../prices.ts';

/** One price book: its items by list, its head, and the ways into and out of it. */
export function PriceBookPage(props: {
  readonly view: BookView;
  readonly notice: string;
  readonly problem?: string | undefined;
}): JSX.Element {
  const { view } = props;
  const { id, book, kept } = view;
  return (
    <Layout title={book.name} class="prices">
      <main id="main">
        <Notice text={props.notice} />
        <div class="opening">
          <p class="back">
            <a href="/prices">Price books</a>
          </p>
          <h1 safe>{book.name}</h1>
          <PriceNote book={book} />
          {kept ? (
            ''
          ) : (
            <p class="hint">This book ships with Hightap and is read-only; make a copy to change it.</p>
          )}
          <nav class="contents" aria-label="On this page">
            <a href="#items">Items</a>
            {kept ? <a href="#import">Import</a> : ''}
            <a href="#export">Export</a>
            {kept ? <a href="#about">About this book</a> : ''}
          </nav>
        </div>
        <PriceRows view={view} />
        {kept ? <Import view={view} problem={props.problem} /> : ''}
        <section id="export" aria-labelledby="export-title">
          <h2 id="export-title">Export</h2>
          <p>
            <a href={`/prices/${id}/file.csv`}>Download as CSV</a>, a table for a spreadsheet, or{' '}
            <a href={`/prices/${id}/file.json`}>as JSON</a>, the whole book with its head.
          </p>
        </section>
        {kept ? <About view={view} /> : ''}
      </main>
    </Layout>
  );
}

function Import({ view, problem }: { view: BookView; problem: string | undefined }): JSX.Element {
  return (
    <section id="import" aria-labelledby="import-title">
      <h2 id="import-title">Import</h2>
      <p class="hint">
        A file of prices, CSV or JSON, in UTF-8. What it would change is shown first; nothing is kept until
        you say so. Prices that the file does not name stay as they are.
      </p>
      <form
        id="import-form"
        method="post"
        action={`/prices/${view.id}/imports`}
        enctype="multipart/form-data"
        class="edit"
      >
        <div class="fields">
          <UploadField
            form="import-form"
            label="A file ending in .csv or .json"
            accept=".csv,.json"
            problem={problem}
          />
          <button type="submit" class="act">
            Show what it changes
          </button>
        </div>
      </form>
      <details>
        <summary>The columns of a CSV file</summary>
        <p class="hint">
          A line of headings in any order, then one price a line; cells are parted by commas, or by semicolons
          where the headings are. Keys are those of a downloaded table.
        </p>
        <dl class="columns-of">
          {Object.entries(view.columns).map(([name, meaning]) => (
            <div>
              <dt>
                <code safe>{name}</code>
              </dt>
              <dd safe>{meaning}</dd>
            </div>
          ))}
        </dl>
      </details>
    </section>
  );
}

function About({ view }: { view: BookView }): JSX.Element {
  const { id, revision, book, refusedAbout: refused } = view;
  const form = 'about-form';
  return (
    <section id="about" aria-labelledby="about-title">
      <h2 id="about-title">About this book</h2>
      <form id={form} method="post" action={`/prices/${id}/about`} class="edit" autocomplete="off">
        <input type="hidden" name="revision" value={`${revision}`} />
        <div class="fields">
          <FormProblem refused={refused} />
          <TextField form={form} name="name" label="Name" value={book.name} wide refused={refused} />
          <TextField
            form={form}
            name="source"
            label="Where the prices come from"
            value={book.source}
            wide
            refused={refused}
          />
          <TextField form={form} name="currency" label="Currency" value={book.currency} refused={refused} />
          <TextField
            form={form}
            name="effective"
            label="Prices hold from"
            value={book.effective}
            refused={refused}
          />
          <TickField
            form={form}
            name="invented"
            label="The prices are invented"
            value={book.invented ? 'yes' : ''}
            hint="Untick it when no invented price is left in the book, and not before."
            refused={refused}
          />
          <button type="submit" class="act">
            Keep this
          </button>
        </div>
      </form>
    </section>
  );
}
