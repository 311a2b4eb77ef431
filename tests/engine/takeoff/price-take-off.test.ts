import { describe, expect, it } from 'vitest';
import type { Article } from '../../../engine/takeoff/article.ts';
import { indexPrices } from '../../../engine/takeoff/index-prices.ts';
import { Exact } from '../../../engine/takeoff/money.ts';
import { articlePrice } from '../../../engine/takeoff/price-article.ts';
import type { PartPrice, PriceBook } from '../../../engine/takeoff/price-book.ts';
import { priceTakeOff } from '../../../engine/takeoff/price-take-off.ts';
import type { TakeOffLine } from '../../../engine/takeoff/take-off.ts';
import { short } from './counted.ts';
import { smallBook } from './small-book.ts';

const brass = { material: 'pex', joint: 'insert-brass' } as const;

function line(article: Article, quantity: string, unit: 'each' | 'ft' = 'each'): TakeOffLine {
  const place = { phase: 'rough-in', area: { area: 'whole' }, service: 'cold' } as const;
  return { article, unit, quantity: new Exact(quantity), ...place, from: [] };
}

const lines = [
  line({ kind: 'pipe', material: 'pex', sizes: ['3/4'] }, '12.5', 'ft'),
  line({ kind: 'ell', ...brass, sizes: ['3/4'] }, '3'),
  line({ kind: 'manifold', sizes: ['1'], type: 'valved', ports: 6 }, '1'),
  line({ kind: 'heater', sizes: [], type: 'tankless' }, '1'),
  line({ kind: 'crimp-ring', ...brass, sizes: ['3/4'] }, '6'),
];

describe('the price of a take-off', () => {
  it('rounds each line to cents and adds the lines', () => {
    const { lines: priced, total, hours, missing } = priceTakeOff({ lines }, indexPrices(smallBook));
    expect(missing).toEqual([]);
    // 12.5 x 0.85 = 10.625 -> 10.63; 3 x 2.10 = 6.30; 34 + 6 x 14.50 = 121; 1200.005 -> 1200.01; rings with fittings
    expect(priced.map((one) => (one.price === 'known' ? one.cents : one.price))).toEqual([
      1063,
      630,
      12_100,
      120_001,
      'with fittings',
    ]);
    expect(total?.toString()).toBe('1337.94');
    // 12.5 x 0.03 + 3 x 0.125 + 0.5 + 6 x 0.125 + 6
    expect(hours).toBeCloseTo(8, 12);
  });

  it('lists what has no price once, and has no total', () => {
    const more = [
      ...lines,
      line({ kind: 'stub-out', ...brass, sizes: ['1/2'] }, '2'),
      { ...line({ kind: 'stub-out', ...brass, sizes: ['1/2'] }, '1'), phase: 'trim' } as const,
      line({ kind: 'pipe', material: 'cpvc', sizes: ['1'] }, '4', 'ft'),
    ];
    const { missing, total, priced } = priceTakeOff({ lines: more }, indexPrices(smallBook));
    expect(missing.map(short)).toEqual(['stub-out 1/2 pex', 'pipe 1 cpvc']);
    expect(total).toBeUndefined();
    expect(priced.toString()).toBe('1337.94');
  });
});

describe('the price of one article', () => {
  const leg = { ...brass, hours: 0.25 };
  const book: PriceBook = {
    ...smallBook,
    fittings: [
      { ...leg, kind: 'tee-run', size: '3/4', each: '2' },
      { ...leg, kind: 'tee-branch', size: '3/4', each: '2' },
      { ...leg, kind: 'tee-branch', size: '1/2', each: '1.5' },
    ],
  };
  const tee = (...sizes: readonly string[]): Article => ({ kind: 'tee', ...brass, sizes });
  const price = (article: Article, parts: readonly PartPrice[] = []) =>
    articlePrice(indexPrices({ ...book, parts }), article)?.money.toString();

  it('takes a tee as its two legs', () => {
    expect(price(tee('1', '3/4', '3/4'))).toBe('4');
    expect(price(tee('3/4', '3/4', '1/2'))).toBe('3.5');
    expect(price(tee('3/4', '1/2', '1/2'))).toBeUndefined();
  });

  it('takes the most exact price of a part', () => {
    const each = (each: string, rest: Partial<PartPrice>): PartPrice => ({
      kind: 'tee',
      each,
      hours: 0,
      ...rest,
    });
    const parts = [
      each('1', {}),
      each('2', { material: 'pex' }),
      each('3', brass),
      each('4', { sizes: ['1'] }),
      each('5', { material: 'pex', sizes: ['1'] }),
      each('6', { ...brass, sizes: ['1'] }),
      each('7', { ...brass, sizes: ['1', '3/4', '3/4'] }),
    ];
    for (let known = parts.length; known > 0; known--) {
      expect(price(tee('1', '3/4', '3/4'), parts.slice(0, known))).toBe(`${known}`);
    }
    // The largest size is that of the branch.
    expect(price(tee('3/4', '3/4', '1'), [each('4', { sizes: ['1'] })])).toBe('4');
    expect(
      price({ ...tee('1', '1', '1'), material: 'cpvc', joint: 'solvent' }, parts.slice(1, 3)),
    ).toBeUndefined();
  });

  it('takes a device of another type by the price of each', () => {
    expect(price({ kind: 'heater', sizes: [], type: 'storage' })).toBe('700');
    expect(price({ kind: 'meter', sizes: ['1'] })).toBe('148');
    expect(price({ kind: 'meter', sizes: ['2'] })).toBeUndefined();
    expect(price({ kind: 'manifold', sizes: ['1'], type: 'plain', ports: 6 })).toBeUndefined();
  });
});
