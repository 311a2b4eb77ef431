import { describe, expect, it } from 'vitest';
import { outlets } from '../../tables/ipc-2018/outlets.ts';
import { citePoint, citeValue, hasCell, lookUp } from '../../tables/look-up.ts';
import { lawsApart } from '../../tables/practice-limits.ts';
import type { CurveTable, GridTable } from '../../tables/table.ts';

const other = { id: 'other', title: 'Another', edition: '' };

const sheet: GridTable<'a' | 'b', 'length' | 'loss'> = {
  kind: 'grid',
  id: 'sheet',
  title: 'An invented sheet',
  source: { id: 'invented', title: 'Invented', edition: 'none' },
  at: { checkedOn: '2026-11-25' },
  verified: 'memory',
  columns: { length: 'ft', loss: 'psi' },
  rows: {
    a: { values: { length: 10 } },
    b: {
      values: { length: 20, loss: 1 },
      verified: 'seen',
      note: 'as printed',
      cells: { length: { source: other, at: { page: '7', checkedOn: '2026-11-25' }, verified: 'computed' } },
    },
  },
};

describe('lookUp', () => {
  it('gives the printed value, SI and the table’s verification', () => {
    expect(lookUp(sheet, 'a', 'length')).toEqual({
      value: expect.closeTo(3.048, 12),
      printed: 10,
      unit: 'ft',
      table: sheet,
      row: 'a',
      column: 'length',
      verified: 'memory',
    });
  });

  it('prefers what the row says of itself', () => {
    expect(lookUp(sheet, 'b', 'loss')).toMatchObject({ verified: 'seen', note: 'as printed' });
  });

  it('prefers what is said of the cell to its row and its table', () => {
    expect(lookUp(sheet, 'b', 'length')).toMatchObject({
      source: other,
      at: { page: '7' },
      verified: 'computed',
      note: 'as printed',
    });
    expect(lookUp(sheet, 'b', 'loss')).not.toHaveProperty('source');
  });

  it('throws on a blank cell, and names it', () => {
    expect(() => lookUp(sheet, 'a', 'loss')).toThrow('sheet has no value at a, loss');
  });
});

describe('hasCell', () => {
  it('knows blanks, unknown keys and keys that every object has', () => {
    expect(hasCell(sheet, 'b', 'loss')).toBe(true);
    expect(hasCell(sheet, 'a', 'loss')).toBe(false);
    expect(hasCell(sheet, 'c', 'loss')).toBe(false);
    expect(hasCell(sheet, 'toString', 'loss')).toBe(false);
    expect(hasCell(outlets, 'shower', 'constructor')).toBe(false);
  });
});

describe('citePoint', () => {
  const curve: CurveTable = {
    kind: 'curve',
    id: 'curve',
    title: 'An invented curve',
    source: sheet.source,
    at: sheet.at,
    verified: 'memory',
    x: 'gpm',
    y: 'psi',
    points: [
      [1, 2],
      [3, 4],
    ],
    rowVerified: { 1: 'seen' },
  };

  it('cites y, and the verification of the point', () => {
    expect(citePoint(curve, 0)).toMatchObject({ printed: 2, unit: 'psi', row: '1', verified: 'memory' });
    expect(citePoint(curve, 1).verified).toBe('seen');
    expect(citePoint(curve, 1).value).toBeCloseTo(4 * 6894.757, 1);
  });

  it('throws beyond the points', () => {
    expect(() => citePoint(curve, 2)).toThrow('curve has no point 2');
  });
});

describe('citeValue', () => {
  it('carries the note', () => {
    expect(citeValue(lawsApart)).toMatchObject({
      value: 0.1,
      printed: 0.1,
      unit: 'one',
      note: lawsApart.note,
    });
  });
});
