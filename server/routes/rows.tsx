import type { FastifyInstance } from 'fastify';
import { RowPage } from '../../views/pages/row-page.tsx';
import { fixturePanel, fixtureRowId } from '../../views/parts/fixture-ids.ts';
import { HereInputs } from '../../views/parts/here.tsx';
import { runPanel, runRowId } from '../../views/parts/run-ids.ts';
import { hereMark } from '../../views/workbench.ts';
import { sendHtml, wantsParts } from '../http/html.ts';
import { Refusal } from '../http/refusal.ts';
import { panelHtml } from '../workbench/panels.tsx';
import { workbenchOf } from '../workbench/workbench.tsx';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';

const kinds = [
  { path: 'runs', panel: runPanel, row: runRowId, word: 'run' },
  { path: 'fixtures', panel: fixturePanel, row: fixtureRowId, word: 'fixture' },
] as const;

/** The fields of one run or fixture: unfolded in its row, or as a page of their own. */
export function registerRows(app: FastifyInstance, context: AppContext): void {
  for (const { path, panel, row, word } of kinds) {
    app.get<{ Params: { id: string; place: string } }>(`/jobs/:id/${path}/:place`, async (request, reply) => {
      const { id, place } = request.params;
      const open = await openOrRefuse(context, id);
      const bench = workbenchOf(open, '');
      const html = panelHtml(bench, panel(place));
      if (html === undefined) {
        throw new Refusal(
          404,
          `No such ${word}`,
          `This job has no ${word} ${place}; it may have been renamed or deleted.`,
        );
      }
      if (wantsParts(request)) return sendHtml(reply, html.replaceAll(hereMark, ''));
      const page = await (
        <RowPage
          bench={bench}
          title={`${word === 'run' ? 'Run' : 'Fixture'} ${place}`}
          row={row(place)}
          panel={html}
        />
      );
      const here = (<HereInputs revision={open.revision} path="" />) as string;
      return sendHtml(reply, page.replaceAll(hereMark, here));
    });
  }
}
