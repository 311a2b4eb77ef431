import type { FastifyInstance } from 'fastify';
import { formFields } from '../forms/form-fields.ts';
import { sendHtml, wantsParts } from '../http/html.ts';
import type { EditAction, Place } from '../workbench/edit-action.ts';
import { fixtureActions } from '../workbench/fixture-actions.tsx';
import { jobActions } from '../workbench/job-actions.tsx';
import { levelActions } from '../workbench/level-actions.tsx';
import { openPanels } from '../workbench/panels.tsx';
import { problemText, renderChanges, renderPage, renderRefusal } from '../workbench/render-page.tsx';
import { runActions } from '../workbench/run-actions.tsx';
import { saveSeen } from '../workbench/save-seen.ts';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';
import { pageAddress } from './page-address.ts';

const againText =
  'Not saved: changed elsewhere, see above. What you entered stands here; save it again to put it in place of the other.';

/** Every form of the workbench, with its address behind `/jobs/:id`. */
export const editActions: readonly EditAction[] = [
  ...runActions,
  ...fixtureActions,
  ...levelActions,
  ...jobActions,
];

/** Registers every form: answers a page's post by a redirect, a post in place by the parts that changed. */
export function registerEdits(app: FastifyInstance, context: AppContext): void {
  for (const action of editActions) {
    app.post<{ Params: { id: string; place?: Place } }>(`/jobs/:id${action.path}`, async (request, reply) => {
      const { id, place = '' } = request.params;
      const now = await openOrRefuse(context, id);
      const {
        revision: loaded,
        path: loadedPath = '',
        liveRevision,
        livePath,
        livePanels,
        ...fields
      } = formFields(request.body);
      const revision = liveRevision ?? loaded;
      const path = livePath ?? loadedPath;
      const seen = revision === undefined ? undefined : Number(revision);
      const { shown, saved } = await saveSeen({ ...context, time: context.now() }, now, seen, ({ job }) =>
        action.apply(job, fields, place),
      );
      const inPlace = wantsParts(request);
      const view = { path, panels: openPanels(livePanels) };
      if (saved.ok) {
        const { open, merged } = saved;
        if (inPlace) return sendHtml(reply, renderChanges(shown, open, view, merged, { action, place }));
        if (merged !== '') return sendHtml(reply, renderPage(open, path, merged));
        return reply.redirect(pageAddress(id, path, action.anchor(place)), 303);
      }
      if (saved.why === 'clash') {
        const { head, text } = saved;
        const form = { action, place, refused: { values: fields, problems: { '': againText } } };
        if (inPlace) return sendHtml(reply, renderChanges(shown, head, view, text, form), 409);
        return sendHtml(reply, renderPage(head, path, text, form), 409);
      }
      const form = { action, place, refused: { values: fields, problems: saved.problems } };
      if (inPlace) return sendHtml(reply, renderRefusal(shown, view, form), 422);
      return sendHtml(reply, renderPage(shown, path, problemText(saved.problems), form), 422);
    });
  }
}
