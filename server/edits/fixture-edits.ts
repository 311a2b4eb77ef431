import { sidesOf } from '../../engine/demand/fixture-needs.ts';
import type { Fixture, InletSide, Job, Run } from '../../engine/job/job.ts';
import { parseRunLine } from '../../engine/job/parse-run-line.ts';
import { type FixtureKind, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import type { AddFixtureForm, FixtureForm } from '../forms/fixture-forms.ts';
import { changed, chosenScheme, type Edited, nextId, present, refused, withRuns } from './edited.ts';

/** Whether a kind runs for long by nature. */
function runsForLong(kind: Fixture['kind']): boolean {
  const traits: FixtureKind = fixtureKinds[kind];
  return traits.continuous === true;
}

interface Serving {
  readonly fixture: string;
  readonly side: InletSide;
  readonly from: string;
  readonly line: string;
  readonly fromField: string;
  readonly lineField: string;
}

/** The runs with one more that ends at a fixture's inlet. */
function withServingRun(
  runs: readonly Run[],
  serving: Serving,
): { readonly ok: true; readonly runs: readonly Run[] } | Extract<Edited, { ok: false }> {
  const { fixture, side, from, line, fromField, lineField } = serving;
  const refuse = (field: string, sentence: string) =>
    ({ ok: false, problems: { [field]: sentence } }) as const;
  const at = runs.findIndex((run) => run.id === from);
  if (from === '') return refuse(fromField, `Name the run that the ${side} side comes from.`);
  if (at < 0) return refuse(fromField, `There is no run ${from}.`);
  if (line === '') return refuse(lineField, `Give the run to the ${side} inlet, e.g. 1/2 PEX 10'.`);
  const parsed = parseRunLine(line);
  if (!parsed.ok) return refuse(lineField, `${parsed.problem}.`);
  const { end } = parsed.run;
  if (end !== undefined && !('fixture' in end && end.fixture === fixture && end.inlet === side)) {
    return refuse(lineField, `This run ends at the ${side} inlet; leave out where it ends.`);
  }
  const plain = `${fixture}-${side}`;
  const taken = runs.map((run) => run.id);
  const id = taken.includes(plain) ? nextId(`${plain}-`, taken) : plain;
  const run: Run = { ...parsed.run, id, from, end: { fixture, inlet: side } };
  return { ok: true, runs: [...runs.slice(0, at + 1), run, ...runs.slice(at + 1)] };
}

/** Adds a fixture together with the runs that serve it. */
export function addFixture(job: Job, form: AddFixtureForm): Edited {
  const taken = job.fixtures.map((fixture) => fixture.id);
  if (taken.includes(form.id)) return refused({ id: `There is a fixture ${form.id} already.` });
  const id = form.id === '' ? nextId('F', taken) : form.id;
  const fixture: Fixture = {
    id,
    name: form.name,
    kind: form.kind,
    use: 'private',
    count: 1,
    ...present({
      level: form.level === '' ? undefined : form.level,
      room: form.room === '' ? undefined : form.room,
    }),
  };
  let runs = chosenScheme(job).runs;
  for (const side of sidesOf(fixture)) {
    const served = withServingRun(runs, {
      fixture: id,
      side,
      from: form[`${side}From`],
      line: form[`${side}Line`],
      fromField: `${side}From`,
      lineField: `${side}Line`,
    });
    if (!served.ok) return served;
    runs = served.runs;
  }
  return changed(withRuns({ ...job, fixtures: [...job.fixtures, fixture] }, runs));
}

/** Changes a fixture; a side that is no longer piped loses its run, a new one takes the run given with it. */
export function changeFixture(job: Job, id: string, form: FixtureForm): Edited {
  const previous = job.fixtures.find((fixture) => fixture.id === id);
  if (previous === undefined) return refused({ '': `There is no fixture ${id}.` });
  if (form.id !== id && job.fixtures.some((fixture) => fixture.id === form.id)) {
    return refused({ id: `There is a fixture ${form.id} already.` });
  }
  // What the form does not show, such as a position on the plan, stays as it was.
  const fixture: Fixture = present({
    ...previous,
    id: form.id,
    name: form.name,
    kind: form.kind,
    use: form.use,
    count: form.count,
    level: form.level === '' ? undefined : form.level,
    room: form.room === '' ? undefined : form.room,
    inlets: form.inlets === '' ? undefined : form.inlets,
    height: form.height,
    flow: form.flow,
    pressure: form.pressure,
    group: form.group === '' ? undefined : form.group,
    // Kept only where it differs from what the kind does by nature.
    continuous: form.continuous === runsForLong(form.kind) ? undefined : form.continuous,
  });
  const fixtures = job.fixtures.map((other) => (other.id === id ? fixture : other));
  const sides = sidesOf(fixture);
  const moved: Job = {
    ...job,
    fixtures,
    schemes: job.schemes.map((scheme) => ({
      ...scheme,
      runs: withoutRuns(scheme.runs, (run) => servesOther(run, id, sides)).map((run) =>
        renamed(run, id, form.id),
      ),
    })),
  };
  const added = sides.filter((side) => !sidesOf(previous).includes(side));
  let runs = chosenScheme(moved).runs;
  for (const side of added) {
    const served = withServingRun(runs, {
      fixture: form.id,
      side,
      from: form.newFrom,
      line: form.newLine,
      fromField: 'newFrom',
      lineField: 'newLine',
    });
    if (!served.ok) return served;
    runs = served.runs;
  }
  return changed(added.length === 0 ? moved : withRuns(moved, runs));
}

/** Takes a fixture out of the schedule and its runs out of every scheme. */
export function removeFixture(job: Job, id: string): Edited {
  if (!job.fixtures.some((fixture) => fixture.id === id))
    return refused({ '': `There is no fixture ${id}.` });
  return changed({
    ...job,
    fixtures: job.fixtures.filter((fixture) => fixture.id !== id),
    schemes: job.schemes.map((scheme) => ({
      ...scheme,
      runs: withoutRuns(scheme.runs, (run) => servesOther(run, id, [])),
    })),
  });
}

/** Whether a run ends at a side of the fixture that is not among those kept. */
function servesOther(run: Run, fixture: string, kept: readonly InletSide[]): boolean {
  const { end } = run;
  return end !== undefined && 'fixture' in end && end.fixture === fixture && !kept.includes(end.inlet);
}

/** A run that ends at a fixture feeds no other, so it can be left out by itself. */
function withoutRuns(runs: readonly Run[], gone: (run: Run) => boolean): readonly Run[] {
  return runs.some(gone) ? runs.filter((run) => !gone(run)) : runs;
}

function renamed(run: Run, from: string, to: string): Run {
  const { end } = run;
  if (from === to || end === undefined || !('fixture' in end) || end.fixture !== from) return run;
  return { ...run, end: { ...end, fixture: to } };
}
