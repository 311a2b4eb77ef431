import { describe, expect, it } from 'vitest';
import { newId } from '../../../server/storage/new-id.ts';

describe('newId', () => {
  it('draws twenty of thirty-two letters, which is a hundred bits, and uses them alike', () => {
    const ids = Array.from({ length: 2000 }, newId);
    expect(new Set(ids).size).toBe(2000);
    const counts = new Map<string, number>();
    for (const id of ids) {
      expect(id).toMatch(/^[a-z2-9]{20}$/);
      for (const letter of id) counts.set(letter, (counts.get(letter) ?? 0) + 1);
    }
    expect(counts.size).toBe(32);
    // 40,000 letters, 1250 of each on average with a standard deviation of 35: seven of them is no chance.
    for (const count of counts.values()) expect(Math.abs(count - 1250)).toBeLessThan(245);
  });
});
