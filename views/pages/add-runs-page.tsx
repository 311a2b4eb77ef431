import type { Job, Run } from '../../engine/job/job.ts';
import { AreaField, FormProblem, TextField } from '../components/field.tsx';
import { ReadOnly } from '../components/read-only.tsx';
import { Layout } from '../layout.tsx';
import { JobNav } from '../parts/job-nav.tsx';
import type { Refused } from '../workbench.ts';

/** One pasted line: what it became, or why it will not do. */
export interface PastedRun {
  /** From 1, blank lines counted. */
  readonly number: number;
  readonly id: string;
  readonly from: string;
  readonly line: string;
  readonly run?: Run;
  readonly problem?: string;
}

const form = 'add-runs';

/** Many runs at once: the lines, what each became, and only then the job is changed. */
export function AddRunsPage(props: {
  readonly id: string;
  readonly revision: number;
  readonly job: Job;
  /** What was typed, with what is wrong with it as a whole. */
  readonly asked: Refused;
  /** Left out where nothing was looked at yet. */
  readonly pasted?: readonly PastedRun[];
}): JSX.Element {
  const { id, job, asked, pasted = [] } = props;
  const good = pasted.length > 0 && Object.keys(asked.problems).length === 0;
  return (
    <Layout title={`Add many runs to ${job.name}`}>
      <main id="main">
        <JobNav job={id} here="/add-runs" />
        <p class="back">
          <a href={`/jobs/${id}#layout`} safe>
            {job.name}
          </a>
        </p>
        <h1>Add many runs</h1>
        <p class="hint">
          One run a line: its name, the run that it comes from, and the run in trade words, parted by
          semicolon or tab, as a spreadsheet copies three columns. Name and feeding run may be left out: the
          name is then the next free one, and the run hangs on the nearest line above with fewer spaces before
          it.
        </p>
        <ReadOnly job={id}>
          <form id={form} method="post" action={`/jobs/${id}/add-runs`} class="edit" autocomplete="off">
            <input type="hidden" name="revision" value={String(props.revision)} />
            <div class="fields">
              <FormProblem refused={asked} />
              <TextField
                form={form}
                name="from"
                label="Comes from, where a line does not say"
                value=""
                refused={asked}
              />
              <AreaField form={form} name="lines" label="Runs" value="" refused={asked} />
              <button type="submit" class="act" name="step" value="look">
                See what each line becomes
              </button>
              {good ? (
                <button type="submit" class="act" name="step" value="add" safe>
                  {`Add ${pasted.length} ${pasted.length === 1 ? 'run' : 'runs'}`}
                </button>
              ) : (
                ''
              )}
            </div>
          </form>
        </ReadOnly>
        {pasted.length === 0 ? '' : <PastedTable pasted={pasted} />}
      </main>
    </Layout>
  );
}

function PastedTable({ pasted }: { readonly pasted: readonly PastedRun[] }): JSX.Element {
  return (
    <section class="scroll" tabindex="0" aria-label="What each line becomes">
      <table id="pasted">
        <thead>
          <tr>
            <th scope="col" class="numeric">
              Line
            </th>
            <th scope="col">Run</th>
            <th scope="col">Comes from</th>
            <th scope="col">As a line</th>
            <th scope="col">Will it do</th>
          </tr>
        </thead>
        <tbody>
          {pasted.map(({ number, id, from, line, problem }) => (
            <tr>
              <td class="numeric" safe>
                {String(number)}
              </td>
              <th scope="row" safe>
                {id}
              </th>
              <td safe>{from}</td>
              <td safe>{line}</td>
              <td>
                {problem === undefined ? (
                  '✓ yes'
                ) : (
                  <span class="problem" safe>
                    {problem}
                  </span>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
