import { describe, expect, it } from 'vitest';
import { compareSchemes, mostCompared } from '../../../engine/compare/compare-schemes.ts';
import type { Job, Run } from '../../../engine/job/job.ts';
import { indexPrices } from '../../../engine/takeoff/index-prices.ts';
import { cold, fixture, ft, job, reportOf, run } from '../../jobs/written-job.ts';
import { smallBook } from '../takeoff/small-book.ts';

const prices = indexPrices(smallBook);
const closet = [fixture('closet', 'water-closet-tank')];
const runs = (size: string): Run[] => [run('C', 'street', { size, length: ft(20), end: cold('closet') })];

function jobOf(schemes: readonly (readonly [id: string, runs: readonly Run[]])[]): Job {
  return {
    ...job(closet, []),
    schemes: schemes.map(([id, drawn]) => ({ id, name: id.toUpperCase(), runs: drawn })),
  };
}

describe('comparing schemes', () => {
  it('gives each what it has alone, in the order asked for', () => {
    const both = jobOf([
      ['small', runs('1/2')],
      ['large', runs('3/4')],
    ]);
    const { compared, broken } = compareSchemes(both, prices, ['large', 'small']);
    expect(broken).toEqual([]);
    expect(compared.map(({ id, name }) => [id, name])).toEqual([
      ['large', 'LARGE'],
      ['small', 'SMALL'],
    ]);
    ['3/4', '1/2'].forEach((size, at) => {
      expect(compared[at]!.report.worst!.margin).toBe(reportOf(job(closet, runs(size))).worst!.margin);
    });
    // 20 ft at 0.85, and at 0.1.
    expect(compared.map(({ price }) => price.total!.money.toFixed(2))).toEqual(['17.00', '2.00']);
    expect(compared.map(({ longestWait }) => longestWait)).toEqual([undefined, undefined]);
  });

  it('sets aside a scheme that makes no tree, with its defects', () => {
    const { compared, broken } = compareSchemes(
      jobOf([
        ['good', runs('1/2')],
        ['bad', [run('C', 'nowhere', { end: cold('closet') })]],
      ]),
      prices,
    );
    expect(compared.map(({ id }) => id)).toEqual(['good']);
    expect(broken.map(({ id, defects }) => [id, defects.length > 0])).toEqual([['bad', true]]);
  });

  it('compares six at most', () => {
    const many = jobOf(Array.from({ length: 8 }, (_, at) => [`s${at}`, runs('1/2')] as const));
    expect(mostCompared).toBe(6);
    expect(compareSchemes(many, prices).compared.map(({ id }) => id)).toEqual([
      's0',
      's1',
      's2',
      's3',
      's4',
      's5',
    ]);
  });
});
