import type { UnitSystem } from '../../engine/job/job.ts';
import { TextField } from '../components/field.tsx';
import { Verdict } from '../components/verdict.tsx';
import { Layout } from '../layout.tsx';
import { figureWithUnit, signedPressure } from '../text/figure.ts';
import type { Problems } from '../workbench.ts';

/** One job in the list with its answer; `problem` where its document does not compute. */
export interface JobListRow {
  readonly id: string;
  readonly name: string;
  readonly answer:
    | {
        readonly system: UnitSystem;
        readonly worst: string;
        readonly residual: number;
        readonly margin: number;
        readonly passes: boolean;
      }
    | { readonly problem: string };
}

/** All jobs with their answers, and the ways to get another one. */
export function JobsPage(props: {
  readonly jobs: readonly JobListRow[];
  readonly starts: readonly { readonly key: string; readonly name: string }[];
  readonly problems?: Problems;
}): JSX.Element {
  const problems = props.problems ?? {};
  return (
    <Layout title="Jobs">
      <main id="main" class="plain">
        <h1>Jobs</h1>
        {props.jobs.length === 0 ? (
          <p>There are no jobs yet.</p>
        ) : (
          <ul class="jobs">
            {props.jobs.map((job) => (
              <li>
                <a class="job-name" href={`/jobs/${job.id}`} safe>
                  {job.name}
                </a>
                <Answer answer={job.answer} />
                <span class="job-links">
                  <a href={`/jobs/${job.id}/file`}>
                    File<span class="visually-hidden" safe>{` of ${job.name}`}</span>
                  </a>{' '}
                  <a href={`/jobs/${job.id}/delete`}>
                    Delete<span class="visually-hidden" safe>{` ${job.name}`}</span>
                  </a>
                </span>
              </li>
            ))}
          </ul>
        )}
        <p>
          <a href="/bin">Bin</a>: jobs and price books that were deleted in the last 30 days.
        </p>
        <section aria-labelledby="new-title">
          <h2 id="new-title">New job</h2>
          <p>
            <a href="/quick-start">Quick start</a>: a house with three layouts from a few questions. Or a copy
            of another job:
          </p>
          <form id="new-job" method="post" action="/jobs" class="edit">
            <div class="fields">
              <TextField
                form="new-job"
                name="name"
                label="Name"
                value=""
                required
                refused={problems.name === undefined ? undefined : { values: {}, problems }}
              />
              <div class="field">
                <label for="new-job:start">Starting from</label>
                <select id="new-job:start" name="start">
                  {props.starts.map(({ key, name }) => (
                    <option value={key} safe>
                      {name}
                    </option>
                  ))}
                </select>
              </div>
              <button type="submit" class="act">
                Make the job
              </button>
            </div>
          </form>
        </section>
        <section aria-labelledby="upload-title">
          <h2 id="upload-title">Upload a job file</h2>
          <form id="upload" method="post" action="/jobs/upload" enctype="multipart/form-data" class="edit">
            <div class="fields">
              <div class="field wide">
                <label for="upload:file">A file ending in .hightap.json</label>
                <input
                  id="upload:file"
                  name="file"
                  type="file"
                  accept=".json,application/json"
                  required
                  aria-invalid={problems.file === undefined ? undefined : 'true'}
                  aria-describedby={problems.file === undefined ? undefined : 'upload:file:problem'}
                />
                {problems.file === undefined ? (
                  ''
                ) : (
                  <span class="problem" id="upload:file:problem" safe>
                    {problems.file}
                  </span>
                )}
              </div>
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

function Answer({ answer }: { answer: JobListRow['answer'] }): JSX.Element {
  if ('problem' in answer) {
    return (
      <span class="job-answer" safe>
        {answer.problem}
      </span>
    );
  }
  return (
    <span class="job-answer">
      <Verdict passes={answer.passes} short={answer.margin < 0} />{' '}
      <span safe>
        {`${answer.worst}: ${figureWithUnit(answer.residual, 'pressure', answer.system)} left, ${signedPressure(answer.margin, answer.system)}`}
      </span>
    </span>
  );
}
