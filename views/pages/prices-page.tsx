import { TextField } from '../components/field.tsx';
import { Layout } from '../layout.tsx';
import { UploadField } from '../parts/upload-field.tsx';
import type { BookSummary } from '../prices.ts';
import type { Problems, Refused } from '../workbench.ts';

interface JobBook {
  readonly id: string;
  readonly name: string;
  readonly book: string;
}

/** All price books, which of them each job uses, and the ways to get another one. */
export function PricesPage(props: {
  readonly books: readonly BookSummary[];
  readonly jobs: readonly JobBook[];
  readonly refused?: Refused | undefined;
  readonly problems?: Problems;
}): JSX.Element {
  const { books, jobs } = props;
  const problems = props.problems ?? {};
  return (
    <Layout title="Price books" class="prices">
      <main id="main" class="plain">
        <div class="opening">
          <h1>Price books</h1>
        </div>
        <section aria-labelledby="books-title">
          <h2 id="books-title">Books</h2>
          <ul class="books">
            {books.map(({ id, name, kept, about }) => (
              <li>
                <a class="job-name" href={`/prices/${id}`} safe>
                  {name}
                </a>
                <span class="hint" safe>
                  {about}
                </span>
                <span class="job-links">
                  <a href={`/prices/${id}/file.csv`}>
                    CSV<span class="visually-hidden" safe>{` of ${name}`}</span>
                  </a>{' '}
                  <a href={`/prices/${id}/file.json`}>
                    JSON<span class="visually-hidden" safe>{` of ${name}`}</span>
                  </a>{' '}
                  {kept ? (
                    <a href={`/prices/${id}/delete`}>
                      Delete<span class="visually-hidden" safe>{` ${name}`}</span>
                    </a>
                  ) : (
                    ''
                  )}
                </span>
              </li>
            ))}
          </ul>
        </section>
        <section aria-labelledby="use-title">
          <h2 id="use-title">Which job uses which</h2>
          {jobs.length === 0 ? <p>There are no jobs yet.</p> : ''}
          <ul class="rows">
            {jobs.map((job) => (
              <li>
                <form
                  id={`use:${job.id}`}
                  method="post"
                  action={`/jobs/${job.id}/prices`}
                  class="edit use"
                  autocomplete="off"
                >
                  <div class="field">
                    <label for={`use:${job.id}:book`} safe>
                      {job.name}
                    </label>
                    <select id={`use:${job.id}:book`} name="book">
                      {books.map(({ id, name }) => (
                        <option value={id} selected={id === job.book} safe>
                          {name}
                        </option>
                      ))}
                    </select>
                  </div>
                  <button type="submit">
                    Use it<span class="visually-hidden" safe>{` for ${job.name}`}</span>
                  </button>
                </form>
              </li>
            ))}
          </ul>
        </section>
        <section aria-labelledby="new-title">
          <h2 id="new-title">New book</h2>
          <form id="new-book" method="post" action="/prices" class="edit" autocomplete="off">
            <div class="fields">
              <TextField form="new-book" name="name" label="Name" value="" required refused={props.refused} />
              <div class="field">
                <label for="new-book:start">Starting from</label>
                <select id="new-book:start" name="start">
                  <option value="empty">no prices</option>
                  {books.map(({ id, name }) => (
                    <option value={id} safe>
                      {`a copy of ${name}`}
                    </option>
                  ))}
                </select>
              </div>
              <button type="submit" class="act">
                Make the book
              </button>
            </div>
          </form>
        </section>
        <section aria-labelledby="upload-title">
          <h2 id="upload-title">Upload a book</h2>
          <p class="hint">
            A whole book as JSON. To read a table (CSV) of prices, make or open a book and import it there.
          </p>
          <form id="upload" method="post" action="/prices/upload" enctype="multipart/form-data" class="edit">
            <div class="fields">
              <UploadField
                form="upload"
                label="A price book as JSON"
                accept=".json"
                problem={problems.file}
              />
              <button type="submit" class="act">
                Upload
              </button>
            </div>
          </form>
        </section>
      </main>
    </Layout>
  );
}
