import { describe, expect, it } from 'vitest';
import { type Change, changedParts } from '../../../server/parts/changed-parts.ts';
import type { Part } from '../../../views/part.ts';

const leaf = (id: string, text = ''): Part => ({ id, html: `<p id="${id}">${text}</p>` });
const text = (id: string, words: string): Part => ({
  id,
  text: words,
  html: () => `<b id="${id}">${words}</b>`,
});
const pieces = (...children: Part[]): Part => ({
  id: 'pieces',
  frame: children.map(({ id }) => id).join(' '),
  children,
  html: () => `<div id="pieces">${children.map((child) => child.id).join()}</div>`,
});
const list = (...children: Part[]): Part => ({ ...pieces(...children), list: true }) as Part;
const rows = (ids: string) => list(...[...ids].map((id) => leaf(id)));

/** What is done, in short: `=a` replaced, `"a` its text, `-a` taken out, `+a<b` b put behind a. */
function told(change: Change): string {
  switch (change.what) {
    case 'replace':
      return `=${change.part.id}`;
    case 'text':
      return `"${change.id}`;
    case 'remove':
      return `-${change.id}`;
    case 'insert':
      return `+${change.after ?? ''}<${change.rows.map(({ id }) => id).join('')}`;
  }
}

const changes = (before: Part[], after: Part[]) => changedParts(before, after).map(told);

describe('changedParts', () => {
  it('names what is new or another, and nothing else', () => {
    const before = [leaf('a', '1'), leaf('b', '1')];
    const after = [leaf('a', '1'), leaf('b', '2'), leaf('c', '1')];
    expect(changes(before, after)).toEqual(['=b', '=c']);
    expect(changes(after, after)).toEqual([]);
  });

  it('descends into a piece that kept its frame', () => {
    const before = [pieces(leaf('x', '1'), leaf('y', '1'))];
    expect(changes(before, [pieces(leaf('x', '1'), leaf('y', '2'))])).toEqual(['=y']);
  });

  it('sends a piece whole that did not, and is no list', () => {
    expect(changes([pieces(leaf('x'), leaf('y'))], [pieces(leaf('y'), leaf('x'))])).toEqual(['=pieces']);
  });

  it('sends only the text of what is a text', () => {
    expect(changes([text('t', '1'), text('u', '1')], [text('t', '2'), text('u', '1')])).toEqual(['"t']);
  });

  it.each([
    ['abcd', 'abxcd', ['+b<x']],
    ['abcd', 'abcdx', ['+d<x']],
    ['abcd', 'xabcd', ['+<x']],
    ['abcd', 'acd', ['-b']],
    ['abcdef', 'acbdef', ['-b', '-c', '+a<cb']],
    ['abcd', 'dcba', ['=pieces']],
    ['ab', 'cd', ['=pieces']],
    ['a', 'aa'.slice(0, 1), []],
  ])('a list that was %s and is %s: %j', (before, after, expected) => {
    expect(changes([rows(before)], [rows(after)])).toEqual(expected);
  });

  it('looks into the rows that stayed where a list gained one', () => {
    const before = [list(leaf('a', '1'), leaf('b', '1'), leaf('c', '1'))];
    const after = [list(leaf('a', '2'), leaf('x', '1'), leaf('b', '1'), leaf('c', '2'))];
    expect(changes(before, after)).toEqual(['+a<x', '=a', '=c']);
  });
});
