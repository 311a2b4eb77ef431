import { describe, expect, it } from 'vitest';
import { shorten } from '../../../engine/units/shorten.ts';

describe('shorten', () => {
  it('quotes text and cuts it after 40 characters', () => {
    expect(shorten('18 ft')).toBe('"18 ft"');
    expect(shorten('x'.repeat(41))).toBe(`"${'x'.repeat(40)}..."`);
    expect(shorten('\u{1f6bf}'.repeat(100_000))).toBe(`"${'\u{1f6bf}'.repeat(40)}..."`);
  });

  it('shows what cannot be seen', () => {
    expect(shorten('a\nb\u0000\u202ec\ud800')).toBe('"a\\nb\\u0000\\u202ec\\ud800"');
  });
});
