import type { Run } from '../job/job.ts';
import { type Pipe, pipeOf } from './article.ts';
import { legsOf } from './followers.ts';
import { joinOne } from './join-one.ts';
import type { Counted } from './piece.ts';
import type { Question } from './question.ts';

/** A run that goes on as one other. A coupling drawn in that one is what joins them, where something must. */
export function goOn(runs: readonly Run[], feeds: number, next: number): Counted {
  const feed = pipeOf(runs[feeds]!);
  const pipe = pipeOf(runs[next]!);
  const article = joinOne(feed, pipe);
  const from = [feeds, next];
  const ends: readonly Pipe[] = [feed, pipe];
  return {
    pieces: article === undefined ? [] : [{ article, count: 1, at: next, from, ends }],
    questions: legsWithoutTee(runs[next]!),
  };
}

/** Legs of tees drawn where a run begins alone. */
export function legsWithoutTee(run: Run): Question[] {
  const legs = legsOf(run);
  return legs === 0 ? [] : [{ code: 'tee-without-junction', run: run.id, legs }];
}
