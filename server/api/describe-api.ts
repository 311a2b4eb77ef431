import { readFileSync } from 'node:fs';
import { z } from 'zod';
import type { ApiAnswer, ApiRoute } from './api-route.ts';

const schemaAddress = (id: string): string => `#/components/schemas/${id}`;

/** The OpenAPI 3.1 document of the JSON interface, from the routes that are registered. */
export function describeApi(routes: readonly ApiRoute[]): object {
  const paths: Record<string, Record<string, object>> = {};
  for (const route of routes) {
    paths[route.path] = { ...paths[route.path], [route.method.toLowerCase()]: describeRoute(route) };
  }
  return {
    openapi: '3.1.1',
    info: {
      title: 'Hightap',
      version: version(),
      description:
        "Sizes a building's water supply. Figures are SI and unrounded, the unit at the end of each key; money is a decimal in a string. A key may be added to an answer; none changes its meaning while the version of the answer stays. Computed for planning: the local code, its inspector and the licensed plumber decide.",
    },
    paths,
    components: { schemas: namedSchemas() },
  };
}

function describeRoute({ id, about, parameters = [], body, answers }: ApiRoute): object {
  return {
    operationId: id,
    summary: about,
    ...(parameters.length === 0
      ? {}
      : {
          parameters: parameters.map(({ name, in: place, about: description, required }) => {
            return { name, in: place, description, required, schema: { type: 'string' } };
          }),
        }),
    ...(body === undefined ? {} : { requestBody: { required: true, content: jsonOf(body) } }),
    responses: Object.fromEntries(
      Object.entries(answers).map(([status, answer]) => [status, describeAnswer(answer)]),
    ),
  };
}

function describeAnswer({ about, body, headers }: ApiAnswer): object {
  return {
    description: about,
    ...(headers === undefined
      ? {}
      : {
          headers: Object.fromEntries(
            Object.entries(headers).map(([name, description]) => [
              name,
              { description, schema: { type: 'string' } },
            ]),
          ),
        }),
    ...(body === undefined ? {} : { content: jsonOf(body) }),
  };
}

/** @throws where the schema has no id to be referred to by */
function jsonOf(schema: z.ZodType): object {
  const id = schema.meta()?.id;
  if (id === undefined) throw new Error('a body of the JSON interface has no id in its metadata');
  return { 'application/json': { schema: { $ref: schemaAddress(id) } } };
}

/** Every schema with an id, as it stands in the components of the document. */
function namedSchemas(): object {
  const { schemas } = z.toJSONSchema(z.globalRegistry, {
    io: 'input',
    uri: schemaAddress,
    override: ({ jsonSchema }) => {
      // Said of lists that our own code may not change; in OpenAPI it would mean that a client may not send them.
      delete jsonSchema.readOnly;
    },
  });
  return Object.fromEntries(
    Object.entries(schemas).map(([id, { $schema: _schema, $id: _id, ...schema }]) => [id, schema]),
  );
}

function version(): string {
  const manifest: unknown = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
  return typeof manifest === 'object' && manifest !== null && 'version' in manifest
    ? String(manifest.version)
    : '0.0.0';
}
