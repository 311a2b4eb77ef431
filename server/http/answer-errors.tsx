import type { FastifyInstance, FastifyReply, FastifyRequest, FastifyServerOptions } from 'fastify';
import { MessagePage } from '../../views/pages/message-page.tsx';
import { Notice, noticeId } from '../../views/parts/here.tsx';
import { outOfBand } from '../parts/out-of-band.ts';
import { sendHtml, wantsParts } from './html.ts';
import { Refusal } from './refusal.ts';
import { securityHeaders } from './security-headers.ts';
import { statusOf } from './status-of.ts';
import { storeTrouble } from './store-trouble.ts';

interface Words {
  readonly title: string;
  readonly sentence: string;
}

const words: { readonly [status: number]: Words } = {
  400: { title: 'Not understood', sentence: 'The request could not be understood. Nothing was changed.' },
  404: { title: 'Nothing here', sentence: 'There is no page at this address.' },
  405: { title: 'Not possible here', sentence: 'This address does not take that kind of request.' },
  413: {
    title: 'Too large',
    sentence: 'What was sent is larger than any form or job file. Nothing was changed.',
  },
  414: { title: 'Too long', sentence: 'The address is too long.' },
  415: { title: 'Not a form', sentence: 'What was sent is no form of Hightap. Nothing was changed.' },
};

const fault: Words = {
  title: 'Our mistake',
  sentence: 'Something went wrong inside Hightap; nothing was changed. The terminal that runs it shows more.',
};

function answer(
  request: FastifyRequest,
  reply: FastifyReply,
  status: number,
  { title, sentence }: Words,
): FastifyReply {
  reply.headers(securityHeaders);
  if (wantsParts(request)) {
    return sendHtml(reply, outOfBand({ id: noticeId, html: (<Notice text={sentence} />) as string }), status);
  }
  return sendHtml(reply, (<MessagePage title={title} sentences={[sentence]} />) as string, status);
}

function answerError(error: unknown, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  if (error instanceof Refusal) {
    return answer(request, reply, error.statusCode, { title: error.title, sentence: error.message });
  }
  const trouble = storeTrouble(error);
  if (trouble !== undefined) {
    request.log.error(error);
    reply.header('retry-after', trouble.retryAfter);
    return answer(request, reply, trouble.status, trouble);
  }
  const status = statusOf(error);
  if (status >= 500) {
    request.log.error(error);
    return answer(request, reply, status, fault);
  }
  return answer(request, reply, status, words[status] ?? words[400]!);
}

/** Every refusal and error as a page in words; in place, as a notice on the page. */
export const answerErrors = {
  /** For errors before a route is found, such as an address with a broken percent sign. */
  frameworkOptions: {
    frameworkErrors: (error, request, reply) => void answerError(error, request, reply),
  } satisfies FastifyServerOptions,

  register(app: FastifyInstance): void {
    app.setErrorHandler((error, request, reply) => answerError(error, request, reply));
    app.setNotFoundHandler((request, reply) => answer(request, reply, 404, words[404]!));
  },
};
