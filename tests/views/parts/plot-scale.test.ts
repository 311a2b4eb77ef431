import { describe, expect, it } from 'vitest';
import { apart, scale } from '../../../views/parts/plot-scale.ts';

describe('a scale', () => {
  it('places values in proportion and marks round ones', () => {
    const { at, marks } = scale({ least: 0, most: 1000 }, 1 / 100, 50, 250, 5);
    expect([at(0), at(500), at(1000)]).toEqual([50, 150, 250]);
    expect(marks).toEqual([0, 200, 400, 600, 800, 1000]);
  });

  it('marks no value outside', () => {
    const { marks } = scale({ least: -3.2, most: 7.7 }, 1, 0, 100, 5);
    expect(Math.min(...marks)).toBeGreaterThanOrEqual(-3.2);
    expect(Math.max(...marks)).toBeLessThanOrEqual(7.7);
    expect(marks).toContain(0);
  });
});

describe('labels moved apart', () => {
  it('leaves those that have room', () => {
    expect(apart([10, 40, 80], 14, 100)).toEqual([10, 40, 80]);
  });

  it('keeps their order and never leaves the sheet', () => {
    const places = apart([95, 96, 20], 14, 100);
    expect(places[2]).toBe(20);
    expect(places[1]).toBe(100);
    expect(places[0]).toBe(86);
  });
});
