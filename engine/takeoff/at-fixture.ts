import { shutOffs } from '../../tables/pipe/names.ts';
import type { Fixture, Run } from '../job/job.ts';
import { type Article, type Pipe, partOf, pipeOf } from './article.ts';
import { fixturePractice } from './fixture-practice.ts';
import { drawn } from './followers.ts';
import type { Counted, Piece } from './piece.ts';
import type { Question } from './question.ts';

/**
 * The end of a run at a fixture's inlet, as many times as there are fixtures on it.
 *
 * @param first whether the run is the first that reaches the fixture: it carries what stands once for both inlets
 */
export function atFixture(
  run: Run,
  at: number,
  { id, kind, count }: Pick<Fixture, 'id' | 'kind' | 'count'>,
  first: boolean,
): Counted {
  const pipe = pipeOf(run);
  const practice = fixturePractice[kind];
  const part = (article: Article, ends: readonly Pipe[], times = 1): Piece => {
    return { article, count: count * times, at, from: [at], ends };
  };
  const plain = (kind: 'supply' | 'test-cap'): Article => ({ kind, sizes: [pipe.size] });
  const cap = (times = 1): Piece => part(plain('test-cap'), [], times);
  const connected = (kind: Article['kind']): Piece => part(partOf(kind, pipe), [pipe]);
  const questions: Question[] = count > 1 ? [{ code: 'shared-inlet', run: run.id, fixture: id, count }] : [];

  switch (practice.end) {
    case 'valve': {
      const inlet = connected('threaded-adapter');
      if (!first) return { pieces: [inlet], questions };
      const { outlets } = practice;
      const outlet = part(partOf('threaded-adapter', pipe), [pipe], outlets);
      const spout = part(partOf('drop-ear-ell', pipe), [pipe], outlets);
      return { pieces: [inlet, outlet, spout, cap(outlets)], questions };
    }
    case 'drop-ear':
      return { pieces: [connected('drop-ear-ell'), cap()], questions };
    case 'flushometer':
      return { pieces: [connected('flushometer-connection'), cap()], questions };
    case 'threaded':
      return { pieces: [connected('threaded-adapter'), cap()], questions };
    case 'stub-out': {
      const pieces: Piece[] = [connected('stub-out'), cap()];
      const stops = drawn(run, 'compression-stop');
      const shut = run.fittings.some(({ kind, count: many }) => many > 0 && shutOffs.has(kind));
      if (stops > 0 || !shut) pieces.push({ ...part(partOf('compression-stop', pipe), []), trim: true });
      if (!shut) questions.push({ code: 'stop-not-drawn', run: run.id, fixture: id });
      pieces.push({ ...part(plain('supply'), []), trim: true });
      return { pieces, questions };
    }
  }
}

/** How many of the compression stops drawn in a run are that of its fixture: counted there, not as drawn. */
export function stopsAtFixture(run: Run, { kind }: Pick<Fixture, 'kind'>): number {
  return fixturePractice[kind].end === 'stub-out' ? Math.min(1, drawn(run, 'compression-stop')) : 0;
}
