import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { roughness } from '../../tables/pipe/roughness.ts';
import { sources } from '../../tables/sources.ts';
import { collectTables, tableModules } from './collect-tables.ts';

const known = Object.values(sources);

/** Names of sources in a text, in either spelling of the property. */
const named = (text: string): string[] =>
  [...text.matchAll(/\bsources(?:\.([a-z]\w*)|\['([^']+)'\])/g)].map((match) => match[1] ?? match[2]!);

function textsOf(room: 'tables' | 'engine'): string[] {
  const root = fileURLToPath(new URL(`../../${room}`, import.meta.url));
  const paths = room === 'tables' ? tableModules() : readdirSync(root, { recursive: true, encoding: 'utf8' });
  return paths.filter((path) => path.endsWith('.ts')).map((path) => readFileSync(`${root}/${path}`, 'utf8'));
}

describe('sources', () => {
  it('stand under their own id', () => {
    for (const [key, { id }] of Object.entries(sources)) expect(id).toBe(key);
  });

  it('hold every source that a table or a rule cites', async () => {
    const cited = (await collectTables()).sources;
    expect(cited.length).toBeGreaterThan(50);
    for (const source of cited) expect(known, source.title).toContain(source);
  });

  it('of a single cell count among those that a table cites', async () => {
    expect((await collectTables()).sources).toContain(roughness.rows.cpvc.cells?.c?.source);
  });

  it('are each cited by a table, a rule or a formula', () => {
    const used = new Set([...textsOf('tables'), ...textsOf('engine')].flatMap(named));
    expect(Object.keys(sources).filter((id) => !used.has(id))).toEqual([]);
  });
});
