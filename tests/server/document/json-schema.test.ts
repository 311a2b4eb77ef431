import { describe, expect, it } from 'vitest';
import { jobJsonSchema } from '../../../server/document/json-schema.ts';
import { smallJob } from './small-job.ts';

interface Node {
  readonly type?: string;
  readonly properties?: { readonly [field: string]: Node };
  readonly items?: Node;
  readonly anyOf?: readonly Node[];
  readonly oneOf?: readonly Node[];
  readonly description?: string;
  readonly title?: string;
  readonly const?: unknown;
  readonly additionalProperties?: unknown;
  readonly required?: readonly string[];
}

const schema = JSON.parse(JSON.stringify(jobJsonSchema())) as Node;

describe('jobJsonSchema', () => {
  it('has a title, refuses unknown fields and knows every field of a job', () => {
    expect(schema.title).toBe('Hightap job');
    expect(schema.additionalProperties).toBe(false);
    for (const field of Object.keys(smallJob)) expect(schema.properties).toHaveProperty(field);
    expect(schema.required).not.toContain('note');
  });

  it('describes every field that is no list, object or fixed value, a quantity with its units', () => {
    const undescribed: string[] = [];
    const walk = (node: Node, place: string): void => {
      const inner = [...(node.anyOf ?? []), ...(node.oneOf ?? [])];
      if (
        inner.length === 0 &&
        node.type !== 'object' &&
        node.const === undefined &&
        node.description === undefined
      ) {
        undescribed.push(place);
      }
      for (const each of inner) walk(each, place);
      if (node.items !== undefined) walk(node.items, `${place}[]`);
      for (const [field, each] of Object.entries(node.properties ?? {})) walk(each, `${place}.${field}`);
    };
    walk(schema, '');
    expect(undescribed).toEqual([]);
    expect(schema.properties?.levels?.items?.properties?.elevation?.description).toContain('ft, in, m or mm');
  });
});
