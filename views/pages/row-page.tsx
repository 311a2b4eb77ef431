import { ReadOnly } from '../components/read-only.tsx';
import { Layout } from '../layout.tsx';
import { BesideStrip } from '../parts/beside-strip.tsx';
import type { Workbench } from '../workbench.ts';

/**
 * The fields of one run or fixture as a page of their own, for browsers without the script and for a new tab. Its
 * forms post as pages do and lead back to the workbench.
 */
export function RowPage(props: {
  readonly bench: Workbench;
  readonly title: string;
  /** Id of the row on the workbench. */
  readonly row: string;
  readonly panel: string;
}): JSX.Element {
  const { bench, title, row, panel } = props;
  return (
    <Layout title={`${title}, ${bench.job.name}`}>
      <main id="main" class="plain" spellcheck="false" hx-disable>
        <div class="opening">
          <h1 safe>{title}</h1>
          <p>
            <a href={`/jobs/${bench.id}#${encodeURIComponent(row)}`} safe>{`Back to ${bench.job.name}`}</a>
          </p>
          <BesideStrip job={bench.id} />
        </div>
        <section class="panel" aria-label="Fields">
          <ReadOnly job={bench.id}>{panel as 'safe'}</ReadOnly>
        </section>
      </main>
    </Layout>
  );
}
