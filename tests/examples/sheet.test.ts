import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Pdf, sheetPdf } from '../../server/pdf/sheet-pdf.ts';
import { shippedPrices } from '../../server/prices/shipped-prices.ts';
import { makeSheet } from '../../server/sheet/make-sheet.ts';
import type { Sheet } from '../../views/sheet.ts';
import { exampleFiles, run } from '../server/cli/run.ts';
import { type ReadPage, readPdf, type TextItem, textOf } from '../server/pdf/read-pdf.ts';
import { openExample } from './open-example.ts';

/** By definition: 1 psi = 1 lbf/in2, 1 US gallon = 231 in3. */
const psi = (0.45359237 * 9.80665) / 0.0254 ** 2;
const gpm = (231 * 0.0254 ** 3) / 60;

const factors = {
  us: { pressure: [psi, 1], flow: [gpm, 1], velocity: [0.3048, 1] },
  si: { pressure: [1000, 0], flow: [0.001, 2], velocity: [1, 2] },
} as const;

/** Checks a printed figure against an SI value, rounded to the digits that its reader sees. */
function expectFigure(
  printed: string | undefined,
  si: number,
  [unit, digits]: readonly [number, number],
): void {
  expect(printed).toMatch(digits === 0 ? /^−?\d+$/ : new RegExp(`^−?\\d+\\.\\d{${digits}}$`));
  const off = Math.abs(Number(printed?.replace('−', '-')) - si / unit);
  expect(off).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-9);
}

interface PressureJson {
  readonly jobFile_sha256: string;
  readonly runs: readonly {
    readonly id: string;
    readonly size: string;
    readonly flow_m3_per_s: number;
    readonly velocity_m_per_s: number;
    readonly residual_Pa: number;
    readonly static_Pa: number;
  }[];
  readonly inlets: readonly {
    readonly fixture: string;
    readonly side: string;
    readonly run: string;
    readonly residual_Pa: number;
    readonly required_Pa: number;
    readonly margin_Pa: number;
  }[];
}

async function json<T>(args: readonly string[]): Promise<T> {
  const { code, stdout } = await run([...args, '--json']);
  expect(code).toBe(0);
  return JSON.parse(stdout) as T;
}

const cases = exampleFiles().flatMap((file) =>
  (['us', 'si'] as const).map((units) => [file, units] as const),
);

describe.each(cases)('the sheet of %s in %s units', (file, units) => {
  let sheet: Sheet;
  let pdf: Pdf;
  let pages: ReadPage[];
  let answer: PressureJson;

  beforeAll(async () => {
    const job = await openExample(file.slice(file.lastIndexOf('/') + 1));
    const made = makeSheet(job, { units, date: '2026-11-25' }, await shippedPrices(), 'the example');
    if (!('sections' in made)) throw new Error(made.sentences.join(' '));
    sheet = made;
    pdf = await sheetPdf(sheet);
    pages = await readPdf(pdf.bytes);
    answer = await json<PressureJson>(['pressure', file]);
  }, 60_000);

  it('is on the paper of its units, and says on each page which page of how many and which job file', () => {
    const [width, height] = units === 'us' ? [612, 792] : [595.28, 841.89];
    const mark = answer.jobFile_sha256.slice(0, 12).replace(/(.{4})(.{4})/, '$1-$2-');
    expect(pages).toHaveLength(pdf.pages);
    pages.forEach((page, at) => {
      expect([page.width, page.height]).toEqual([expect.closeTo(width, 1), expect.closeTo(height, 1)]);
      expect(lastRow(page)).toEqual([`Job file ${mark}`, '2026-11-25', `page ${at + 1} of ${pages.length}`]);
    });
  });

  it('gives the hash of the file that it was computed from in full, once', () => {
    const whole = pages.map(textOf).join('\n');
    expect(whole.split(answer.jobFile_sha256)).toHaveLength(2);
    expect(readFileSync(file, 'utf8')).toContain('hightap-job');
  });

  it('has every figure of the JSON answer in the row of its run', () => {
    const rows = tableRows(pages, 'Every run at its design demand');
    expect(rows).toHaveLength(answer.runs.length);
    const { pressure, flow, velocity } = factors[units];
    answer.runs.forEach((one, at) => {
      const row = rows[at]!;
      expect(row.get('Run')).toBe(one.id);
      expect(row.get('Pipe')).toMatch(new RegExp(`^${one.size} in\\. `));
      expectFigure(row.get('Flow,'), one.flow_m3_per_s, flow);
      expectFigure(row.get('Velocity,'), one.velocity_m_per_s, velocity);
      expectFigure(row.get('Left,'), one.residual_Pa, pressure);
      expectFigure(row.get('At rest,'), one.static_Pa, pressure);
    });
  });

  it('has what is left at every inlet in its row', () => {
    const rows = tableRows(pages, 'Inlets, the smallest margin first');
    const { pressure } = factors[units];
    expect(rows).toHaveLength(answer.inlets.length);
    answer.inlets.forEach((one, at) => {
      const row = rows[at]!;
      expect(['Id', 'Side', 'Run'].map((column) => row.get(column))).toEqual([
        one.fixture,
        one.side,
        one.run,
      ]);
      expectFigure(row.get('Left,'), one.residual_Pa, pressure);
      expectFigure(row.get('Needs,'), one.required_Pa, pressure);
      expectFigure(row.get('To spare,'), one.margin_Pa, pressure);
    });
  });

  it('adds the take-off up to its total', async () => {
    const taken = await json<{ total: string; labor_h: number }>(['takeoff', file]);
    const title = 'Pipe, fittings, valves, devices, supports and insulation';
    const last = pages.flatMap(({ rows }) => rows).find(([, name]) => name?.text.endsWith(taken.total)) ?? [];
    const dollars = Number(taken.total).toLocaleString('en-US', { minimumFractionDigits: 2 });
    const total = pages.flatMap(({ rows }) => rows).find(([first]) => first?.text === 'Total') ?? last;
    expect(total.map(({ text }) => text)).toEqual(['Total', `$${dollars}`, taken.labor_h.toFixed(2)]);
    expect(pages.some((page) => textOf(page).includes(title))).toBe(true);
  });

  it('sets nothing outside the margins and nothing over anything else', () => {
    for (const page of pages) {
      for (const { left, right, baseline } of page.items) {
        expect(left).toBeGreaterThanOrEqual(53.9);
        expect(right).toBeLessThanOrEqual(page.width - 53.9);
        expect(baseline).toBeGreaterThan(30);
        expect(baseline).toBeLessThan(page.height - 30);
      }
      expect(overlaps(page)).toEqual([]);
    }
  });

  it('prints every sign: none of its text is lost', () => {
    const whole = pages.map(textOf).join(' ').replace(/\s+/g, ' ');
    for (const { title } of sheet.sections) expect(whole).toContain(title);
    const lost = pages.flatMap(({ items }) => items).filter(({ text }) => /\p{Cc}|\ufffd/u.test(text));
    expect(lost).toEqual([]);
  });
});

function lastRow({ rows }: ReadPage): string[] {
  return (rows.at(-1) ?? []).map(({ text }) => text);
}

/**
 * The rows of a table over all of its pages, by the heads of its columns; each page of it must repeat the head. A cell
 * belongs to the column whose right edge it shares, else to the one in which it begins; lines of a broken cell that
 * stand below the first are left out.
 */
function tableRows(pages: readonly ReadPage[], title: string): Map<string, string>[] {
  const found: Map<string, string>[] = [];
  for (const { rows } of pages) {
    const start = rows.findIndex(([first]) => first?.text === title || first?.text === `${title}, continued`);
    if (start < 0) continue;
    const headEnd = rows.findIndex((row, at) => at > start && ['Run', 'Id'].includes(row[0]?.text ?? ''));
    const head = headsOf(rows.slice(start + 1, headEnd + 1));
    const [first] = head;
    for (const row of rows.slice(headEnd + 1)) {
      if (row[0]!.left > first!.left + 1) continue;
      if (Math.abs(row[0]!.size - cellSize) > 0.01) break;
      if (row.length < 4) continue;
      found.push(new Map(row.map((item) => [columnOf(item, head), item.text])));
    }
  }
  return found;
}

/** Rows of a table are set in this size; what follows a table is not. */
const cellSize = 8;

interface Head {
  readonly name: string;
  readonly left: number;
  readonly right: number;
}

/** Heads of columns, their lines put together: those over each other share an edge. */
function headsOf(rows: readonly (readonly TextItem[])[]): Head[] {
  const last = rows.at(-1)!;
  return last.map((bottom) => {
    const over = rows
      .slice(0, -1)
      .flatMap((row) => row.filter((item) => Math.abs(item.right - bottom.right) < 0.3));
    const words = [...over, bottom].map(({ text }) => text);
    const name = words.length > 1 ? words.slice(0, -1).join(' ') : words[0]!;
    return { name, left: bottom.left, right: bottom.right };
  });
}

function columnOf({ left, right }: TextItem, head: readonly Head[]): string {
  const flush = head.find((one) => Math.abs(one.right - right) < 0.3 && Math.abs(one.left - left) > 0.01);
  const begun = head.filter((one) => one.left <= left + 0.3).at(-1);
  return (flush ?? begun)!.name;
}

/** Pairs of texts whose boxes share more than a hair. */
function overlaps({ items }: ReadPage): string[] {
  const boxes = items.map((item) => ({
    ...item,
    top: item.baseline - 0.66 * item.size,
    bottom: item.baseline + 0.2 * item.size,
  }));
  return boxes.flatMap((one, at) =>
    boxes
      .slice(at + 1)
      .filter(
        (other) =>
          Math.min(one.right, other.right) - Math.max(one.left, other.left) > 0.2 &&
          Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > 0.2,
      )
      .map((other) => `${one.text} / ${other.text}`),
  );
}
