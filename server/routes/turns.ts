import type { FastifyInstance } from 'fastify';
import { formFields } from '../forms/form-fields.ts';
import { sendHtml, wantsParts } from '../http/html.ts';
import { openPanels } from '../workbench/panels.tsx';
import { renderChanges, renderNotice, renderPage } from '../workbench/render-page.tsx';
import { nothingText, type Turn, turnJob, turnText } from '../workbench/turn-job.ts';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';
import { pageAddress } from './page-address.ts';

const olderText =
  'Nothing was undone or redone: this job was changed elsewhere since this page was loaded. Reload the page to see it as it is now.';

/** Undo and redo: answer a page's post by a redirect, a post in place by the parts that changed. */
export function registerTurns(app: FastifyInstance, context: AppContext): void {
  for (const turn of ['undo', 'redo'] as const satisfies readonly Turn[]) {
    app.post<{ Params: { id: string } }>(`/jobs/:id/${turn}`, async (request, reply) => {
      const { id } = request.params;
      const fields = formFields(request.body);
      const path = fields.livePath ?? fields.path ?? '';
      const before = await openOrRefuse(context, id);
      const seen = Number(fields.liveRevision ?? fields.revision ?? before.revision);
      const moved =
        seen === before.revision
          ? await turnJob(context.store, turn, before, context.now())
          : ({ ok: false, clash: true } as const);
      const inPlace = wantsParts(request);
      if (moved.ok) {
        if (!inPlace) return reply.redirect(pageAddress(id, path, 'main', turn), 303);
        const after = await openOrRefuse(context, id);
        const view = { path, panels: openPanels(fields.livePanels) };
        return sendHtml(reply, renderChanges(before, after, view, turnText(turn, before, after)));
      }
      const text = moved.clash ? olderText : nothingText(turn);
      const status = moved.clash ? 409 : 200;
      if (inPlace) return sendHtml(reply, renderNotice(text), status);
      return sendHtml(reply, renderPage(await openOrRefuse(context, id), path, text), status);
    });
  }
}
