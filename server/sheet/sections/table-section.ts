import type { Steps } from '../../../engine/index.ts';
import type { Cited } from '../../../tables/table.ts';
import { units } from '../../../tables/units/definitions.ts';
import type { SheetRow, SheetSection } from '../../../views/sheet.ts';
import { placeText, verificationText } from '../../../views/text/citation-text.ts';
import { figures, group, row, table, words } from '../blocks.ts';

/** Marks a value that nobody could compare with its document. */
const unverifiedMark = '†';

interface Used {
  readonly cite: Cited;
  times: number;
}

/** Every table value that a figure of the sheet rests on, under its table with document, edition and place. */
export function tableSection(steps: Steps): SheetSection {
  const rows = [...valuesUsed(steps).values()].flatMap((values): SheetRow[] => {
    const all = [...values.values()].sort((one, other) => inOrder(one.cite, other.cite));
    return [group(tableText(all[0]!.cite)), ...all.map(valueRow)];
  });
  return {
    id: 'tables',
    title: 'Table values, each with its document',
    blocks: [
      table(
        'Values read, by table',
        [
          words('Row'),
          figures('Value'),
          words(''),
          figures('Times read'),
          words('How far it was compared with the document'),
        ],
        rows,
        `${unverifiedMark} From memory or common practice: not compared with a document. Check it before you rely on it.`,
      ),
    ],
  };
}

/** By table, then by row and column; the flow or units at which a curve is read are no value of its own. */
function valuesUsed(steps: Steps): Map<string, Map<string, Used>> {
  const tables = new Map<string, Map<string, Used>>();
  for (const { terms } of steps.values()) {
    for (const term of Object.values(terms)) {
      if (term.from !== 'table' || isPointOfCurve(term.cite)) continue;
      const { cite } = term;
      const values = tables.get(cite.table.id) ?? new Map<string, Used>();
      tables.set(cite.table.id, values);
      const key = `${cite.row ?? ''} ${cite.column ?? ''}`;
      const known = values.get(key);
      if (known === undefined) values.set(key, { cite, times: 1 });
      else known.times++;
    }
  }
  return tables;
}

function isPointOfCurve({ table: read, unit, row: at, printed }: Cited): boolean {
  return read.kind === 'curve' && unit === read.x && unit !== read.y && String(printed) === at;
}

function inOrder(one: Cited, other: Cited): number {
  return rowText(one).localeCompare(rowText(other), 'en', { numeric: true });
}

function tableText({ table: { title, source, at } }: Cited): string {
  return `${title}: ${placeText(source, at)}`;
}

function valueRow({ cite, times }: Used): SheetRow {
  const { verified, source, at, table: from } = cite;
  const mark = verified === 'memory' || verified === 'common-practice' ? unverifiedMark : '';
  const elsewhere = source === undefined && at === undefined;
  const place = elsewhere ? '' : `; ${placeText(source ?? from.source, at ?? from.at)}`;
  return row(
    rowText(cite),
    `${cite.printed} ${units[cite.unit].symbol}`.trim(),
    mark,
    String(times),
    `${verificationText(verified)}${place}`,
  );
}

function rowText({ table: from, row: at, column }: Cited): string {
  const point = from.kind === 'curve' ? `at ${at} ${units[from.x].symbol}`.trim() : at;
  return [point, column].filter((part) => part !== undefined).join(', ');
}
