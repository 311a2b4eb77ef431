import { formPartId } from '../../views/components/edit-form.tsx';
import { fillPanel } from '../../views/components/panel.tsx';
import type { Part } from '../../views/part.ts';
import { FixtureFields } from '../../views/parts/fixture-fields.tsx';
import { fixtureForm, fixturePanel } from '../../views/parts/fixture-ids.ts';
import { FixturePanel } from '../../views/parts/fixture-panel.tsx';
import { RunEditFields } from '../../views/parts/run-fields.tsx';
import { fieldsForm, runPanel } from '../../views/parts/run-ids.ts';
import { RunPanel } from '../../views/parts/run-panel.tsx';
import type { Workbench } from '../../views/workbench.ts';

/** The fields of one row, which the page holds only while they are unfolded. */
interface Panel {
  readonly html: () => string;
  /** What of it an edit elsewhere may change. */
  readonly fields: () => Part;
}

function panelOf(bench: Workbench, id: string): Panel | undefined {
  const row = bench.rows.find(({ run }) => runPanel(run.id) === id);
  if (row !== undefined) {
    return {
      html: () => (<RunPanel row={row} bench={bench} />) as string,
      fields: () => ({
        id: formPartId(fieldsForm(row.run.id)),
        html: (<RunEditFields row={row} system={bench.job.units} />) as string,
      }),
    };
  }
  const fixture = bench.job.fixtures.find((one) => fixturePanel(one.id) === id);
  if (fixture === undefined) return undefined;
  return {
    html: () => (<FixturePanel fixture={fixture} bench={bench} />) as string,
    fields: () => ({
      id: formPartId(fixtureForm(fixture.id)),
      html: (<FixtureFields fixture={fixture} job={bench.job} />) as string,
    }),
  };
}

/** The content of a panel, or undefined where the job has no such row. */
export function panelHtml(bench: Workbench, id: string): string | undefined {
  return panelOf(bench, id)?.html();
}

/** What an edit may change in the panels that a page has unfolded. */
export function panelParts(bench: Workbench, ids: readonly string[]): readonly Part[] {
  return ids.flatMap((id) => panelOf(bench, id)?.fields() ?? []);
}

/** Markup of a page or of rows with these panels unfolded. */
export function unfold(html: string, bench: Workbench, ids: readonly string[]): string {
  return ids.reduce((filled, id) => {
    const panel = panelHtml(bench, id);
    return panel === undefined ? filled : fillPanel(filled, id, panel);
  }, html);
}

/** Most panels that one answer keeps up to date. */
const mostOpen = 20;

/** Ids of panels as the page's script names them: apart by spaces. */
export function openPanels(typed: string | undefined): readonly string[] {
  return (typed ?? '')
    .split(' ')
    .filter((id) => id !== '')
    .slice(0, mostOpen);
}
