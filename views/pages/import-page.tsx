import type { PriceFigures } from '../../engine/takeoff/price-line.ts';
import { Layout } from '../layout.tsx';
import { PriceNote } from '../parts/price-note.tsx';
import type { BookHead, PreviewView } from '../prices.ts';

/** Lines of each kind that are listed; the others are counted. */
const mostShown = 200;

function figuresText({ money, hours, ports }: PriceFigures): string {
  const plus = ports === undefined ? '' : `, each port ${ports.money} and ${ports.hours} h`;
  return `${money}, ${hours} h${plus}`;
}

function lines(count: number): string {
  return count === 1 ? '1 line' : `${count} lines`;
}

/** What a file would do to a book, before it does it. */
export function ImportPage({ view }: { view: PreviewView }): JSX.Element {
  const { id, book, token, added, changed, bad } = view;
  const good = added.length + changed.length;
  return (
    <Layout title={`Import into ${book.name}`} class="prices">
      <main id="main">
        <div class="opening">
          <p class="back">
            <a href={`/prices/${id}`} safe>
              {book.name}
            </a>
          </p>
          <h1>What the file changes</h1>
          <p>
            <strong>Nothing is kept yet.</strong> <span safe>{summary(view)}</span>
          </p>
          <PriceNote book={book} brief />
        </div>
        {bad.length === 0 ? '' : <Bad bad={bad} />}
        {view.passedOver.length === 0 ? (
          ''
        ) : (
          <section>
            <p
              safe
            >{`Columns that a price book does not have, and that are not read: ${view.passedOver.join(', ')}.`}</p>
          </section>
        )}
        {changed.length === 0 ? '' : <Changed changed={changed} />}
        {added.length === 0 ? '' : <Added added={added} />}
        <form method="post" action={`/prices/${id}/imports/${token}`} class="actions confirm">
          {good === 0 ? (
            <span>There is nothing to keep.</span>
          ) : (
            <button type="submit" class="act" safe>
              {bad.length === 0 ? `Keep ${lines(good)}` : `Keep ${lines(good)}, leave ${bad.length} out`}
            </button>
          )}
          <a href={`/prices/${id}#import`}>Keep nothing</a>
        </form>
      </main>
    </Layout>
  );
}

function summary({ book, added, changed, unchanged, untouched, bad }: PreviewView): string {
  const wrong = bad.length === 0 ? 'no line is wrong' : `${lines(bad.length)} cannot be read`;
  return `${added.length} new, ${changed.length} changed, ${unchanged} the same; ${wrong}; ${untouched} prices of the book are not in the file and stay. Prices are in ${book.currency}.`;
}

function Bad({ bad }: { bad: PreviewView['bad'] }): JSX.Element {
  return (
    <section id="bad" aria-labelledby="bad-title">
      <h2 id="bad-title" safe>{`✕ Cannot be read: ${lines(bad.length)}`}</h2>
      <ol class="bad-lines">
        {bad.slice(0, mostShown).map(({ line, why }) => (
          <li>
            <span class="line-number" safe>{`Line ${line}`}</span>
            <span safe>{`${why}.`}</span>
          </li>
        ))}
      </ol>
      <More count={bad.length} />
    </section>
  );
}

function Changed({ changed }: { changed: PreviewView['changed'] }): JSX.Element {
  return (
    <section id="changed" aria-labelledby="changed-title">
      <h2 id="changed-title" safe>{`Changed: ${lines(changed.length)}`}</h2>
      <ul class="changes">
        {changed.slice(0, mostShown).map(({ name, unit, before, after }) => (
          <li>
            <span safe>{name}</span>
            <span>
              <del safe>{figuresText(before)}</del> <span aria-hidden="true">→</span>{' '}
              <ins safe>{figuresText(after)}</ins>{' '}
              <span class="caption">{unit === 'ft' ? 'a foot' : 'each'}</span>
            </span>
          </li>
        ))}
      </ul>
      <More count={changed.length} />
    </section>
  );
}

function Added({ added }: { added: PreviewView['added'] }): JSX.Element {
  return (
    <section id="added" aria-labelledby="added-title">
      <h2 id="added-title" safe>{`New: ${lines(added.length)}`}</h2>
      <ul class="changes">
        {added.slice(0, mostShown).map(({ name, unit, figures }) => (
          <li>
            <span safe>{name}</span>
            <span>
              <span safe>{figuresText(figures)}</span>{' '}
              <span class="caption">{unit === 'ft' ? 'a foot' : 'each'}</span>
            </span>
          </li>
        ))}
      </ul>
      <More count={added.length} />
    </section>
  );
}

function More({ count }: { count: number }): JSX.Element {
  if (count <= mostShown) return '';
  return <p class="hint" safe>{`and ${count - mostShown} more.`}</p>;
}

/** While a long file is read; the page asks again by itself, with or without the script. */
export function ReadingPage(
  props: BookHead & { readonly token: string; readonly share: number; readonly lines: number },
): JSX.Element {
  const { id, book, token, share, lines: read } = props;
  const percent = `${Math.round(share * 100)}`;
  return (
    <Layout title={`Reading a file for ${book.name}`} class="prices">
      <main id="main" class="plain">
        <div class="opening">
          <h1>The file is being read</h1>
        </div>
        <p>
          <progress max="100" value={percent} aria-label="Read so far" />{' '}
          <span safe>{`${read} lines, ${percent} % of the file`}</span>
        </p>
        <p>
          <a href={`/prices/${id}/imports/${token}`}>Look again</a>; the page does so by itself each second.
          Nothing is kept yet.
        </p>
      </main>
    </Layout>
  );
}
