import { EditForm } from '../components/edit-form.tsx';
import { isPast, ReadOnly } from '../components/read-only.tsx';
import { Layout } from '../layout.tsx';
import { AnswerBar } from '../parts/answer-bar.tsx';
import { BasisForm } from '../parts/basis-form.tsx';
import { FindingsList } from '../parts/findings-list.tsx';
import { AddFixtureForm } from '../parts/fixture-list.tsx';
import { freshTextsId, type Here, HerePart, Notice } from '../parts/here.tsx';
import { JobForm, JobTitle } from '../parts/job-head.tsx';
import { JobNav } from '../parts/job-nav.tsx';
import { addGroupForm, addLevelForm, GroupFields, LevelFields } from '../parts/level-list.tsx';
import { PathPanel } from '../parts/path-panel.tsx';
import { AddRunForm } from '../parts/run-list.tsx';
import { RunKeys } from '../parts/run-moves.tsx';
import { SchemeStrip } from '../parts/scheme-strip.tsx';
import { SupplyForm } from '../parts/supply-form.tsx';
import { TrialPanel } from '../parts/trial-panel.tsx';
import { Turns } from '../parts/turns.tsx';
import type { Workbench } from '../workbench.ts';

/** The lists of a job, as they were made for finding out what an edit changes. */
export interface JobLists {
  readonly runs: string;
  readonly runNames: string;
  readonly runEnds: string;
  readonly pipeSizes: string;
  readonly runLines: string;
  readonly fixtures: string;
  readonly levels: string;
  readonly groups: string;
  readonly deviations: string;
}

/** The workbench of one job: the answer, why it is so, and all that it rests on, each part editable in place. */
export function JobPage(props: {
  readonly bench: Workbench;
  readonly here: Here;
  readonly lists: JobLists;
  readonly notice: string;
}): JSX.Element {
  const { bench, here, lists } = props;
  return (
    <Layout title={bench.job.name} class="bench">
      <main id="main" spellcheck="false" hx-sync="this:queue all">
        <HerePart {...here} />
        <div id={freshTextsId} hidden></div>
        <div class="top">
          <AnswerBar bench={bench} />
          {isPast(bench.id) ? '' : <Turns job={bench.id} />}
        </div>
        <Notice text={props.notice} />
        <div class="opening">
          <JobNav job={bench.id} here="" />
          <JobTitle job={bench.job} />
          <ReadOnly job={bench.id}>
            <SchemeStrip bench={bench} />
          </ReadOnly>
          <nav class="contents" aria-label="On this page">
            <a href="#path">Staircase</a>
            <a href="#findings">Findings</a>
            <a href="#layout">Layout</a>
            <a href="#supply-section">Supply</a>
            <a href="#fixtures">Fixtures</a>
            <a href="#levels">Levels and groups</a>
            <a href="#basis-section">Basis</a>
            <a href="#job-section">Job</a>
          </nav>
        </div>
        <TrialPanel bench={bench} />
        <section aria-labelledby="path-title">
          <h2 id="path-title">From street to tap</h2>
          <PathPanel bench={bench} />
        </section>
        <section id="findings" aria-labelledby="findings-title">
          <h2 id="findings-title">Findings</h2>
          <FindingsList bench={bench} />
        </section>
        <ReadOnly job={bench.id}>
          <section id="layout" aria-labelledby="layout-title">
            <h2 id="layout-title">Layout</h2>
            <p class="hint">
              One line a run, in trade words: size, material, length, up or down, fittings, where it ends.
              Each figure opens the way it was found.
            </p>
            <RunKeys />
            {lists.runs as 'safe'}
            {lists.runNames as 'safe'}
            {lists.runEnds as 'safe'}
            {lists.pipeSizes as 'safe'}
            {lists.runLines as 'safe'}
            <h3 id="add-run-title">Add a run</h3>
            <AddRunForm job={bench.id} />
            <p class="hint">
              <a href={`/jobs/${bench.id}/add-runs`}>Add many runs at once</a>, typed or from a spreadsheet.
            </p>
          </section>
          <section id="supply-section" aria-labelledby="supply-title">
            <h2 id="supply-title">Supply</h2>
            <SupplyForm bench={bench} />
          </section>
          <section id="fixtures" aria-labelledby="fixtures-title">
            <h2 id="fixtures-title">Fixtures</h2>
            {lists.fixtures as 'safe'}
            <h3 id="add-fixture-title">Add a fixture with its runs</h3>
            <AddFixtureForm bench={bench} />
          </section>
          <section id="levels" aria-labelledby="levels-title">
            <h2 id="levels-title">Levels and groups</h2>
            <div class="columns">
              <div>
                {lists.levels as 'safe'}
                <EditForm id={addLevelForm} action={`/jobs/${bench.id}/levels`}>
                  <LevelFields system={bench.job.units} />
                </EditForm>
              </div>
              <div>
                {lists.groups as 'safe'}
                <EditForm id={addGroupForm} action={`/jobs/${bench.id}/groups`}>
                  <GroupFields />
                </EditForm>
              </div>
            </div>
          </section>
          <section id="basis-section" aria-labelledby="basis-title">
            <h2 id="basis-title">Basis</h2>
            <BasisForm bench={bench} />
            {lists.deviations as 'safe'}
          </section>
          <section id="job-section" aria-labelledby="job-section-title">
            <h2 id="job-section-title">Job</h2>
            <JobForm bench={bench} />
            <p>
              <a href={`/jobs/${bench.id}/file`}>Download the job file</a>
            </p>
          </section>
        </ReadOnly>
      </main>
      <aside id="explain" aria-label="Explanation"></aside>
    </Layout>
  );
}
