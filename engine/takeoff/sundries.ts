import { type FixtureKind, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { sleevesPerFloor } from '../../tables/supports/rules-of-thumb.ts';
import { toSI } from '../../tables/units/definitions.ts';
import type { Network } from '../network/network.ts';
import type { Article } from './article.ts';
import type { Piece } from './piece.ts';
import type { RunPlace } from './place-of-runs.ts';

/** Sleeves, nail plates and the gauge: rules of thumb, each with its figure in tables/supports. */
export function sundries(
  network: Network,
  places: readonly RunPlace[],
  nailPlatesEach: number,
): readonly Piece[] {
  const { runs, inlets } = network;
  const part = (article: Article, at: number, count: number): Piece[] =>
    count > 0 ? [{ article, count, at, from: [at], ends: [] }] : [];
  const buried = places.findLastIndex(({ phase }) => phase === 'underground');
  const sleeves = runs.flatMap((run, at) => {
    const passed = places[at]!.phase === 'underground' ? Number(at === buried) : floorsPassed(network, at);
    return part({ kind: 'sleeve', sizes: [run.size] }, at, passed * sleevesPerFloor.printed);
  });
  const plates = inlets.flatMap(({ fixture, run }) => {
    const kind: FixtureKind = fixtureKinds[fixture.kind];
    const count = kind.outdoor ? 0 : fixture.count * nailPlatesEach;
    return part({ kind: 'nail-plate', sizes: [] }, run, count);
  });
  return [...sleeves, ...plates];
}

/** Floors between the two ends of a run. */
function floorsPassed({ job, elevation, rise }: Network, at: number): number {
  const ends = [elevation[at]! - rise[at]!, elevation[at]!];
  const hair = toSI(1e-6, 'ft');
  const low = Math.min(...ends) + hair;
  const high = Math.max(...ends) - hair;
  return job.levels.filter(({ elevation: floor }) => floor.si > low && floor.si < high).length;
}
