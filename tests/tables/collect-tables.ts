import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Source, Table } from '../../tables/table.ts';

const root = new URL('../../tables/', import.meta.url);

/** Paths of the modules of the tables room. */
export function tableModules(): string[] {
  return readdirSync(fileURLToPath(root), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .sort();
}

/** Every table and every source that a module of the tables room exports, at whatever depth; each once. */
export async function collectTables(): Promise<{ tables: Table[]; sources: Source[] }> {
  const seen = new Set<object>();
  const tables: Table[] = [];
  const sources: Source[] = [];
  const walk = (value: unknown) => {
    if (typeof value !== 'object' || value === null || seen.has(value)) return;
    seen.add(value);
    if ('kind' in value && 'source' in value) tables.push(value as Table);
    if ('source' in value) sources.push(value.source as Source);
    for (const part of Object.values(value)) walk(part);
  };
  for (const path of tableModules()) {
    if (path === 'sources.ts') continue;
    walk({ ...(await import(new URL(path, root).href)) });
  }
  return { tables, sources };
}
