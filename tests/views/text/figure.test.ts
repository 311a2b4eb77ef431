import { describe, expect, it } from 'vitest';
import { figuresApart, figureWithUnit, fixed, signedPressure } from '../../../views/text/figure.ts';

describe('figures', () => {
  it('have a true minus sign, and no negative nothing', () => {
    expect(fixed(-1.25, 1)).toBe('−1.3');
    expect(fixed(-0.04, 1)).toBe('0.0');
    expect(figureWithUnit(-6894.757, 'pressure', 'us')).toBe('−1.0 psi');
  });

  it('always show whether a margin is short or spare', () => {
    expect(signedPressure(13789.51, 'us')).toBe('+2.0 psi');
    expect(signedPressure(-13789.51, 'us')).toBe('−2.0 psi');
    expect(signedPressure(0, 'us')).toBe('+0.0 psi');
    // 1 Pa is 0.000145 psi.
    expect(signedPressure(-1, 'us')).toBe('−0.0001 psi');
    expect(signedPressure(1, 'us')).toBe('+0.0 psi');
  });

  it('of a value and its limit differ where these differ', () => {
    expect(figuresApart(68947.57, 137895.15, 'pressure', 'us')).toEqual(['10.0 psi', '20.0 psi']);
    expect(figuresApart(68947.57, 69016.52, 'pressure', 'us')).toEqual(['10.00 psi', '10.01 psi']);
    // 62.26 and 62.24 psi would read 62.3 and 62.2, a tenth apart where they are a fiftieth.
    expect(figuresApart(429267.6, 429129.7, 'pressure', 'us')).toEqual(['62.26 psi', '62.24 psi']);
    expect(figuresApart(68947.57, 68947.57, 'pressure', 'us')).toEqual(['10.0 psi', '10.0 psi']);
  });
});
