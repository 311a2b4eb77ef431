import { describe, expect, it } from 'vitest';
import { apart, developed, route, type Stretch, tidy } from '../../../engine/layout/drawing.ts';

const origin = { x: 0, y: 0, z: 0 };
const to = (x: number, y: number, z = 0) => ({ x, y, z });

describe('route', () => {
  it('goes along one axis after the other and skips those with nothing to go', () => {
    expect(route(origin, to(3, 4, 5), ['z', 'x', 'y'])).toEqual([to(0, 0, 5), to(3, 0, 5), to(3, 4, 5)]);
    expect(route(origin, to(0, 4), ['x', 'y'])).toEqual([to(0, 4)]);
  });

  it('to where it is already is a place of its own', () => {
    expect(route(origin, origin, ['x'])).toEqual([origin]);
  });
});

it('apart is the way along the axes: 3 + 4 + 5', () => {
  expect(apart(origin, to(3, -4, 5))).toBe(12);
});

describe('tidy', () => {
  const tap: Stretch = {
    name: 'C',
    corners: [to(10, 4)],
    end: { fixture: 'F', inlet: 'cold' },
    note: 'Tap',
    behind: [],
  };

  it('makes one stretch of two that follow each other, by the name of the further', () => {
    const main: Stretch = {
      name: 'M',
      corners: [to(10, 0)],
      fittings: ['ball-valve'],
      note: 'Main',
      behind: [tap],
    };
    const [only, ...others] = tidy(origin, main);
    expect(others).toEqual([]);
    expect(only).toMatchObject({
      name: 'C',
      note: 'Tap',
      corners: [to(10, 0), to(10, 4)],
      fittings: ['ball-valve'],
    });
    expect(developed(origin, only!)).toBe(14);
  });

  it('adds a stretch of given length to what leads there', () => {
    const given: Stretch = { ...tap, corners: [to(10, 0, 3)], length: 20 };
    const [only] = tidy(origin, { name: 'M', corners: [to(10, 0)], behind: [given] });
    expect(only?.length).toBe(30);
  });

  it('drops what leads nowhere, and with it the junction', () => {
    const stub: Stretch = { name: 'X', corners: [to(10, -9)], behind: [] };
    const [only] = tidy(origin, { name: 'M', corners: [to(10, 0)], behind: [stub, tap] });
    expect(only?.corners).toEqual([to(10, 0), to(10, 4)]);
    expect(tidy(origin, { name: 'M', corners: [to(10, 0)], behind: [stub] })).toEqual([]);
  });

  it('keeps a device with nothing behind it', () => {
    const tank: Stretch = { name: 'X', corners: [to(1, 0)], end: { device: 'expansion-tank' }, behind: [] };
    expect(tidy(origin, tank)).toEqual([tank]);
  });
});
