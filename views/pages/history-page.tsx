import { attribute } from '../components/attribute.ts';
import { Layout } from '../layout.tsx';
import { JobNav } from '../parts/job-nav.tsx';

/** One revision in the list: `change` and `name` are empty where nobody said. */
export interface HistoryRow {
  readonly number: number;
  readonly savedAt: string;
  readonly change: string;
  readonly name: string;
  readonly shown: boolean;
}

/** A trial that was neither kept nor dropped. */
export interface HistoryTrial {
  readonly address: string;
  readonly startedAt: string;
  /** The revision that it started from. */
  readonly base: number;
}

/** The revisions of a job, the latest first: what each changed, its name, and the way back to it. */
export function HistoryPage(props: {
  readonly id: string;
  /** Where its reader is: the job, an earlier revision, or a trial. */
  readonly address: string;
  readonly jobName: string;
  readonly revision: number;
  readonly rows: readonly HistoryRow[];
  /** The number below which older ones go on; undefined on the last page. */
  readonly older: number | undefined;
  readonly trials: readonly HistoryTrial[];
}): JSX.Element {
  const { id, jobName, rows, older } = props;
  return (
    <Layout title={`History of ${jobName}`}>
      <main id="main">
        <h1 safe>{`History of ${jobName}`}</h1>
        <JobNav job={props.address} here="/history" />
        <Trials trials={props.trials} />
        <p class="hint">
          Every save is a revision. Going back to one makes a new revision of it: nothing is lost, and undo
          takes it back.
        </p>
        <section class="scroll" tabindex="0" aria-label="Revisions">
          <table>
            <thead>
              <tr>
                <th scope="col">Revision</th>
                <th scope="col">Saved</th>
                <th scope="col">What changed</th>
                <th scope="col">Name</th>
                <th scope="col">Open, keep, go back</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <Row id={id} revision={props.revision} row={row} />
              ))}
            </tbody>
          </table>
        </section>
        {older === undefined ? (
          ''
        ) : (
          <p>
            <a href={`/jobs/${id}/history?before=${older}`}>Older revisions</a>
          </p>
        )}
      </main>
    </Layout>
  );
}

function Trials({ trials }: { trials: readonly HistoryTrial[] }): JSX.Element {
  if (trials.length === 0) return '';
  return (
    <section aria-labelledby="trials-title">
      <h2 id="trials-title">Being tried, not saved</h2>
      <ul>
        {trials.map(({ address, startedAt, base }) => (
          <li>
            <a href={`/jobs/${address}`}>
              Trial of <Time at={startedAt} />
            </a>
            <span safe>{`, from revision ${base}`}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Time({ at }: { at: string }): JSX.Element {
  return (
    <time datetime={at} safe>
      {`${at.slice(0, 16).replace('T', ' ')} UTC`}
    </time>
  );
}

function Row({ id, revision, row }: { id: string; revision: number; row: HistoryRow }): JSX.Element {
  const { number, savedAt, change, name, shown } = row;
  const field = `name:${number}`;
  return (
    <tr>
      <th scope="row" safe>
        {`${number}${shown ? ' (shown)' : ''}`}
      </th>
      <td>
        <Time at={savedAt} />
      </td>
      <td safe>{change}</td>
      <td>
        <form method="post" action={`/jobs/${id}/history/${number}/name`} autocomplete="off">
          <label class="visually-hidden" for={field} safe>
            {`Name of revision ${number}`}
          </label>
          <input id={field} name="name" type="text" maxlength="100" value={attribute(name)} />
          <button type="submit" class="act">
            Name it
          </button>
        </form>
      </td>
      <td>
        <a href={`/jobs/${id}~${number}`} safe>{`Open ${number}`}</a>{' '}
        <a href={`/jobs/${id}/history/${number}/file`} safe>{`File of ${number}`}</a>
        {shown ? (
          ''
        ) : (
          <form method="post" action={`/jobs/${id}/history/${number}/back`}>
            <input type="hidden" name="revision" value={String(revision)} />
            <button type="submit" class="act" safe>
              {`Go back to ${number}`}
            </button>
          </form>
        )}
      </td>
    </tr>
  );
}
