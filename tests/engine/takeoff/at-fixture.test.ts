import { describe, expect, it } from 'vitest';
import type { Fixture } from '../../../engine/job/job.ts';
import { atFixture, stopsAtFixture } from '../../../engine/takeoff/at-fixture.ts';
import { fixturePractice } from '../../../engine/takeoff/fixture-practice.ts';
import { fixtureKinds } from '../../../tables/fixtures/kinds.ts';
import type { FittingKind } from '../../../tables/pipe/names.ts';
import { keysOf } from '../../arbitrary/run.ts';
import { cold, fixture, run } from '../../jobs/written-job.ts';
import { inWords } from './counted.ts';

const end = (
  kind: Fixture['kind'],
  fittings: { [kind in FittingKind]?: number } = {},
  first = true,
  count = 1,
) => {
  const own = run('A', 'street', { size: '1/2', end: cold('F'), fittings });
  const { pieces, questions } = atFixture(own, 0, fixture('F', kind, { count }), first);
  return { words: inWords(pieces), questions, pieces };
};

describe('the end of a run at a fixture', () => {
  it('is a stub-out with the stop drawn and a supply, put in at trim', () => {
    const { words, questions, pieces } = end('lavatory', { 'compression-stop': 1 });
    expect(words).toEqual([
      '1 x stub-out 1/2 pex',
      '1 x test-cap 1/2',
      '1 x compression-stop 1/2 pex',
      '1 x supply 1/2',
    ]);
    expect(pieces.map(({ trim }) => trim === true)).toEqual([false, false, true, true]);
    expect(questions).toEqual([]);
  });

  it('has no other stop where a valve is drawn', () => {
    expect(end('clothes-washer', { 'ball-valve': 1 })).toMatchObject({
      words: ['1 x stub-out 1/2 pex', '1 x test-cap 1/2', '1 x supply 1/2'],
      questions: [],
    });
  });

  it('has a stop where none is drawn, and asks', () => {
    const { words, questions } = end('kitchen-sink');
    expect(words).toContain('1 x compression-stop 1/2 pex');
    expect(questions).toEqual([{ code: 'stop-not-drawn', run: 'A', fixture: 'F' }]);
  });

  it('is an adapter at each inlet of a mixing valve; what leaves the valve counts once', () => {
    const outlets = (count: number) => [
      '1 x threaded-adapter 1/2 pex',
      `${count} x threaded-adapter 1/2 pex`,
      `${count} x drop-ear-ell 1/2 pex`,
      `${count} x test-cap 1/2`,
    ];
    for (const kind of ['shower', 'hand-shower', 'bathtub'] as const) {
      expect(end(kind).words, kind).toEqual(outlets(1));
    }
    expect(end('bathtub-shower').words).toEqual(outlets(2));
    expect(end('shower', {}, false).words).toEqual(['1 x threaded-adapter 1/2 pex']);
  });

  it('is a drop-ear ell at a hose bibb, threaded at irrigation, its own kind at a flushometer valve', () => {
    expect(end('hose-bibb').words).toEqual(['1 x drop-ear-ell 1/2 pex', '1 x test-cap 1/2']);
    expect(end('irrigation').words).toEqual(['1 x threaded-adapter 1/2 pex', '1 x test-cap 1/2']);
    expect(end('water-closet-flushometer').words).toEqual([
      '1 x flushometer-connection 1/2 pex',
      '1 x test-cap 1/2',
    ]);
  });

  it('stands as often as there are fixtures on it, and asks for the pipe between', () => {
    const { words, questions } = end('lavatory', { 'compression-stop': 1 }, true, 3);
    expect(words).toEqual([
      '3 x stub-out 1/2 pex',
      '3 x test-cap 1/2',
      '3 x compression-stop 1/2 pex',
      '3 x supply 1/2',
    ]);
    expect(questions).toEqual([{ code: 'shared-inlet', run: 'A', fixture: 'F', count: 3 }]);
  });

  it('takes one drawn stop, and leaves others to be counted as drawn', () => {
    const own = run('A', 'street', { fittings: { 'compression-stop': 2 } });
    expect(stopsAtFixture(own, { kind: 'lavatory' })).toBe(1);
    expect(stopsAtFixture(own, { kind: 'shower' })).toBe(0);
  });

  it('sees every kind that flushes by a flushometer valve', () => {
    const flushing = keysOf(fixtureKinds).filter((kind) => 'flushometer' in fixtureKinds[kind]);
    expect(keysOf(fixturePractice).filter((kind) => fixturePractice[kind].end === 'flushometer')).toEqual(
      flushing,
    );
    const mixing = keysOf(fixtureKinds).filter((kind) => 'mixing' in fixtureKinds[kind]);
    expect(keysOf(fixturePractice).filter((kind) => fixturePractice[kind].end === 'valve')).toEqual(mixing);
  });
});
