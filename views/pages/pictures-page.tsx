import { attribute } from '../components/attribute.ts';
import { SelectField } from '../components/field.tsx';
import { Layout } from '../layout.tsx';
import { Notice } from '../parts/here.tsx';
import { JobNav } from '../parts/job-nav.tsx';
import { StaircasePair } from '../parts/staircase-pair.tsx';
import { SupplyPicture } from '../parts/supply-picture.tsx';
import { VelocityPicture } from '../parts/velocity-picture.tsx';
import { beforeTrial, type Pictures } from '../pictures.ts';
import { signedPressure } from '../text/figure.ts';
import { pathKey } from '../workbench.ts';

const styleSheets = ['uplot.css', 'pictures.css'];
const scripts = ['uplot.js', 'pictures.js'];

/** The pictures of one scheme: two staircases, the supply curve with the demand, and velocity by run. */
export function PicturesPage({ pictures }: { readonly pictures: Pictures }): JSX.Element {
  const { id, job, report, pair } = pictures;
  return (
    <Layout title={`Pictures of ${job.name}`} class="pictures" styleSheets={styleSheets} scripts={scripts}>
      <main id="main">
        <Notice text={pictures.notice} />
        <div class="opening">
          <JobNav job={id} here="/pictures" />
          <p class="back">
            <a href={`/jobs/${id}`} safe>
              {job.name}
            </a>
          </p>
          <h1>Pictures</h1>
          <p>
            Scheme <strong safe>{report.network.scheme.name}</strong>
          </p>
          <nav class="contents" aria-label="On this page">
            <a href="#staircases">Staircases</a>
            <a href="#supply">Supply</a>
            <a href="#velocity">Velocity</a>
          </nav>
        </div>
        <section id="staircases" aria-labelledby="staircases-title">
          <h2 id="staircases-title">Two staircases</h2>
          {pair === undefined ? (
            <p>The staircases appear as soon as a run ends at a fixture.</p>
          ) : (
            <>
              <PairForm pictures={pictures} />
              <StaircasePair id="staircases" pair={pair} system={job.units} />
            </>
          )}
        </section>
        <section id="supply" aria-labelledby="supply-title">
          <h2 id="supply-title">Supply and demand</h2>
          <SupplyPicture pictures={pictures} />
        </section>
        <section id="velocity" aria-labelledby="velocity-title">
          <h2 id="velocity-title">Velocity by run</h2>
          <VelocityPicture pictures={pictures} />
        </section>
      </main>
    </Layout>
  );
}

const beforeChoice = [beforeTrial, 'as B, before the trial'] as const;

/** Which two paths are shown. */
function PairForm({ pictures }: { readonly pictures: Pictures }): JSX.Element {
  const { id, job, report, pair } = pictures;
  const choices = report.inlets.map(
    ({ inlet, margin }) =>
      [
        attribute(pathKey(inlet.fixture.id, inlet.side)),
        `${inlet.fixture.name}, ${inlet.side} (${signedPressure(margin, job.units)})`,
      ] as const,
  );
  return (
    <form method="get" action={`/jobs/${id}/pictures`} class="edit">
      <div class="fields">
        {pair?.map(({ letter, path, when }) => (
          <SelectField
            form="pair"
            name={letter.toLowerCase()}
            label={`Staircase ${letter}`}
            value={when === 'before' ? beforeTrial : attribute(pathKey(path.fixture.id, path.side))}
            choices={letter === 'A' && pictures.tried ? [beforeChoice, ...choices] : choices}
          />
        ))}
        <button type="submit">Show</button>
      </div>
    </form>
  );
}
