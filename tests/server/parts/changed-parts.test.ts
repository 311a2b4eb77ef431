import { describe, expect, it } from 'vitest';
import { changedParts, outOfBand } from '../../../server/parts/changed-parts.ts';
import type { Part } from '../../../views/part.ts';

const leaf = (id: string, text: string): Part => ({ id, html: `<p id="${id}">${text}</p>` });
const list = (...children: Part[]): Part => ({
  id: 'list',
  frame: children.map(({ id }) => id).join(' '),
  children,
  html: () => `<ul id="list">${children.map((child) => child.id).join()}</ul>`,
});

describe('changedParts', () => {
  it('names what is new or another, and nothing else', () => {
    const before = [leaf('a', '1'), leaf('b', '1')];
    const after = [leaf('a', '1'), leaf('b', '2'), leaf('c', '1')];
    expect(changedParts(before, after).map(({ id }) => id)).toEqual(['b', 'c']);
    expect(changedParts(after, after)).toEqual([]);
  });

  it('descends into a list that kept its rows', () => {
    const before = [list(leaf('x', '1'), leaf('y', '1'))];
    expect(changedParts(before, [list(leaf('x', '1'), leaf('y', '2'))]).map(({ id }) => id)).toEqual(['y']);
  });

  it('sends a list whole that gained, lost or moved a row', () => {
    const before = [list(leaf('x', '1'), leaf('y', '1'))];
    expect(changedParts(before, [list(leaf('y', '1'), leaf('x', '1'))]).map(({ id }) => id)).toEqual([
      'list',
    ]);
    expect(changedParts(before, [list(leaf('x', '1'))]).map(({ id }) => id)).toEqual(['list']);
  });
});

describe('outOfBand', () => {
  it('marks the root', () => {
    expect(outOfBand({ id: 'a', html: '<p class="k" id="a">x</p>' })).toBe(
      '<p class="k" hx-swap-oob="true" id="a">x</p>',
    );
  });

  it('throws where the root is another', () => {
    expect(() => outOfBand({ id: 'a', html: '<p><b id="a"></b></p>' })).toThrow('does not carry its id');
  });
});
