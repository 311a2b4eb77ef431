import { profiles } from '../../tables/profiles.ts';
import { FormProblem, SelectField, TextField, TickField } from '../components/field.tsx';
import { Layout } from '../layout.tsx';
import { LevelRow } from '../parts/level-fields.tsx';
import { mostLevels, quickStartDefaults } from '../quick-start.ts';
import type { Refused } from '../workbench.ts';

const form = 'quick-start';
const shownRows = 3;

/** A house from a few questions: every answer may be corrected afterwards. */
export function QuickStartPage({ refused }: { refused: Refused | undefined }): JSX.Element {
  const values = refused?.values ?? quickStartDefaults;
  const rows = Array.from({ length: mostLevels }, (_, row) => (
    <LevelRow form={form} row={row} values={values} refused={refused} />
  ));
  const more = rows.slice(shownRows);
  const usesMore = rows.some((_, row) => row >= shownRows && (values[`level${row}`] ?? '') !== '');
  const field = (name: string, label: string): JSX.Element => (
    <TextField form={form} name={name} label={label} value={values[name] ?? ''} refused={refused} />
  );
  return (
    <Layout title="Quick start" class="quick-start">
      <main id="main" class="plain">
        <h1>Quick start</h1>
        <p>
          A few answers make a house with its fixtures in place and three layouts: trunk and branch, home
          runs, and zone manifolds, each sized at least cost. All of it is a first draft to correct
          afterwards; the rooms stand on a plain rectangle.
        </p>
        <form id={form} method="post" action="/quick-start" class="edit" autocomplete="off">
          <FormProblem refused={refused} />
          {refused === undefined ? (
            ''
          ) : (
            <p class="problem" role="alert">
              Nothing was made yet: some answers do not do; each says why.
            </p>
          )}
          <h2>The job</h2>
          <div class="fields job-fields">
            <TextField
              form={form}
              name="name"
              label="Name"
              value={values.name ?? ''}
              refused={refused}
              required
              wide
            />
            <SelectField
              form={form}
              name="profile"
              label="Code"
              value={values.profile ?? ''}
              choices={Object.entries(profiles).map(
                ([id, { title, edition }]) => [id, `${title} ${edition}`] as const,
              )}
              refused={refused}
            />
            <SelectField
              form={form}
              name="units"
              label="Units"
              value={values.units ?? ''}
              choices={[
                ['us', 'feet, psi, gpm'],
                ['si', 'metres, kPa, L/s'],
              ]}
              hint="of figures, and of numbers typed without a unit"
              refused={refused}
            />
          </div>
          <h2>Levels, the lowest first</h2>
          <p class="hint">A level without a name is not there. The kitchen is on the level that is marked.</p>
          {refused?.problems.kitchen === undefined ? (
            ''
          ) : (
            <p class="problem" safe>
              {refused.problems.kitchen}
            </p>
          )}
          {rows.slice(0, shownRows) as 'safe'[]}
          <details open={usesMore}>
            <summary>More levels</summary>
            {more as 'safe'[]}
          </details>
          <h2>Outdoors and extras</h2>
          <div class="fields">
            {field('hoseBibbs', 'Hose bibbs') as 'safe'}
            <TickField
              form={form}
              name="iceMaker"
              label="Ice maker in the kitchen"
              value={values.iceMaker ?? ''}
              refused={refused}
            />
            <TickField
              form={form}
              name="rainShower"
              label="Rain and hand shower in a top bath"
              value={values.rainShower ?? ''}
              refused={refused}
            />
          </div>
          <h2>Water</h2>
          <div class="fields water-fields">
            <SelectField
              form={form}
              name="source"
              label="It comes from"
              value={values.source ?? ''}
              choices={[
                ['street', 'a street main'],
                ['well', 'a well pump with a pressure tank'],
              ]}
              hint="only its own pressures are read"
              refused={refused}
            />
            {field('low', 'Street, daily low') as 'safe'}
            {field('high', 'Street, daily high') as 'safe'}
            {field('cutIn', 'Well, cut-in') as 'safe'}
            {field('cutOut', 'Well, cut-out') as 'safe'}
          </div>
          <button type="submit" class="act">
            Make the house
          </button>
        </form>
      </main>
    </Layout>
  );
}
