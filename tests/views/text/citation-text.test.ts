import { describe, expect, it } from 'vitest';
import { explainAll } from '../../../engine/index.ts';
import { citePoint, citeValue, lookUp } from '../../../tables/look-up.ts';
import { roughness } from '../../../tables/pipe/roughness.ts';
import { rules } from '../../../tables/rules.ts';
import { sources } from '../../../tables/sources.ts';
import type { Cited, Locator, Source, Verification } from '../../../tables/table.ts';
import { citedText, provenanceText } from '../../../views/text/citation-text.ts';
import { exampleNames, openExample, reportOf } from '../../examples/open-example.ts';
import { collectTables, tableModules } from '../../tables/collect-tables.ts';

const root = new URL('../../../tables/', import.meta.url);

interface Provenance {
  readonly source: Source;
  readonly at: Locator;
  readonly verified: Verification;
}

/** Whatever says where it stands and how far that was verified, in any module of the tables room. */
async function statedInTables(): Promise<Provenance[]> {
  const seen = new Set<object>();
  const found: Provenance[] = [];
  const walk = (value: unknown): void => {
    if (typeof value !== 'object' || value === null || seen.has(value)) return;
    seen.add(value);
    if ('source' in value && 'at' in value && 'verified' in value) found.push(value as Provenance);
    for (const part of Object.values(value)) walk(part);
  };
  for (const path of tableModules()) walk({ ...(await import(new URL(path, root).href)) });
  return found;
}

async function statedByFormulas(): Promise<Provenance[]> {
  const reports = await Promise.all(
    exampleNames.flatMap(async (name) => {
      const job = await openExample(name);
      return (['hazen-williams', 'darcy-weisbach'] as const).map((friction) =>
        reportOf({ ...job, basis: { ...job.basis, friction } }),
      );
    }),
  );
  return reports
    .flat()
    .flatMap((report) => [...explainAll(report).values()].map(({ formula }) => formula.source));
}

async function everyCell(): Promise<Cited[]> {
  return (await collectTables()).tables.flatMap((table): Cited[] => {
    if (table.kind === 'value') return [citeValue(table)];
    if (table.kind === 'curve') return table.points.map((_, at) => citePoint(table, at));
    return Object.entries(table.rows).flatMap(([row, { values }]) =>
      Object.keys(values).map((column) => lookUp(table, row, column)),
    );
  });
}

describe('every citation that can be printed', () => {
  it('reads as one sentence would: no run-on, no doubled space, nothing said twice', async () => {
    const texts = new Set([
      ...[...(await statedInTables()), ...(await statedByFormulas())].map(({ source, at, verified }) =>
        provenanceText(source, at, verified),
      ),
      ...(await everyCell()).map(citedText),
    ]);
    expect(texts.size).toBeGreaterThan(50);
    for (const text of texts) {
      expect(text).toMatch(/^[A-Z]/);
      expect(text, 'doubled or stray space').not.toMatch(/ {2}| ,|\( | \)|^ | $/);
      expect(text, 'two brackets side by side').not.toMatch(/\) \((?!read|from|computed|standard|recalled)/);
      expect(text, 'an edition outside brackets').not.toMatch(
        /^[^(]*\b(edition|undated|not read|as read|revision)\b/,
      );
      expect(text, 'a section that is no section').not.toMatch(/, (section|table) (?:[a-z]|Appendix)/);
      expect(text).not.toMatch(/undefined|no document|as typed|definition|\d \d{4}/);
      expect(text.match(/common practice/gi)?.length ?? 0).toBeLessThanOrEqual(1);
    }
  });

  it('says of the job’s own limit just that', () => {
    const { source, at, verified } = rules.ownVelocity;
    expect(provenanceText(source, at, verified)).toBe("The job's own limit");
  });

  it.each<[Provenance, string]>([
    [
      { source: sources['trade-practice'], at: { checkedOn: '' }, verified: 'common-practice' },
      'Common practice of the trade, no source',
    ],
    [
      { source: sources.nspc, at: { section: '10.14.1', checkedOn: '' }, verified: 'seen' },
      'National Standard Plumbing Code (edition not stated on the page that was read), section 10.14.1 (read in the document)',
    ],
    [
      { source: sources['irc-2021'], at: { table: 'P2903.6(1)', checkedOn: '' }, verified: 'memory' },
      'International Residential Code 2021, table P2903.6(1) (from memory, not verified)',
    ],
    [
      { source: sources['iapws-if97'], at: { checkedOn: '' }, verified: 'computed' },
      'IAPWS-IF97 industrial formulation, with the IAPWS viscosity release (2007 revision and 2008 release; computed here from other values)',
    ],
    [
      {
        source: sources['pex-manual-b'],
        at: { section: 'Appendix C', page: '105', checkedOn: '' },
        verified: 'seen',
      },
      "Manufacturer's manual B, PEX cold-expansion systems, design (4th edition, 2015), Appendix C, page 105 (read in the document)",
    ],
    [
      { source: sources['astm-b88'], at: { checkedOn: '' }, verified: 'seen-secondary' },
      'ASTM B88, seamless copper water tube (2022; read in a page that quotes the document)',
    ],
    [
      { source: sources.hydrostatics, at: { checkedOn: '' }, verified: 'textbook' },
      'Hydrostatics: pressure = density × gravity × height (standard hydraulics, as any textbook prints it)',
    ],
  ])('%#: as a reader would write it', ({ source, at, verified }, text) => {
    expect(provenanceText(source, at, verified)).toBe(text);
  });

  it('names the document of a cell that stands elsewhere than its table', () => {
    const cpvc = citedText(lookUp(roughness, 'cpvc', 'c'));
    expect(cpvc).toMatch(/^Manufacturer's guide, CPVC .*\(January 2013; read in the document\)$/);
    expect(citedText(lookUp(roughness, 'pex', 'c'))).toMatch(
      /manual A, .* \(computed here from other values\)$/,
    );
    expect(citedText(lookUp(roughness, 'galvanized', 'c'))).toMatch(/^Engineering reference pages/);
  });
});
