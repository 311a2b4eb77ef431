import type { FastifyInstance } from 'fastify';
import { formFields } from '../forms/form-fields.ts';
import { sendHtml, wantsParts } from '../http/html.ts';
import type { EditAction, Place } from '../workbench/edit-action.ts';
import { fixtureActions } from '../workbench/fixture-actions.tsx';
import { jobActions } from '../workbench/job-actions.tsx';
import { levelActions } from '../workbench/level-actions.tsx';
import {
  problemText,
  renderChanges,
  renderNotice,
  renderPage,
  renderRefusal,
} from '../workbench/render-page.tsx';
import { runActions } from '../workbench/run-actions.tsx';
import { saveEdit } from '../workbench/save-edit.ts';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';
import { pageAddress } from './page-address.ts';

const clashText =
  'Nothing was changed: this job was changed elsewhere since this page was loaded. Reload the page to see it as it is now.';

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
      const before = await openOrRefuse(context, id);
      const {
        revision: loaded,
        path: loadedPath = '',
        liveRevision,
        livePath,
        ...fields
      } = formFields(request.body);
      const revision = liveRevision ?? loaded;
      const path = livePath ?? loadedPath;
      const expected = revision === undefined ? before.revision : Number(revision);
      const edited = expected === before.revision ? action.apply(before.job, fields, place) : refusedByClash;
      const saved = await saveEdit(context.store, context.jobs, before, expected, edited, context.now());
      const inPlace = wantsParts(request);
      if (saved.ok) {
        if (inPlace) return sendHtml(reply, renderChanges(before, saved.open, path, action, place));
        return reply.redirect(pageAddress(id, path, action.anchor(place)), 303);
      }
      if (saved.why === 'clash') {
        if (inPlace) return sendHtml(reply, renderNotice(clashText), 409);
        const current = await openOrRefuse(context, id);
        return sendHtml(reply, renderPage(current, path, clashText), 409);
      }
      const form = { action, place, refused: { values: fields, problems: saved.problems } };
      if (inPlace) return sendHtml(reply, renderRefusal(before, path, form), 422);
      return sendHtml(reply, renderPage(before, path, problemText(saved.problems), form), 422);
    });
  }
}

const refusedByClash = { ok: false, problems: {} } as const;
