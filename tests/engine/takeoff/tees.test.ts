import { describe, expect, it } from 'vitest';
import type { Run } from '../../../engine/job/job.ts';
import { tees } from '../../../engine/takeoff/tees.ts';
import { run } from '../../jobs/written-job.ts';
import { inWords } from './counted.ts';

const through = { fittings: { 'tee-run': 1 } };
const aside = { fittings: { 'tee-branch': 1 } };

/** The junction behind the first run, with all others as its followers. */
function junction(...runs: readonly Run[]) {
  const followers = runs.slice(1).map((_, index) => index + 1);
  const { pieces, questions } = tees(runs, 0, followers);
  return { words: inWords(pieces), pieces, questions };
}

describe('tees', () => {
  it('is one tee by run in, run on and branch where two follow', () => {
    const { words, questions, pieces } = junction(
      run('A', 'street', { size: '1' }),
      run('B', 'A', { size: '1/2', ...aside }),
      run('C', 'A', { size: '3/4', ...through }),
    );
    expect(words).toEqual(['1 x tee 1 x 3/4 x 1/2 pex']);
    expect(pieces[0]!.from).toEqual([0, 2, 1]);
    expect(pieces[0]!.ends.map(({ size }) => size)).toEqual(['1', '3/4', '1/2']);
    expect(questions).toEqual([]);
  });

  it('goes straight on where the drawing says so, though the other is larger', () => {
    const { words } = junction(
      run('A', 'street', { size: '1' }),
      run('B', 'A', { size: '1', ...aside }),
      run('C', 'A', { size: '1/2', ...through }),
    );
    expect(words).toEqual(['1 x tee 1 x 1/2 x 1 pex']);
  });

  it('goes straight on by the larger where nothing is drawn, and asks for each run', () => {
    const { words, questions } = junction(
      run('A', 'street', { size: '1' }),
      run('B', 'A', { size: '1/2' }),
      run('C', 'A', { size: '3/4' }),
    );
    expect(words).toEqual(['1 x tee 1 x 3/4 x 1/2 pex']);
    expect(questions).toEqual([
      { code: 'tee-not-drawn', run: 'B', from: 'A' },
      { code: 'tee-not-drawn', run: 'C', from: 'A' },
    ]);
  });

  it('goes straight on by the first of equals, and asks where two are drawn through', () => {
    const { words, questions } = junction(
      run('A', 'street', { size: '1' }),
      run('B', 'A', { size: '3/4', ...through }),
      run('C', 'A', { size: '3/4', ...through }),
    );
    expect(words).toEqual(['1 x tee 1 x 3/4 x 3/4 pex']);
    expect(questions).toEqual([{ code: 'straight-unclear', run: 'A', taken: 'B' }]);
  });

  it('asks where both leave by the side', () => {
    const { questions } = junction(
      run('A', 'street'),
      run('B', 'A', aside),
      run('C', 'A', { size: '3/4', ...aside }),
    );
    expect(questions).toEqual([{ code: 'straight-unclear', run: 'A', taken: 'B' }]);
  });

  it('is a row with a nipple between each two where more follow', () => {
    const { words, questions, pieces } = junction(
      run('A', 'street', { size: '1' }),
      run('B', 'A', { size: '1/2', ...aside }),
      run('C', 'A', { size: '3/4', ...through }),
      run('D', 'A', { size: '3/8', fittings: { 'tee-run': 1, 'tee-branch': 1 } }),
      run('E', 'A', { size: '1/2', fittings: { 'tee-run': 2, 'tee-branch': 1 } }),
    );
    expect(words).toEqual([
      '1 x tee 1 x 1 x 1/2 pex',
      '1 x nipple 1 pex',
      '1 x tee 1 x 1 x 3/8 pex',
      '1 x nipple 1 pex',
      '1 x tee 1 x 3/4 x 1/2 pex',
    ]);
    expect(pieces.map(({ at }) => at)).toEqual([2, 2, 2, 2, 2]);
    expect(questions).toEqual([]);
  });

  it('asks about legs that no tee there has', () => {
    const { words, questions } = junction(
      run('A', 'street'),
      run('B', 'A', { fittings: { 'tee-branch': 3 } }),
      run('C', 'A', through),
    );
    expect(words).toEqual(['1 x tee 1 x 1 x 1 pex']);
    // One leg belongs to the tee behind A.
    expect(questions).toEqual([{ code: 'tee-without-junction', run: 'B', legs: 2 }]);
  });

  it('is of the pipe that feeds it: another leaves by a nipple and an adapter', () => {
    const { words, pieces } = junction(
      run('A', 'street', { size: '1', material: 'copper-l' }),
      run('B', 'A', { size: '3/4', material: 'copper-m', ...through }),
      run('C', 'A', { size: '1/2', joint: 'expansion', ...aside }),
    );
    expect(words).toEqual([
      '1 x tee 1 x 3/4 x 1/2 copper-l',
      '1 x nipple 1/2 copper-l',
      '1 x adapter 1/2 x 1/2 copper-l to pex',
    ]);
    expect(pieces[2]!.ends).toEqual([
      { material: 'copper-l', joint: 'solder', size: '1/2' },
      { material: 'pex', joint: 'expansion', size: '1/2' },
    ]);
  });
});
