import type { FastifyInstance, InjectOptions } from 'fastify';

export interface ApiAnswered {
  readonly status: number;
  readonly json: unknown;
  readonly headers: Readonly<Record<string, unknown>>;
}

export interface ApiClient {
  readonly ask: (computation: string, question: object) => Promise<ApiAnswered>;
  readonly send: (
    method: InjectOptions['method'],
    url: string,
    body?: unknown,
    headers?: Record<string, string>,
  ) => Promise<ApiAnswered>;
}

/** Speaks JSON with an app. */
export function apiOf(app: FastifyInstance): ApiClient {
  const send: ApiClient['send'] = async (method, url, body, headers = {}) => {
    const answer = await app.inject({
      method: method ?? 'GET',
      url,
      headers: body === undefined ? headers : { 'content-type': 'application/json', ...headers },
      ...(body === undefined ? {} : { payload: JSON.stringify(body) }),
    });
    return { status: answer.statusCode, json: JSON.parse(answer.body), headers: answer.headers };
  };
  return { send, ask: (computation, question) => send('POST', `/api/${computation}`, question) };
}
