import { readAddress } from '../job-address.ts';
import { TrialActions } from './trial-actions.tsx';

/** Says on a page of an earlier revision, or of a trial, that this is not the job as it is, and leads on from there. */
export function BesideStrip({ job }: { readonly job: string }): JSX.Element {
  const address = readAddress(job);
  switch (address.at) {
    case 'job':
      return '';
    case 'revision':
      return <PastStrip job={address.job} revision={address.revision} />;
    case 'trial':
      return (
        <aside class="beside" aria-label="Trial">
          <p>
            <strong>Trying changes that are not saved.</strong> <a href={`/jobs/${job}`}>What they change</a>
          </p>
          <TrialActions trial={job} />
        </aside>
      );
  }
}

function PastStrip({ job, revision }: { readonly job: string; readonly revision: number }): JSX.Element {
  return (
    <aside class="beside" aria-label="Earlier revision">
      <p>
        <strong safe>{`Revision ${revision} of this job; read only.`}</strong>{' '}
        <a href={`/jobs/${job}`}>Back to the job as it is</a>
      </p>
      <form method="post" action={`/jobs/${job}/history/${revision}/back`}>
        <button type="submit" safe>{`Go back to revision ${revision}`}</button>
      </form>
    </aside>
  );
}
