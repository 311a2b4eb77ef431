import { describe, expect, it } from 'vitest';
import { changesOutOfBand, outOfBand } from '../../../server/parts/out-of-band.ts';

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

describe('changesOutOfBand', () => {
  it('takes a row out before it is put in elsewhere, and gathers the texts', () => {
    const row = { id: 'run:B', html: '<li id="run:B"></li>' };
    expect(
      changesOutOfBand([
        { what: 'text', id: 'run:A:flow', text: '3 < 4 & "5"' },
        { what: 'remove', id: 'run:B' },
        { what: 'insert', list: 'runs', after: 'run:C', rows: [row] },
        { what: 'insert', list: 'runs', rows: [row] },
      ]),
    ).toBe(
      '<li hx-swap-oob="delete" id="run:B"></li>' +
        `<ul hx-swap-oob="afterend:[id='run:C']"><li id="run:B"></li></ul>` +
        `<ul hx-swap-oob="afterbegin:[id='runs']"><li id="run:B"></li></ul>` +
        '<div hx-swap-oob="true" id="fresh" hidden>' +
        '<data value="run:A:flow">3 &lt; 4 &amp; &#34;5&#34;</data></div>',
    );
  });
});
