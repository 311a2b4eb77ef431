import type { Device, Run } from '../job/job.ts';
import { type Article, partOf, pipeOf } from './article.ts';
import { deviceArticle } from './at-device.ts';
import { legsWithoutTee } from './go-on.ts';
import type { Counted, Piece } from './piece.ts';
import type { Question } from './question.ts';

/** A manifold: one adapter at its inlet, a fitting at each port in use, a plug in each other. */
export function atManifold(
  runs: readonly Run[],
  at: number,
  device: Extract<Device, { device: 'manifold' }>,
  followers: readonly number[],
): Counted {
  const run = runs[at]!;
  const pipe = pipeOf(run);
  const part = (article: Article, ends: Piece['ends'], from = [at], count = 1): Piece => {
    return { article, count, at, from, ends };
  };
  const free = device.ports - followers.length;
  const plug: Article = { kind: 'port-plug', sizes: [] };
  const pieces = [
    part(deviceArticle(device), []),
    part(partOf('threaded-adapter', pipe, [pipe.size, device.size]), [pipe]),
    ...followers.map((line) => {
      const next = pipeOf(runs[line]!);
      return part(partOf('manifold-port', next), [next], [at, line]);
    }),
    ...(free > 0 ? [part(plug, [], [at], free)] : []),
  ];
  const short: Question[] =
    free < 0 ? [{ code: 'ports-short', run: run.id, ports: device.ports, lines: followers.length }] : [];
  return { pieces, questions: [...short, ...followers.flatMap((line) => legsWithoutTee(runs[line]!))] };
}
