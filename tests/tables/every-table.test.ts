import { describe, expect, it } from 'vitest';
import { units } from '../../tables/units/definitions.ts';
import { collectTables } from './collect-tables.ts';

const { tables } = await collectTables();
const grids = tables.filter((table) => table.kind === 'grid');
const curves = tables.filter((table) => table.kind === 'curve');

describe('every table', () => {
  it('is found by walking the room', () => {
    expect(grids.length).toBeGreaterThanOrEqual(35);
    expect(curves.length).toBeGreaterThanOrEqual(30);
  });

  it('has an id of its own', () => {
    const ids = tables.map(({ id }) => id);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
    expect(ids.filter((id) => !/^[a-z0-9.-]+$/.test(id.replace('/', '-')))).toEqual([]);
  });

  it('says when it was last compared with its document', () => {
    for (const { id, at } of tables) expect(at.checkedOn, id).toMatch(/^\d{4}-\d{2}-\d{2}$/);
  });

  it('says in a note how it was computed, or whose practice it is', () => {
    const unexplained = tables.filter(
      ({ verified, note }) => ['common-practice', 'computed'].includes(verified) && note === undefined,
    );
    expect(unexplained.map(({ id }) => id)).toEqual([]);
  });
});

describe('every grid', () => {
  it('has finite values in the columns it names, and no blank row', () => {
    for (const { id, columns, rows } of grids) {
      for (const unit of Object.values(columns)) expect(Object.keys(units), id).toContain(unit);
      for (const [name, { values }] of Object.entries(rows)) {
        const cells = Object.entries(values);
        expect(cells.length, `${id}, ${name}`).toBeGreaterThan(0);
        for (const [column, value] of cells) {
          expect(Object.keys(columns), `${id}, ${name}`).toContain(column);
          expect(
            value !== undefined && Number.isFinite(value) && value >= 0,
            `${id}, ${name}, ${column}`,
          ).toBe(true);
        }
      }
    }
  });
});

describe('every curve', () => {
  it('has x rising from point to point', () => {
    for (const { id, points } of curves) {
      const x = points.map(([at]) => at);
      expect(x, id).toEqual([...new Set(x)].sort((a, b) => a - b));
      expect(x.length, id).toBeGreaterThanOrEqual(2);
    }
  });

  it('never falls where it is a demand or a loss, never rises where it is a rating', () => {
    const judged = curves.filter(({ x, y }) => y === 'gpm' || x === 'gpm' || y === 'psi' || y === 'bar');
    expect(judged.length).toBeGreaterThanOrEqual(28);
    for (const { id, x, points } of judged) {
      const y = points.map(([, value]) => value);
      const order = [...y].sort((a, b) => (x === 'F' || x === 'C' ? b - a : a - b));
      expect(y, id).toEqual(order);
    }
  });

  it('verifies only points that it has', () => {
    for (const { id, points, rowVerified = {} } of curves) {
      for (const at of Object.keys(rowVerified)) expect(points[Number(at)], `${id}, ${at}`).toBeDefined();
    }
  });
});
