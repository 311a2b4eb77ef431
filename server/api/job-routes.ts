import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import { jobDocument } from '../answers/computation.ts';
import { readJob } from '../document/read-job.ts';
import { writeJob } from '../document/write-job.ts';
import type { AppContext } from '../routes/context.ts';
import { openOrRefuse } from '../routes/open-or-refuse.ts';
import { createJob, listJobs } from '../storage/job-store.ts';
import { computeJob } from '../workbench/compute-job.ts';
import { saveEdit } from '../workbench/save-edit.ts';
import { type ApiParameter, type ApiRoute, problemsBody, sendJson, sendProblems } from './api-route.ts';
import { bodyBytes } from './body-bytes.ts';

const keptJob = z
  .object({ id: z.string(), name: z.string(), revision: z.int() })
  .meta({ id: 'KeptJob', description: 'a job of the store' });

const keptJobs = z
  .object({ jobs: z.array(keptJob).readonly().meta({ description: 'the last opened first' }) })
  .meta({ id: 'KeptJobs' });

type KeptJob = z.infer<typeof keptJob>;

const idInPath: ApiParameter = { name: 'id', in: 'path', about: 'id of the job', required: true };
const revisionSeen: ApiParameter = {
  name: 'If-Match',
  in: 'header',
  about: 'the ETag of the revision that the change was made on',
  required: true,
};
const etag = { ETag: 'the revision, for If-Match' };
const noJob = { about: 'there is no such job', body: problemsBody };
const noTree = { about: 'the document is no job that computes', body: problemsBody };

/** Kept jobs: listed, read, kept anew, and replaced where nobody changed them since. */
export function jobRoutes(context: AppContext): ApiRoute[] {
  const { store, jobs, now } = context;
  return [
    {
      method: 'GET',
      path: '/api/jobs',
      id: 'listJobs',
      about: 'The jobs of the store.',
      answers: { 200: { about: 'all of them', body: keptJobs } },
      handle: async (_request, reply) => {
        const kept = (await listJobs(store)).map(
          ({ id, name, revision }): KeptJob => ({ id, name, revision }),
        );
        return sendJson(reply, 200, JSON.stringify({ jobs: kept }));
      },
    },
    {
      method: 'POST',
      path: '/api/jobs',
      id: 'keepJob',
      about: 'Keeps a job.',
      body: jobDocument,
      answers: {
        201: { about: 'it is kept', body: keptJob, headers: { ...etag, Location: 'where it is read' } },
        422: noTree,
      },
      handle: async (request, reply) => {
        const read = await readJob(bodyBytes(request));
        if (!read.ok) return sendProblems(reply, 422, read.problems);
        const computed = computeJob(read.job);
        if (!computed.ok) return sendProblems(reply, 422, computed.sentences);
        const { name } = read.job;
        const id = await createJob(store, name, writeJob(read.job), now());
        const kept: KeptJob = { id, name, revision: 1 };
        reply.headers({ etag: etagOf(1), location: `/api/jobs/${id}` });
        return sendJson(reply, 201, JSON.stringify(kept));
      },
    },
    {
      method: 'GET',
      path: '/api/jobs/{id}',
      id: 'readJob',
      about: 'The document of a job as it is now.',
      parameters: [idInPath],
      answers: { 200: { about: 'its file', body: jobDocument, headers: etag }, 404: noJob },
      handle: async (request, reply) => {
        const { document, revision } = await openOrRefuse(context, idOf(request));
        reply.header('etag', etagOf(revision));
        return sendJson(reply, 200, document);
      },
    },
    {
      method: 'PUT',
      path: '/api/jobs/{id}',
      id: 'replaceJob',
      about: 'Replaces the document of a job, if nobody changed it since the revision that If-Match names.',
      parameters: [idInPath, revisionSeen],
      body: jobDocument,
      answers: {
        200: { about: 'it is kept as a new revision', body: keptJob, headers: etag },
        404: noJob,
        412: { about: 'somebody changed it since', body: problemsBody },
        422: noTree,
        428: { about: 'If-Match is missing', body: problemsBody },
      },
      handle: async (request, reply) => {
        const before = await openOrRefuse(context, idOf(request));
        const seen = request.headers['if-match'];
        if (seen === undefined) {
          return sendProblems(reply, 428, [
            'If-Match is missing; expected the ETag that the job was read with',
          ]);
        }
        const read = await readJob(bodyBytes(request));
        if (!read.ok) return sendProblems(reply, 422, read.problems);
        const saved =
          seen === etagOf(before.revision)
            ? await saveEdit(store, jobs, before, { ok: true, job: read.job }, now())
            : ({ ok: false, why: 'clash' } as const);
        if (saved.ok) {
          const { id, revision, job } = saved.open;
          const kept: KeptJob = { id, name: job.name, revision };
          reply.header('etag', etagOf(revision));
          return sendJson(reply, 200, JSON.stringify(kept));
        }
        return saved.why === 'clash'
          ? sendProblems(reply, 412, [
              `the job was changed since that revision; expected If-Match ${etagOf(before.revision)}`,
            ])
          : sendProblems(reply, 422, Object.values(saved.problems));
      },
    },
  ];
}

function etagOf(revision: number): string {
  return `"${revision}"`;
}

/** The id of the address; the route makes sure that there is one. */
function idOf({ params }: FastifyRequest): string {
  return (params as { readonly id: string }).id;
}
