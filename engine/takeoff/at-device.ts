import { arresterSizes } from '../../tables/devices/arresters.ts';
import { hasCell } from '../../tables/look-up.ts';
import type { Device, Run } from '../job/job.ts';
import { type Article, type Pipe, partOf, pipeOf } from './article.ts';
import { legsWithoutTee } from './go-on.ts';
import type { Counted, Piece } from './piece.ts';
import { itemOfDevice } from './price-item.ts';
import type { Question } from './question.ts';
import { tees } from './tees.ts';

/**
 * A device in a run: the device, and a connection on each side of it. The side away from the street takes the pipe
 * that goes on there; where several do, the run's own pipe, with a nipple into the row of tees.
 */
export function atDevice(
  runs: readonly Run[],
  at: number,
  device: Exclude<Device, { device: 'manifold' }>,
  followers: readonly number[],
): Counted {
  const pipe = pipeOf(runs[at]!);
  const [only, second] = followers;
  const place = { count: 1, at } as const;
  const pieces: Piece[] = [
    { ...place, article: deviceArticle(device), from: [at], ends: [] },
    { ...place, article: connection(device, pipe), from: [at], ends: [pipe] },
  ];
  const questions: Question[] = [];
  if (device.device === 'mixing-valve') questions.push({ code: 'mixing-valve-inlet', run: runs[at]!.id });
  if (only === undefined) return { pieces, questions };
  const next = second === undefined ? pipeOf(runs[only]!) : pipe;
  pieces.push({ ...place, article: connection(device, next), from: [at, ...followers], ends: [next] });
  if (second === undefined) return { pieces, questions: [...questions, ...legsWithoutTee(runs[only]!)] };
  pieces.push({ ...place, article: partOf('nipple', pipe), from: [at], ends: [] });
  const row = tees(runs, at, followers);
  return { pieces: [...pieces, ...row.pieces], questions: [...questions, ...row.questions] };
}

/** The device as an article, told apart as its price is. */
export function deviceArticle(device: Device): Article {
  const { size } = itemOfDevice(device);
  const kind = device.device;
  if (kind === 'manifold') {
    const type = device.valved ? 'valved' : 'plain';
    return { kind, sizes: [device.size], type, ports: device.ports };
  }
  if (kind === 'meter' || kind === 'arrester') return { kind, sizes: [device.size] };
  return size === undefined ? { kind, sizes: [] } : { kind, sizes: [], type: size };
}

function connection(device: Exclude<Device, { device: 'manifold' }>, pipe: Pipe): Article {
  switch (device.device) {
    case 'meter':
      return partOf('meter-coupling', pipe, [pipe.size, device.size]);
    case 'expansion-tank':
      return partOf('threaded-adapter', pipe);
    case 'arrester':
      return partOf('threaded-adapter', pipe, [pipe.size, arresterThread(device.size) ?? pipe.size]);
    default:
      return partOf('union', pipe);
  }
}

const threads: Readonly<Record<string, string>> = {
  '0.5': '1/2',
  '0.75': '3/4',
  '1': '1',
  '1.25': '1-1/4',
  '1.5': '1-1/2',
  '2': '2',
};

/** The thread of an arrester's size letter, where the table has it. */
function arresterThread(size: string): string | undefined {
  if (!hasCell(arresterSizes, size, 'connection')) return undefined;
  return threads[`${arresterSizes.rows[size]!.values.connection}`];
}
