import { describe, expect, it } from 'vitest';
import { gridOf } from '../../../engine/layout/grid.ts';
import { parseQuantity } from '../../../engine/units/parse-quantity.ts';

describe('a grid of whole inches', () => {
  const grid = gridOf('us');

  it.each([
    [0, "0'"],
    [5, '5"'],
    [12, "1'"],
    [-90, `-7' 6"`],
    [150, `12' 6"`],
  ])('writes %i in as %s', (steps, typed) => {
    expect(grid.length(steps)).toEqual({ typed, si: expect.closeTo(steps * 0.0254, 12) });
  });

  it('takes a length to the nearest inch: 2 m is 78.74 in', () => {
    expect(grid.snap(2)).toBe(79);
    expect(grid.feet(0.5)).toBe(6);
  });
});

describe('a grid of whole centimetres', () => {
  const grid = gridOf('si');

  it('writes and reads metres; a foot of clearance is 30 cm', () => {
    expect(grid.length(381)).toEqual({ typed: '3.81 m', si: 3.81 });
    expect(grid.length(-60).typed).toBe('-0.6 m');
    expect(grid.snap(3.0479)).toBe(305);
    expect(grid.feet(1)).toBe(30);
  });
});

it('what is written is read as the same length', () => {
  for (const system of ['us', 'si'] as const) {
    for (const steps of [-1000, -1, 0, 7, 12, 95, 12345]) {
      const quantity = gridOf(system).length(steps);
      expect(parseQuantity(quantity.typed, 'length')).toEqual({ ok: true, quantity });
    }
  }
});
