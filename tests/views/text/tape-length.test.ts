import { describe, expect, it } from 'vitest';
import { tapeLength } from '../../../views/text/tape-length.ts';

const inch = 0.0254;

describe('a length as read off a tape', () => {
  it.each([
    [0, '0 in'],
    [inch / 2, '1/2 in'],
    [6 * inch, '6 in'],
    [12 * inch, '1 ft'],
    [12.5 * inch, '1 ft 1/2 in'],
    [(12 * 12 + 6 + 3 / 16) * inch, '12 ft 6-3/16 in'],
    // A thirty-second under a foot is nearer to the foot.
    [(12 - 1 / 33) * inch, '1 ft'],
    [(12 - 1 / 31) * inch, '11-15/16 in'],
  ])('%f m is %s', (metres, text) => {
    expect(tapeLength(metres, 'us')).toBe(text);
  });

  it('is in metres to the millimetre for who reads these', () => {
    expect(tapeLength(3.8104, 'si')).toBe('3.810 m');
  });
});
