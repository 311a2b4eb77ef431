import { describe, expect, it } from 'vitest';
import { metricSize, nominalInches } from '../../../engine/hydraulics/nominal-inches.ts';

describe('metricSize', () => {
  it('reads outside diameter and wall', () => {
    expect(metricSize('20x2.8')).toEqual({ outside: 20, wall: 2.8 });
    expect(metricSize('66.7x1.2')).toEqual({ outside: 66.7, wall: 1.2 });
  });

  it.each(['3/4', '5/8x3/4', '20', 'x2', '1-1/4'])('reads nothing in %s', (name) => {
    expect(metricSize(name)).toBeUndefined();
  });
});

describe('nominalInches', () => {
  it('is what an inch size says', () => expect(nominalInches('1-1/4')).toBe(1.25));

  /** PEX SDR-9 has bores of 0.475 in at 1/2 in and 0.671 in at 3/4 in: 12.065 and 17.0434 mm. */
  it.each([
    ['15x1', 0.5, 0.625],
    ['20x2.8', 0.5, 0.625],
    ['16x2.2', 0.375, 0.5],
    ['22x1', 0.75, 1],
    ['25x3.5', 0.75, 1],
    ['28x1.5', 1, 1.25],
  ])('%s lies from %d in up to %d in by its bore', (size, from, to) => {
    expect(nominalInches(size)).toBeGreaterThanOrEqual(from);
    expect(nominalInches(size)).toBeLessThan(to);
  });

  /** 18 mm lies (18 - 17.0434) / (21.9202 - 17.0434) of the way from 3/4 to 1 in. */
  it('lies in proportion between two', () => {
    expect(nominalInches('25x3.5')).toBeCloseTo(0.75 + (0.25 * (18 - 17.0434)) / (21.9202 - 17.0434), 9);
  });

  /** Below 3/8 in (8.89 mm) and above 3 in (60.8584 mm) in proportion to the bore. */
  it('goes on in proportion beyond the ends', () => {
    expect(nominalInches('10x1')).toBeCloseTo((0.375 * 8) / 8.89, 9);
    expect(nominalInches('76.1x1.5')).toBeCloseTo((3 * 73.1) / 60.8584, 9);
  });

  it('is 0 for a name that is no size', () => expect(nominalInches('wide')).toBe(0));
});
