import { Layout } from '../layout.tsx';
import { ChangedRuns } from '../parts/changed-runs.tsx';
import { Notice } from '../parts/here.tsx';
import { JobNav } from '../parts/job-nav.tsx';
import { MethodTable } from '../parts/method-table.tsx';
import { PriceNote } from '../parts/price-note.tsx';
import { PsiList } from '../parts/psi-list.tsx';
import { worstName } from '../parts/scheme-rows.tsx';
import { SizingForm, UseSizesForm } from '../parts/sizing-form.tsx';
import { StreetPlot } from '../parts/street-plot.tsx';
import type { SizingFound, SizingView } from '../sizing.ts';
import { figureWithUnit, signedPressure } from '../text/figure.ts';
import { money } from '../text/money.ts';
import { unsizedText } from '../text/unsized-text.ts';

/** Least-cost sizing of the chosen scheme: what may change, the answer, the hand methods, and what a psi costs. */
export function SizingPage(props: { readonly view: SizingView; readonly notice: string }): JSX.Element {
  const { view } = props;
  const { id, job, scheme, found } = view;
  return (
    <Layout title={`Sizing of ${job.name}`} class="sizing">
      <main id="main">
        <Notice text={props.notice} />
        <div class="opening">
          <JobNav job={id} here="/sizing" />
          <p class="back">
            <a href={`/jobs/${id}`} safe>
              {job.name}
            </a>
          </p>
          <h1>Sizing at least cost</h1>
          <p>
            Scheme <strong safe>{scheme.name}</strong>
            {job.schemes.length > 1 ? (
              <>
                {' '}
                · <a href={`/jobs/${id}/compare`}>all schemes side by side</a>
              </>
            ) : (
              ''
            )}
          </p>
        </div>
        <section aria-labelledby="question-title">
          <h2 id="question-title">What may change</h2>
          <SizingForm view={view} />
        </section>
        {found === undefined ? '' : <Found view={view} found={found} />}
      </main>
    </Layout>
  );
}

function Found({ view, found }: { view: SizingView; found: SizingFound }): JSX.Element {
  const { book } = view;
  return (
    <>
      <section id="answer" aria-labelledby="answer-title">
        <h2 id="answer-title">Answer</h2>
        <PriceNote book={book} />
        {found.least === undefined ? (
          <Nothing view={view} found={found} />
        ) : (
          <>
            <LeastCost view={view} found={found} />
            {found.least.changed.length > 0 ? <UseSizesForm view={view} /> : ''}
            <ChangedRuns view={view} changed={found.least.changed} />
          </>
        )}
      </section>
      <section aria-labelledby="methods-title">
        <h2 id="methods-title">Beside the hand methods</h2>
        <PriceNote book={book} brief />
        <MethodTable view={view} found={found} />
        <p class="hint">
          Pipe and the fittings drawn; devices cost the same whatever the sizes. The hand methods promise no
          pressure at the tap: below zero is short there.
        </p>
      </section>
      <section aria-labelledby="curve-title">
        <h2 id="curve-title">Least cost and pressure at the street</h2>
        <PriceNote book={book} brief />
        <StreetPlot view={view} found={found} />
      </section>
      <section aria-labelledby="psi-title">
        <h2 id="psi-title">What pressure costs</h2>
        <PriceNote book={book} brief />
        <PsiList view={view} prices={found.psi} />
      </section>
    </>
  );
}

function LeastCost({ view, found }: { view: SizingView; found: SizingFound }): JSX.Element {
  const { currency } = view.book;
  const { units } = view.job;
  const drawn = found.methods.find(({ method }) => method === 'drawn');
  const least = found.methods.find(({ method }) => method === 'least-cost');
  if (least?.cost === undefined || least.worst === undefined) return '';
  const saves = drawn?.cost === undefined ? undefined : drawn.cost.cents - least.cost.cents;
  return (
    <p class="least-answer">
      <strong safe>{money(least.cost.cents, currency)}</strong>
      <span safe>
        {` for pipe and fittings, the least that holds every limit${savesText(saves, currency)}. ${worstName(least.worst)}, then has ${figureWithUnit(least.worst.residual, 'pressure', units)}, ${signedPressure(least.worst.margin, units)} against what it needs.`}
      </span>
    </p>
  );
}

function savesText(saves: number | undefined, currency: string): string {
  if (saves === undefined || saves === 0) return '';
  return saves > 0
    ? `; ${money(saves, currency)} less than as drawn`
    : `; ${money(-saves, currency)} more than as drawn`;
}

function held({ question: { keep, trunks, notLarger } }: SizingView): boolean {
  return keep.length > 0 || trunks.length > 0 || notLarger;
}

/** Why nothing fits, and what would make it fit. */
function Nothing({ view, found }: { view: SizingView; found: SizingFound }): JSX.Element {
  const { units } = view.job;
  const { unsized, curve, available, missing } = found;
  const least = curve.at(-1);
  return (
    <>
      {unsized === undefined ? (
        ''
      ) : (
        <p>
          <strong safe>{unsizedText(unsized, missing, units)}</strong>
        </p>
      )}
      {unsized?.why === 'no-pipe' ? (
        <p>Keep these runs as they are drawn, or allow more kinds of pipe.</p>
      ) : least === undefined ? (
        <p>
          More pressure at the street would not help: a reducing valve holds it back, or the sizes that are
          kept or tied do. Raise its set pressure, or free some runs.
        </p>
      ) : (
        <p safe>
          {`It would fit from ${figureWithUnit(least.need, 'pressure', units)} at the street under demand; the supply gives ${figureWithUnit(available, 'pressure', units)}. Or ${held(view) ? 'free runs that are kept or tied, ' : ''}take a larger meter or a device that loses less, shorten the path, or draw up another scheme.`}
        </p>
      )}
    </>
  );
}
