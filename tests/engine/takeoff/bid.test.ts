import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bid, parseRates } from '../../../engine/takeoff/bid.ts';
import { Exact } from '../../../engine/takeoff/money.ts';

const rates = (laborRate: string, tax: string, overhead: string, margin: string) => {
  const parsed = parseRates({ laborRate, tax, overhead, margin });
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.rates;
};

describe('a bid', () => {
  it('is built up as an estimator would by hand', () => {
    // 1000.00 + 7.25 % = 72.50; 20.5 h at 85 = 1742.50; together 2815.00; 12 % of it 337.80; cost 3152.80.
    // A margin of 20 % of the price: 3152.80 / 0.8 = 3941.00, of which 788.20.
    const made = bid(new Exact('1000'), 20.5, rates('85', '7.25', '12', '20'));
    const shown = Object.fromEntries(Object.entries(made).map(([name, amount]) => [name, amount.toFixed(2)]));
    expect(shown).toEqual({
      material: '1000.00',
      tax: '72.50',
      labor: '1742.50',
      direct: '2815.00',
      overhead: '337.80',
      cost: '3152.80',
      margin: '788.20',
      price: '3941.00',
    });
  });

  it('lets half a cent go up, once for each amount', () => {
    // 0.10 x 5 % = 0.005 -> 0.01; 0.11 x 50 % = 0.055 -> 0.06; 0.17.
    const made = bid(new Exact('0.10'), 0, rates('0', '5', '50', '0'));
    expect([made.tax, made.overhead, made.price].map(String)).toEqual(['0.01', '0.06', '0.17']);
  });

  it('takes the margin of the price, not of the cost', () => {
    // 75 is three quarters of 100.
    expect(String(bid(new Exact('75'), 0, rates('', '', '', '25')).price)).toBe('100');
  });

  it('adds up as printed, whatever the rates', () => {
    const percent = fc.integer({ min: 0, max: 9500 }).map((hundredths) => (hundredths / 100).toFixed(2));
    fc.assert(
      fc.property(
        fc.nat(10_000_000),
        fc.nat(5000),
        percent,
        percent,
        percent,
        (money, hours, tax, overhead, margin) => {
          const made = bid(
            new Exact(money).dividedBy(100),
            hours / 10,
            rates('85.50', tax, overhead, margin),
          );
          expect(made.material.plus(made.tax).plus(made.labor).equals(made.direct)).toBe(true);
          expect(made.direct.plus(made.overhead).equals(made.cost)).toBe(true);
          expect(made.cost.plus(made.margin).equals(made.price)).toBe(true);
          for (const amount of Object.values(made)) {
            expect(amount.decimalPlaces()).toBeLessThanOrEqual(2);
            expect(amount.isNegative() && !amount.isZero()).toBe(false);
          }
        },
      ),
    );
  });

  it.each([
    [{ tax: '-1' }, 'the tax is "-1"; expected a number such as 12.5'],
    [{ margin: '100' }, 'the margin is 100 % of the price; expected 0 to 95'],
    [{ laborRate: '1e9' }, 'the labor rate is "1e9"; expected a number such as 12.5'],
    [{ laborRate: '10001' }, 'the labor rate is 10001; expected 0 to 10000 for an hour'],
    [{ overhead: 'NaN' }, 'the overhead is "NaN"; expected a number such as 12.5'],
    [{ overhead: '1001' }, 'the overhead is 1001 %; expected 0 to 1000'],
  ])('refuses %o in a sentence', (wrong, problem) => {
    const typed = { laborRate: '', tax: '', overhead: '', margin: '', ...wrong };
    expect(parseRates(typed)).toEqual({ ok: false, problem });
  });
});
