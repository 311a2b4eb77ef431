import type { Run } from '../job/job.ts';
import { fitsAlike, type Pipe, partOf, pipeOf } from './article.ts';
import { legsOf, straightOf } from './followers.ts';
import { joinOne } from './join-one.ts';
import type { Counted, Piece } from './piece.ts';
import type { Question } from './question.ts';

/**
 * A run that goes on as two or more: a tee less than it has followers, in a row, with a nipple between each two. Every
 * tee is of the pipe that feeds it, in its size up to the last; the followers that do not go straight on leave by the
 * sides, in order. A follower of another pipe leaves by a nipple and an adapter.
 *
 * @param feeds position of the run that feeds them
 */
export function tees(runs: readonly Run[], feeds: number, followers: readonly number[]): Counted {
  const feed = pipeOf(runs[feeds]!);
  const { straight, unclear } = straightOf(runs, followers);
  const sides = followers.filter((at) => at !== straight);
  const pieces: Piece[] = [];
  const nipple = (from: readonly number[], size: string): void => {
    const pipe = { ...feed, size };
    pieces.push({ article: partOf('nipple', pipe), count: 1, at: straight, from, ends: [] });
  };
  sides.forEach((side, index) => {
    const last = index === sides.length - 1;
    const on = last ? runs[straight]!.size : feed.size;
    const sizes = [feed.size, on, runs[side]!.size];
    pieces.push({
      article: partOf('tee', feed, sizes),
      count: 1,
      at: straight,
      from: last ? [feeds, straight, side] : [feeds, side],
      ends: sizes.map((size) => ({ ...feed, size })),
    });
    if (!last) nipple([feeds], feed.size);
  });
  for (const at of followers) {
    const next = pipeOf(runs[at]!);
    if (fitsAlike(feed, next)) continue;
    const leg: Pipe = { ...feed, size: next.size };
    nipple([at], next.size);
    pieces.push({ article: joinOne(leg, next)!, count: 1, at, from: [at], ends: [leg, next] });
  }

  const questions: Question[] = [];
  const from = runs[feeds]!.id;
  if (unclear) questions.push({ code: 'straight-unclear', run: from, taken: runs[straight]!.id });
  for (const at of followers) {
    const run = runs[at]!;
    const legs = legsOf(run);
    if (legs === 0) questions.push({ code: 'tee-not-drawn', run: run.id, from });
    const over = legs - sides.length;
    if (over > 0) questions.push({ code: 'tee-without-junction', run: run.id, legs: over });
  }
  return { pieces, questions };
}
