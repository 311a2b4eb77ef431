import { describe, expect, it } from 'vitest';
import type { Stretch } from '../../../engine/layout/drawing.ts';
import { spine } from '../../../engine/layout/spine.ts';

const start = { x: 10, y: 5, z: 0 };
const leaf = (name: string): Stretch => ({
  name,
  corners: [start],
  end: { fixture: name, inlet: 'cold' },
  behind: [],
});

describe('spine', () => {
  it('has an arm towards each side, from stop to stop, nearest first', () => {
    const stops = [14, 8, 20, 2].map((at) => ({ at, behind: [leaf(`at ${at}`)] }));
    const [east, west, ...others] = spine(start, 'x', stops, { name: 'C' });
    expect(others).toEqual([]);
    expect(east).toMatchObject({
      corners: [{ x: 14 }],
      behind: [{ name: 'at 14' }, { corners: [{ x: 20 }], behind: [{ name: 'at 20' }] }],
    });
    expect(west).toMatchObject({
      corners: [{ x: 8 }],
      behind: [{ name: 'at 8' }, { corners: [{ x: 2 }], behind: [{ name: 'at 2' }] }],
    });
  });

  it('lets what stops where it is fed leave there, and takes two of one place off together', () => {
    const stops = [10, 12, 12].map((at, index) => ({ at, behind: [leaf(`stop ${index}`)] }));
    const [here, east] = spine(start, 'x', stops, { name: 'C' });
    expect(here?.name).toBe('stop 0');
    expect(east?.behind.map(({ name }) => name)).toEqual(['stop 1', 'stop 2']);
  });

  it('does not reach for stops with nothing behind', () => {
    expect(spine(start, 'z', [{ at: 30, behind: [] }], { name: 'C' })).toEqual([]);
  });
});
