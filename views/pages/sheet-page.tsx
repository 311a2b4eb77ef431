import type { Job, UnitSystem } from '../../engine/job/job.ts';
import { attribute } from '../components/attribute.ts';
import { SelectField } from '../components/field.tsx';
import { Layout } from '../layout.tsx';
import { JobNav } from '../parts/job-nav.tsx';
import { SheetBlockView } from '../parts/sheet-block.tsx';
import { type Paper, papers, type Sheet } from '../sheet.ts';

const unitChoices: readonly (readonly [UnitSystem, string])[] = [
  ['us', 'psi, gpm, feet'],
  ['si', 'kPa, L/s, metres'],
];

/** The whole calculation as it is handed in, with the choices of its PDF. */
export function SheetPage(props: {
  readonly id: string;
  readonly job: Job;
  readonly scheme: string;
  readonly sheet: Sheet;
}): JSX.Element {
  const { id, sheet } = props;
  return (
    <Layout title={`Sheet of ${sheet.title}`} class="sheet">
      <main id="main">
        <div class="opening">
          <JobNav job={id} here="/sheet" />
          <h1 safe>{sheet.title}</h1>
          <p class="subtitle" safe>
            {sheet.subtitle}
          </p>
          <p class="running">
            Job file <strong safe>{sheet.mark}</strong>
            <span safe>{sheet.date === '' ? '' : ` · ${sheet.date}`}</span>
          </p>
          <Choices {...props} />
          <nav class="contents" aria-label="On this page">
            {sheet.sections.map(({ id, title }) => (
              <a href={`#${id}`} safe>
                {title}
              </a>
            ))}
          </nav>
        </div>
        {sheet.sections.map(({ id, title, blocks }, at) => (
          <section id={id} aria-labelledby={`${id}-title`}>
            <h2 id={`${id}-title`}>
              <span class="number">{at + 1}</span> <span safe>{title}</span>
            </h2>
            {blocks.map((block) => (
              <SheetBlockView block={block} />
            ))}
          </section>
        ))}
      </main>
    </Layout>
  );
}

function Choices(props: {
  readonly id: string;
  readonly job: Job;
  readonly scheme: string;
  readonly sheet: Sheet;
}): JSX.Element {
  const { id, job, scheme, sheet } = props;
  const query = new URLSearchParams({ scheme, units: sheet.system, paper: sheet.paper });
  const schemes = job.schemes.map((one) => [attribute(one.id), one.name] as const);
  return (
    <>
      <form method="get" action={`/jobs/${id}/sheet`} class="edit">
        <div class="fields">
          {schemes.length > 1 ? (
            <SelectField
              form="sheet"
              name="scheme"
              label="Layout"
              value={attribute(scheme)}
              choices={schemes}
            />
          ) : (
            ''
          )}
          <SelectField form="sheet" name="units" label="Units" value={sheet.system} choices={unitChoices} />
          <SelectField
            form="sheet"
            name="paper"
            label="Paper"
            value={sheet.paper}
            choices={Object.entries(papers) as (readonly [Paper, string])[]}
          />
          <button type="submit">Show</button>
        </div>
      </form>
      <p class="files">
        <a class="button" href={`/jobs/${id}/sheet.pdf?${query}`}>
          PDF
        </a>
      </p>
      <p class="hint">
        Each page of the PDF carries the first digits of the job file’s SHA-256, so that paper and file can be
        matched: they stand above, in full under “Job and basis”, and <code>hightap sheet --match</code>{' '}
        compares them with a file.
      </p>
    </>
  );
}
