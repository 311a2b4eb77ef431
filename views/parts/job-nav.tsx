import { readAddress } from '../job-address.ts';
import { BesideStrip } from './beside-strip.tsx';

/** Every page of a job: its address behind `/jobs/:id`, and what it is called. */
export const jobPages = [
  ['', 'Workbench'],
  ['/pictures', 'Pictures'],
  ['/add-runs', 'Add many runs'],
  ['/compare', 'Schemes side by side'],
  ['/sizing', 'Size at least cost'],
  ['/takeoff', 'Take-off'],
  ['/riser', 'Riser'],
  ['/history', 'History'],
  ['/sheet', 'Sheet'],
] as const;

export type JobPageAddress = (typeof jobPages)[number][0];

/**
 * Links to the pages of one job; the page that is open says so. Below them what a reader of an earlier revision, or of
 * a trial, has to know; the workbench says the latter by itself.
 */
export function JobNav({ job, here }: { readonly job: string; readonly here: JobPageAddress }): JSX.Element {
  return (
    <>
      <nav class="job-pages" aria-label="Pages of this job">
        {jobPages.map(([address, label]) => (
          <a
            href={`/jobs/${encodeURIComponent(job)}${address}`}
            {...(address === here ? { 'aria-current': 'page' } : {})}
          >
            {label}
          </a>
        ))}
      </nav>
      {here === '' && readAddress(job).at === 'trial' ? '' : <BesideStrip job={job} />}
    </>
  );
}
