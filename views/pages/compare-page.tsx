import { isPast } from '../components/read-only.tsx';
import { Layout } from '../layout.tsx';
import { DrawUpForm } from '../parts/draw-up-form.tsx';
import { Notice } from '../parts/here.tsx';
import { JobNav } from '../parts/job-nav.tsx';
import { PriceNote } from '../parts/price-note.tsx';
import { SchemeActions } from '../parts/scheme-actions.tsx';
import { SchemeTable } from '../parts/scheme-table.tsx';
import { SparePlot } from '../parts/spare-plot.tsx';
import type { Comparison } from '../schemes.ts';
import { missingText } from '../text/missing-text.ts';
import type { Refused } from '../workbench.ts';

/** The schemes of a job side by side, in a table and in a picture, and the ways to get another one. */
export function ComparePage(props: {
  readonly comparison: Comparison;
  readonly notice: string;
  readonly refused: Refused | undefined;
}): JSX.Element {
  const { comparison } = props;
  const { id, job, columns } = comparison;
  return (
    <Layout title={`Schemes of ${job.name}`} class="compare">
      <main id="main">
        <Notice text={props.notice} />
        <div class="opening">
          <JobNav job={id} here="/compare" />
          <p class="back">
            <a href={`/jobs/${id}`} safe>
              {job.name}
            </a>
          </p>
          <h1>Schemes side by side</h1>
          <nav class="contents" aria-label="On this page">
            <a href="#schemes">Schemes</a>
            <a href="#spare">Cost and spare pressure</a>
            {isPast(id) ? '' : <a href="#another">Draw up another</a>}
          </nav>
        </div>
        <section id="schemes" aria-labelledby="schemes-title">
          <h2 id="schemes-title">Schemes</h2>
          <PriceNote book={comparison.book} />
          {columns.length > 0 ? <SchemeTable comparison={comparison} /> : ''}
          <p class="hint">
            Price of pipe, the fittings drawn, and devices; fixtures and labor are not in it. Each run and
            device is rounded to whole cents before the total. A wait is the water in a cold hot pipe over the
            fixture’s own flow; a real one is longer.
          </p>
          <Broken comparison={comparison} />
          <ShownSchemes comparison={comparison} />
        </section>
        <section id="spare" aria-labelledby="spare-title">
          <h2 id="spare-title">Cost and spare pressure</h2>
          <PriceNote book={comparison.book} brief />
          <SparePlot comparison={comparison} />
        </section>
        {isPast(id) ? '' : <Another comparison={comparison} refused={props.refused} />}
      </main>
    </Layout>
  );
}

/** Draws up another scheme; not for an earlier revision, which stays as it is. */
function Another(props: {
  readonly comparison: Comparison;
  readonly refused: Refused | undefined;
}): JSX.Element {
  const { comparison, refused } = props;
  return (
    <section id="another" aria-labelledby="another-title">
      <h2 id="another-title">Draw up another</h2>
      <p class="hint">
        From the fixtures, their places and the chosen scheme’s service, with lengths along the plan’s axes.
        It is a first draft: correct it in the workbench.
      </p>
      {comparison.job.places === undefined ? (
        <p safe>{missingText({ code: 'places' }, comparison.job)}</p>
      ) : (
        <DrawUpForm comparison={comparison} refused={refused} />
      )}
    </section>
  );
}

function Broken({ comparison }: { comparison: Comparison }): JSX.Element {
  return (
    <>
      {comparison.broken.map(({ scheme, sentences }) => (
        <div class="broken">
          <p>
            <strong safe>{scheme.name}</strong>{' '}
            <span safe>{`makes no tree: ${sentences.slice(0, 5).join(' ')}`}</span>
          </p>
          <SchemeActions comparison={comparison} scheme={scheme.id} name={scheme.name} />
        </div>
      ))}
    </>
  );
}

/** With more schemes than stand side by side: which of them do. */
function ShownSchemes({ comparison }: { comparison: Comparison }): JSX.Element {
  const { job, id, columns, broken } = comparison;
  const shown = new Set([
    ...columns.map(({ compared }) => compared.id),
    ...broken.map(({ scheme }) => scheme.id),
  ]);
  if (job.schemes.length <= shown.size && comparison.asked.length === 0) return '';
  return (
    <form method="get" action={`/jobs/${id}/compare`} class="edit shown-schemes">
      <fieldset>
        <legend>Side by side, six at most</legend>
        {job.schemes.map((scheme) => (
          <div class="field tick">
            <input
              id={`show:${scheme.id}`}
              name="show"
              type="checkbox"
              value={scheme.id}
              checked={shown.has(scheme.id)}
            />
            <label for={`show:${scheme.id}`} safe>
              {scheme.name}
            </label>
          </div>
        ))}
        <button type="submit">Show these</button>
      </fieldset>
    </form>
  );
}
