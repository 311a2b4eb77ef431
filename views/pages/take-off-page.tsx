import { attribute } from '../components/attribute.ts';
import { SelectField, TextField } from '../components/field.tsx';
import { Layout } from '../layout.tsx';
import { BidTable } from '../parts/bid-table.tsx';
import { JobNav } from '../parts/job-nav.tsx';
import { PipeCutList } from '../parts/pipe-cut-list.tsx';
import { PriceNote } from '../parts/price-note.tsx';
import { TakeOffDifferences } from '../parts/take-off-differences.tsx';
import { TakeOffTable } from '../parts/take-off-table.tsx';
import { pipePlans, type TakeOffSheet, takeOffGroupings } from '../take-off.ts';
import { fixed } from '../text/figure.ts';
import { money } from '../text/money.ts';

/** Questions and missing prices told in full; the others are counted. */
const mostTold = 100;

/** The take-off of one scheme: totals, what it lists, how the pipe is cut, and what changes against another scheme. */
export function TakeOffPage({ sheet }: { readonly sheet: TakeOffSheet }): JSX.Element {
  const { id, job, scheme, book, against } = sheet;
  return (
    <Layout title={`Take-off of ${job.name}`} class="take-off">
      <main id="main">
        <div class="opening">
          <JobNav job={id} here="/takeoff" />
          <p class="back">
            <a href={`/jobs/${id}`} safe>
              {job.name}
            </a>
          </p>
          <h1>Take-off</h1>
          <p>
            Scheme <strong safe>{scheme.name}</strong>
            {job.schemes.length > 1 ? (
              <span class="on-screen">
                {' '}
                · <a href={`/jobs/${id}/compare`}>all schemes side by side</a>
              </span>
            ) : (
              ''
            )}
          </p>
          <nav class="contents" aria-label="On this page">
            <a href="#total">Total</a>
            <a href="#list">List</a>
            <a href="#pipe">Sticks and coils</a>
            {against === undefined ? '' : <a href="#differences">Differences</a>}
            <a href="#counted">How it was counted</a>
          </nav>
        </div>
        <section id="total" aria-labelledby="total-title">
          <h2 id="total-title">Total</h2>
          <PriceNote book={book} />
          <Total sheet={sheet} />
          <Told title="No price in the book" lines={sheet.missing} />
          <Told title="Questions about the drawing" lines={sheet.questions} />
          <BidTable sheet={sheet} />
          <TakeOffForm sheet={sheet} />
        </section>
        <section id="list" aria-labelledby="list-title">
          <h2 id="list-title" safe>{`List ${takeOffGroupings[sheet.grouping]}`}</h2>
          <PriceNote book={book} brief />
          {sheet.groups.map((group) => (
            <TakeOffTable group={group} book={book} units={job.units} />
          ))}
          <p class="hint">
            Pipe is priced by its developed length, without waste; joints are in the price of their fittings.
            Labor is the book’s, for each part set and joined.
          </p>
        </section>
        <section id="pipe" aria-labelledby="pipe-title">
          <h2 id="pipe-title">Sticks and coils</h2>
          <p class="hint">
            The least that can be found of the lengths that are usually sold: most of these are from memory,
            and a supply house keeps what it likes. Home runs are never spliced; cold and hot pipe of one size
            comes off the same lengths. Developed lengths as drawn: what a fitting takes up is not taken off,
            and where pipe is cut nothing is allowed for mistakes. Neither these lengths nor their couplings
            are in the total.
          </p>
          {sheet.pipes.map((pipe) => (
            <PipeCutList pipe={pipe} coupled={sheet.plan === 'coupled'} units={job.units} />
          ))}
        </section>
        {against === undefined ? '' : <TakeOffDifferences sheet={sheet} against={against} />}
        <section id="counted" aria-labelledby="counted-title">
          <h2 id="counted-title">How it was counted</h2>
          <details>
            <summary>Rules, from common practice without a source</summary>
            <ul>
              {sheet.rules.map((rule) => (
                <li safe>{rule}</li>
              ))}
            </ul>
          </details>
          <h3>Table values and rules of thumb that it rests on</h3>
          <ul>
            {sheet.values.map((value) => (
              <li safe>{value}</li>
            ))}
          </ul>
          <p>
            Rough-in test: test pressure and time are the local code’s, and no more than the pipe, its joints
            and what is connected are rated for. Compressed air can burst what water would only wet: many
            makers of plastic pipe forbid it.
          </p>
        </section>
      </main>
    </Layout>
  );
}

function Total({ sheet }: { readonly sheet: TakeOffSheet }): JSX.Element {
  const { cents, hours, complete, book } = sheet;
  const sum = money(cents, book.currency);
  const labor = `${fixed(hours, 2)} h of labor`;
  return (
    <>
      <p class="sum">
        {complete ? <strong safe>{sum}</strong> : <strong>No total: prices are missing.</strong>}{' '}
        <span safe>{complete ? `and ${labor}` : `What has a price comes to ${sum} and ${labor}.`}</span>
      </p>
      <p class="hint">
        Each line rounded to whole cents, half a cent up, then added. Without waste of pipe and the fixtures
        themselves; labor, tax, overhead and margin are added below where they are typed.
      </p>
    </>
  );
}

function RateField(props: {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly hint: string;
}): JSX.Element {
  return <TextField form="take-off" refused={undefined} numeric {...props} />;
}

function Told({ title, lines }: { readonly title: string; readonly lines: readonly string[] }): JSX.Element {
  if (lines.length === 0) return '';
  const over = lines.length - mostTold;
  return (
    <div class="told">
      <h3 safe>{`${title} (${lines.length})`}</h3>
      <ul>
        {lines.slice(0, mostTold).map((line) => (
          <li safe>{line}</li>
        ))}
        {over > 0 ? <li safe>{`and ${over} more`}</li> : ''}
      </ul>
    </div>
  );
}

/** Which scheme, how it is grouped and against which other one; and the files. */
function TakeOffForm({ sheet }: { readonly sheet: TakeOffSheet }): JSX.Element {
  const { id, job, scheme, grouping, plan, against } = sheet;
  const form = 'take-off';
  const schemes = job.schemes.map((one) => [attribute(one.id), one.name] as const);
  const query = `?scheme=${encodeURIComponent(scheme.id)}`;
  return (
    <>
      <form method="get" action={`/jobs/${id}/takeoff`} class="edit">
        <div class="fields">
          <SelectField
            form={form}
            name="by"
            label="List"
            value={grouping}
            choices={Object.entries(takeOffGroupings)}
          />
          <SelectField
            form={form}
            name="pipe"
            label="Pipe"
            value={plan}
            choices={Object.entries(pipePlans)}
          />
          {schemes.length > 1 ? (
            <>
              <SelectField
                form={form}
                name="scheme"
                label="Scheme"
                value={attribute(scheme.id)}
                choices={schemes}
              />
              <SelectField
                form={form}
                name="against"
                label="Differences against"
                value={attribute(against?.id ?? '')}
                choices={[['', 'none'], ...schemes]}
              />
            </>
          ) : (
            ''
          )}
          <RateField name="rate" label="Labor rate" value={sheet.rates.laborRate} hint="money for an hour" />
          <RateField name="tax" label="Sales tax" value={sheet.rates.tax} hint="% of material" />
          <RateField name="overhead" label="Overhead" value={sheet.rates.overhead} hint="% of direct cost" />
          <RateField name="margin" label="Margin" value={sheet.rates.margin} hint="% of the price" />
          <button type="submit">Show</button>
        </div>
      </form>
      <p class="files">
        <a class="button" href={`/jobs/${id}/takeoff.xlsx${query}&pipe=${plan}`}>
          Workbook (XLSX)
        </a>{' '}
        <a class="button" href={`/jobs/${id}/takeoff.csv${query}`}>
          List (CSV)
        </a>
      </p>
    </>
  );
}
