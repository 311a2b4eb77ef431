import { JobPage } from '../../views/pages/job-page.tsx';
import { markupOf, type Part } from '../../views/part.ts';
import { type Here, HereInputs, HerePart, Notice, noticeId } from '../../views/parts/here.tsx';
import { hereMark, type Refused } from '../../views/workbench.ts';
import { changedParts } from '../parts/changed-parts.ts';
import { changesOutOfBand, outOfBand } from '../parts/out-of-band.ts';
import type { EditAction, Place } from './edit-action.ts';
import { panelParts, unfold } from './panels.tsx';
import { type OpenJob, partsOf, pathPartOf, workbenchOf } from './workbench.tsx';

/** A form of the workbench in its place. */
export interface PlacedForm {
  readonly action: EditAction;
  readonly place: Place;
  readonly refused?: Refused;
}

/** A form that was refused, to be shown in its place. */
export type RefusedForm = Required<PlacedForm>;

/** The whole workbench; with a refused form, that form stands in its place, opened and with what was typed. */
export function renderPage(open: OpenJob, path: string, notice = '', form?: RefusedForm): string {
  const parts = partsOf(open);
  const here: Here = { revision: open.revision, path };
  const bench = workbenchOf(open, path);
  const lists = {
    runs: markupOf(parts.runs),
    runNames: markupOf(parts.runNames),
    runEnds: markupOf(parts.runEnds),
    pipeSizes: markupOf(parts.pipeSizes),
    runLines: markupOf(parts.runLines),
    fixtures: markupOf(parts.fixtures),
    levels: markupOf(parts.levels),
    groups: markupOf(parts.groups),
    deviations: markupOf(parts.deviations),
  };
  let page = (<JobPage bench={bench} here={here} lists={lists} notice={notice} />) as string;
  if (form !== undefined) {
    const { action, place, refused } = form;
    const panel = action.panel?.(place);
    if (panel !== undefined) page = unfold(page, bench, [panel]);
    const plain = action.fields(bench, place);
    const shown = action.fields(bench, place, refused);
    if (plain !== undefined && shown !== undefined) page = page.replace(plain, () => shown);
  }
  return page.replaceAll(hereMark, (<HereInputs {...here} />) as string);
}

/** Where the reader is on a page that stays as it is. */
export interface View {
  /** The chosen path; empty: the worst fixture's. */
  readonly path: string;
  /** Ids of the panels that are unfolded. */
  readonly panels: readonly string[];
}

/**
 * What changed on a page that showed `before`, each piece to be swapped by its id, with a sentence about it.
 *
 * @param form the form that was posted
 */
export function renderChanges(
  before: OpenJob,
  after: OpenJob,
  { path, panels }: View,
  text = '',
  form?: PlacedForm,
): string {
  const shown = (open: OpenJob): readonly Part[] => [
    ...Object.values(partsOf(open)),
    pathPartOf(open, path),
    ...panelParts(workbenchOf(open, path), panels),
  ];
  // A form in a panel that is folded is nowhere to be put.
  const own = form !== undefined && isShown(form, panels) ? ownPart(after, path, form) : undefined;
  const changes = changedParts(shown(before), shown(after)).filter(
    (change) => change.what !== 'replace' || change.part.id !== own?.id,
  );
  // The form may still show an earlier refusal, which no comparison of the two states can see.
  const sent = [...alwaysSent(after, path, text), ...(own === undefined ? [] : [own])]
    .map(outOfBand)
    .join('');
  const html = `${changesOutOfBand(changes)}${sent}`;
  return unfold(html, workbenchOf(after, path), panels).replaceAll(hereMark, '');
}

/** A refused form in its place, for a page that stays as it is. */
export function renderRefusal(open: OpenJob, { path, panels }: View, form: RefusedForm): string {
  const own = isShown(form, panels) ? ownPart(open, path, form) : undefined;
  const parts: Part[] = own === undefined ? [notice(problemText(form.refused.problems))] : [notice(''), own];
  return parts.map(outOfBand).join('');
}

/** A sentence above the page, for a page that stays as it is. */
export function renderNotice(text: string): string {
  return outOfBand(notice(text));
}

/** Another path on a page that stays as it is. */
export function renderPath(open: OpenJob, path: string): string {
  return [...alwaysSent(open, path, ''), pathPartOf(open, path)].map(outOfBand).join('');
}

export function problemText(problems: Refused['problems']): string {
  return `Nothing was changed. ${Object.values(problems).join(' ')}`;
}

function alwaysSent(open: OpenJob, path: string, text: string): Part[] {
  const here = (<HerePart revision={open.revision} path={path} />) as string;
  return [{ id: 'here', html: here }, notice(text)];
}

function notice(text: string): Part {
  return { id: noticeId, html: (<Notice text={text} />) as string };
}

function isShown({ action: { panel }, place }: PlacedForm, panels: View['panels']): boolean {
  return panel === undefined || panels.includes(panel(place));
}

function ownPart(open: OpenJob, path: string, { action, place, refused }: PlacedForm): Part | undefined {
  const html = action.fields(workbenchOf(open, path), place, refused);
  return html === undefined ? undefined : { id: `${action.form(place)}:fields`, html };
}
