/** What one module takes from another: the path as written, and whether it takes types only. */
export interface Import {
  readonly from: string;
  readonly typesOnly: boolean;
}

/** The static imports and re-exports of a module's text. */
export function importsOf(text: string): Import[] {
  const found: Import[] = [];
  for (const match of text.matchAll(
    /^\s*(?:import|export)\s+(type\s+)?([^'";]*?)\s*from\s+['"]([^'"]+)['"]/gm,
  )) {
    const [, typed, names = '', from = ''] = match;
    const listed = names
      .replace(/[{}]/g, '')
      .split(',')
      .map((name) => name.trim())
      .filter((name) => name !== '');
    const typesOnly =
      typed !== undefined || (listed.length > 0 && listed.every((name) => name.startsWith('type ')));
    found.push({ from, typesOnly });
  }
  for (const match of text.matchAll(/^\s*import\s+['"]([^'"]+)['"]/gm))
    found.push({ from: match[1]!, typesOnly: false });
  for (const match of text.matchAll(/\bimport\(\s*['"]([^'"]+)['"]\s*\)/g))
    found.push({ from: match[1]!, typesOnly: false });
  return found;
}

/** Rooms that a room may take values from, and rooms that it may take types from; packages by name. */
export const allowed: Readonly<
  Record<string, { readonly values: readonly string[]; readonly types: readonly string[] }>
> = {
  tables: { values: ['tables'], types: ['tables'] },
  engine: { values: ['tables', 'engine', 'decimal.js'], types: ['tables', 'engine', 'decimal.js'] },
  views: {
    values: ['tables', 'views', '@kitajs/html'],
    types: ['tables', 'views', 'engine', '@kitajs/html', 'decimal.js'],
  },
};

/**
 * Why an import breaks the arrows between rooms, or undefined.
 *
 * @param path of the importing module, from the root
 */
export function breach(path: string, { from, typesOnly }: Import): string | undefined {
  const room = path.split('/')[0]!;
  const rule = allowed[room];
  if (rule === undefined) return undefined;
  const target = targetRoom(path, from);
  // One file of mathjs reads typed quantities.
  if (target === 'node_modules' && path === 'engine/units/math-unit.ts') return undefined;
  if ((typesOnly ? rule.types : rule.values).includes(target)) return undefined;
  return `${path} takes ${typesOnly ? 'types' : 'values'} from ${from}`;
}

function targetRoom(path: string, from: string): string {
  if (!from.startsWith('.')) return from.startsWith('@kitajs/html') ? '@kitajs/html' : from;
  const parts = path.split('/').slice(0, -1);
  for (const part of from.split('/')) {
    if (part === '..') parts.pop();
    else if (part !== '.') parts.push(part);
  }
  return parts[0] ?? '';
}
