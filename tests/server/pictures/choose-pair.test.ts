import { describe, expect, it } from 'vitest';
import { buildNetwork, type InletResult, report } from '../../../engine/index.ts';
import { choosePair } from '../../../server/pictures/choose-pair.ts';
import { readSmallJob } from '../small-job.ts';

const built = buildNetwork(await readSmallJob());
if (!built.ok) throw new Error('no tree');
const { inlets } = report(built.network);
const coldOnly = inlets.filter(({ inlet }) => inlet.side === 'cold');

const keys = (from: readonly InletResult[], first = '', second = '') =>
  choosePair(from, first, second).pair?.map(({ inlet }) => `${inlet.fixture.id}.${inlet.side}`);

describe('choosePair', () => {
  it('sets cold beside hot of the worst fixture that has both', () => {
    const worst = inlets.find(({ inlet }) => ['KS', 'LAV', 'SH'].includes(inlet.fixture.id))!;
    const { id } = worst.inlet.fixture;
    expect(keys(inlets)).toEqual([`${id}.cold`, `${id}.hot`]);
  });

  it('takes the two that were asked for, and fills in the other side of one', () => {
    expect(keys(inlets, 'HB.cold', 'KS.hot')).toEqual(['HB.cold', 'KS.hot']);
    expect(keys(inlets, 'KS.hot')).toEqual(['KS.hot', 'KS.cold']);
    expect(keys(inlets, '', 'LAV.cold')).toEqual(['LAV.hot', 'LAV.cold']);
  });

  it('sets the two worst side by side where no fixture has both sides, and one beside itself', () => {
    const [first, second] = coldOnly.map(({ inlet }) => `${inlet.fixture.id}.cold`);
    expect(keys(coldOnly)).toEqual([first, second]);
    expect(keys(coldOnly.slice(0, 1))).toEqual([first, first]);
    expect(keys([])).toBeUndefined();
  });

  it('says what it has not, and shows something else', () => {
    const { pair, notice } = choosePair(inlets, 'ATTIC.hot', 'HB.cold');
    expect(notice).toBe('No run of this scheme ends at ATTIC.hot; another path is shown instead.');
    expect(pair?.[1].inlet.fixture.id).toBe('HB');
    expect(choosePair(inlets, '', '').notice).toBe('');
  });
});
