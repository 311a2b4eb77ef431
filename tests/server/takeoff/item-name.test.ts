import { describe, expect, it } from 'vitest';
import { itemName } from '../../../server/takeoff/item-name.ts';

describe('an article beside a count', () => {
  it('has its sizes with their unit, and none where it has no size', () => {
    const pex = { material: 'pex', joint: 'insert-brass' } as const;
    expect(itemName({ kind: 'pipe', material: 'copper-k', sizes: ['2'] })).toBe('2 in pipe, copper type K');
    expect(itemName({ kind: 'tee', ...pex, sizes: ['1', '1', '3/4'] })).toMatch(/^1 x 1 x 3\/4 in tee, PEX/);
    expect(itemName({ kind: 'arrester', sizes: ['A'] })).toBe('A arrester');
    expect(itemName({ kind: 'test-gauge', sizes: [] })).toBe('test gauge');
  });
});
