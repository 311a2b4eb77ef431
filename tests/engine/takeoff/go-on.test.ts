import { describe, expect, it } from 'vitest';
import type { Run } from '../../../engine/job/job.ts';
import { goOn } from '../../../engine/takeoff/go-on.ts';
import { takeOff } from '../../../engine/takeoff/take-off-network.ts';
import { job, networkOf, run } from '../../jobs/written-job.ts';
import { counted, inWords } from './counted.ts';

const pair = (one: Partial<Run>, other: Partial<Run>) => {
  const runs = [
    { ...run('A', 'street'), ...one },
    { ...run('B', 'A'), ...other },
  ];
  return inWords(goOn(runs, 0, 1).pieces);
};

describe('a run that goes on as one other', () => {
  it('needs nothing where the pipe is the same', () => {
    expect(pair({}, {})).toEqual([]);
    expect(pair({ joint: 'insert-brass' }, {})).toEqual([]);
  });

  it('takes a reducing coupling to another size', () => {
    expect(pair({ size: '1' }, { size: '3/4' })).toEqual(['1 x reducer 1 x 3/4 pex']);
    expect(pair({ size: '3/4' }, { size: '1' })).toEqual(['1 x reducer 3/4 x 1 pex']);
  });

  it('takes an adapter to another material or way of joining', () => {
    expect(pair({ material: 'pe' }, { size: '3/4', material: 'copper-l' })).toEqual([
      '1 x adapter 1 x 3/4 pe to copper-l',
    ]);
    expect(pair({}, { joint: 'expansion' })).toEqual(['1 x adapter 1 x 1 pex to pex']);
  });

  it('takes a coupling to another wall of the same tube', () => {
    expect(pair({ material: 'copper-k' }, { material: 'copper-l' })).toEqual(['1 x coupling 1 copper-k']);
    expect(pair({ material: 'copper-k' }, { material: 'copper-l', size: '3/4' })).toEqual([
      '1 x reducer 1 x 3/4 copper-k',
    ]);
  });

  it('has no tee, whatever legs are drawn', () => {
    const runs = [run('A', 'street'), run('B', 'A', { fittings: { 'tee-run': 1, 'tee-branch': 1 } })];
    expect(goOn(runs, 0, 1)).toEqual({
      pieces: [],
      questions: [{ code: 'tee-without-junction', run: 'B', legs: 2 }],
    });
  });

  it('counts a coupling as drawn, but not beside the reducer that it is', () => {
    const fittings = (size: string) => {
      const runs = [run('A', 'street'), run('B', 'A', { size, fittings: { coupling: 2 } })];
      const taken = takeOff(networkOf(job([], runs)));
      return counted(taken, ({ article }) => ['coupling', 'reducer', 'cap'].includes(article.kind));
    };
    // Nothing stands at the end of B: a cap.
    expect(fittings('1')).toEqual({ 'coupling 1 pex': 2, 'cap 1 pex': 1 });
    expect(fittings('3/4')).toEqual({ 'coupling 3/4 pex': 1, 'reducer 1 x 3/4 pex': 1, 'cap 3/4 pex': 1 });
  });

  it('asks about an open end, and about legs of tees where the service begins', () => {
    const taken = takeOff(networkOf(job([], [run('A', 'street', { fittings: { 'tee-branch': 1 } })])));
    expect(taken.questions).toEqual([
      { code: 'tee-without-junction', run: 'A', legs: 1 },
      { code: 'open-end', run: 'A' },
    ]);
  });
});
