import { describe, expect, it } from 'vitest';
import { money, signedMoney, wholeMoney } from '../../../views/text/money.ts';

describe('money', () => {
  it('shows cents, thousands and a true minus', () => {
    expect(money(155_101, 'USD')).toBe('$1,551.01');
    expect(money(-5, 'USD')).toBe('−$0.05');
    expect(money(0, 'EUR')).toBe('€0.00');
  });

  it('always signs a difference, but not nothing', () => {
    expect(signedMoney(1200, 'USD')).toBe('+$12.00');
    expect(signedMoney(-1200, 'USD')).toBe('−$12.00');
    expect(signedMoney(0, 'USD')).toBe('$0.00');
  });

  it('marks an axis without cents', () => {
    expect(wholeMoney(280_000, 'USD')).toBe('$2,800');
  });
});
