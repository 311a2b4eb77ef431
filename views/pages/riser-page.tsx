import { Layout } from '../layout.tsx';
import { DrawingSvg } from '../parts/drawing-svg.tsx';
import { JobNav } from '../parts/job-nav.tsx';
import { RiserTable } from '../parts/riser-table.tsx';
import { runAddress } from '../parts/run-address.ts';
import type { RiserView } from '../riser.ts';
import { drawingTitle, leftOutText, runText, viewNames, worstPathText } from '../text/riser-text.ts';

/** The drawing of a scheme with what it says in words and as a table. */
export function RiserPage({ view }: { readonly view: RiserView }): JSX.Element {
  const { id, report, drawing, marked } = view;
  const { job, scheme } = report.network;
  const name = viewNames[typeof drawing === 'string' ? 'riser' : drawing.view];
  return (
    <Layout title={`${name} of ${job.name}`} class="riser-page">
      <main id="main">
        <div class="opening">
          <JobNav job={id} here="/riser" />
          <p class="back">
            <a href={`/jobs/${id}`} safe>
              {job.name}
            </a>
          </p>
          <h1>{name}</h1>
          <p>
            Scheme <strong safe>{scheme.name}</strong>
            <span class="on-screen">
              {(['riser', 'plan'] as const).map((view) =>
                viewNames[view] === name ? (
                  ''
                ) : (
                  <>
                    {' '}
                    · <a href={`/jobs/${id}/riser?view=${view}`}>{viewNames[view]}</a>
                  </>
                ),
              )}
            </span>
          </p>
        </div>
        <section id="drawing" aria-labelledby="drawing-heading">
          <h2 id="drawing-heading">Drawing</h2>
          <p safe>{worstPathText(report, view.worstPath)}</p>
          {view.notice === '' ? '' : <p safe>{view.notice}</p>}
          {marked === undefined ? (
            ''
          ) : (
            <p>
              <strong>Marked</strong> <span safe>{runText(report, marked)}</span>
            </p>
          )}
          {typeof drawing === 'string' ? (
            <p safe>{`${drawing} The table has them all.`}</p>
          ) : (
            <Sheet view={view} drawing={drawing} />
          )}
        </section>
        <section id="runs-drawn" aria-labelledby="runs-drawn-heading">
          <h2 id="runs-drawn-heading">The same as a table</h2>
          <RiserTable view={view} />
        </section>
      </main>
    </Layout>
  );
}

function Sheet(props: {
  readonly view: RiserView;
  readonly drawing: Exclude<RiserView['drawing'], string>;
}): JSX.Element {
  const { view, drawing } = props;
  const { id, report, marked } = view;
  const leftOut = leftOutText(report, drawing);
  return (
    <>
      {leftOut === '' ? '' : <p safe>{leftOut}</p>}
      <p class="hint on-screen">A click on a run leads to its row on the workbench.</p>
      <section class="scroll drawn-sheet" tabindex="0" aria-label="Sheet of the drawing">
        <DrawingSvg
          id="drawing-title"
          drawing={drawing}
          title={drawingTitle(report, drawing.view)}
          about={(at) => runText(report, at)}
          link={(at) => runAddress(id, report.network.runs[at]!.id)}
          marked={marked}
        />
      </section>
    </>
  );
}
