import { citeValue } from '../../tables/look-up.ts';
import { insulatedFrom } from '../../tables/supports/insulation.ts';
import { nailPlatesPerInlet, sleevesPerFloor } from '../../tables/supports/rules-of-thumb.ts';
import type { Cited } from '../../tables/table.ts';
import { type TakeOffRuleId, takeOffRules } from '../../tables/takeoff/rules.ts';
import type { Network } from '../network/network.ts';
import { partOf, pipeOf } from './article.ts';
import { atDevice } from './at-device.ts';
import { atFixture, stopsAtFixture } from './at-fixture.ts';
import { atManifold } from './at-manifold.ts';
import { drawnFittings } from './drawn-fittings.ts';
import { drawn, followersOf } from './followers.ts';
import { type Amount, gatherLines } from './gather-lines.ts';
import { goOn, legsWithoutTee } from './go-on.ts';
import { isInsulated } from './insulation.ts';
import { joinOne } from './join-one.ts';
import { jointsOfPiece } from './joints.ts';
import { Exact } from './money.ts';
import type { Counted, Piece } from './piece.ts';
import { pipePieces } from './pipe-pieces.ts';
import { placeOfRuns, type RunPlace } from './place-of-runs.ts';
import type { Question } from './question.ts';
import { sundries } from './sundries.ts';
import { supports } from './supports.ts';
import type { TakeOff, TakeOffOptions } from './take-off.ts';
import { tees } from './tees.ts';

/**
 * Takes a scheme off its drawing: fittings by one rule for each kind of junction, pipe by developed length, supports by
 * the spacing table, and the rest by the rules of tables/takeoff/rules.ts, which come with it.
 *
 * @param network a network of runs with their sizes
 * @returns exact counts and lengths in feet; where drawing and tree disagree there is a question, never an error
 */
export function takeOff(network: Network, options: TakeOffOptions = {}): TakeOff {
  const { runs, hot, job, scheme } = network;
  const followers = followersOf(network);
  const places = placeOfRuns(
    network,
    followers,
    options.underground === undefined ? undefined : new Set(options.underground),
  );
  const pieces: Piece[] = [];
  const questions: Question[] = [...legsWithoutTee(runs[0]!)];
  const cited = new Map<string, Cited>();
  const cite = (value: Cited) => cited.set(`${value.table.id} ${value.row} ${value.column}`, value);
  const count = (counted: Counted): void => {
    pieces.push(...counted.pieces);
    questions.push(...counted.questions);
  };

  const ends = fixtureEnds(network);
  runs.forEach((run, at) => {
    pieces.push(...drawnFittings(run, at, countedElsewhere(network, followers, ends, at)));
    if (run.length.si === 0) {
      pieces.push({ article: partOf('nipple', pipeOf(run)), count: 1, at, from: [at], ends: [] });
    }
    count(endOf(network, followers[at]!, ends, at));
    if (places[at]!.phase === 'underground') return;
    const supported = supports(run, at);
    count(supported);
    supported.cited.forEach(cite);
  });

  const perInlet = citeValue(nailPlatesPerInlet);
  const plates = options.nailPlatesPerInlet ?? perInlet.printed;
  pieces.push(...sundries(network, places, plates));
  if (pieces.some(({ article }) => article.kind === 'sleeve')) cite(citeValue(sleevesPerFloor));
  if (options.nailPlatesPerInlet === undefined) cite(perInlet);

  const amounts = pieces.flatMap((piece) => [piece, ...jointsOfPiece(piece)]).map(amountOf(places));
  const rule = options.insulation ?? 'code';
  const insulated = citeValue(insulatedFrom[job.basis.profile]);
  const pipes = pipePieces(network, followers, places);
  for (const { run, feet, material, size } of pipes) {
    const at = network.positionOf.get(run)!;
    const amount = { quantity: feet, place: places[at]!, from: [at] };
    amounts.push({ ...amount, article: { kind: 'pipe', material, sizes: [size] } });
    if (!isInsulated(runs[at]!, hot[at] === 1, rule, insulated.printed)) continue;
    amounts.push({ ...amount, article: { kind: 'insulation', material, sizes: [size] } });
    if (rule === 'code') cite(insulated);
  }
  amounts.push({
    article: { kind: 'test-gauge', sizes: [] },
    quantity: new Exact(1),
    place: { phase: 'rough-in', area: { area: 'whole' }, service: 'cold' },
    from: [0],
  });
  return {
    scheme: { id: scheme.id, name: scheme.name },
    lines: gatherLines(network, amounts),
    pieces: pipes,
    questions,
    rules: Object.keys(takeOffRules) as TakeOffRuleId[],
    cited: [...cited.values()],
  };
}

/** Inlets by the position of their run, and whether a run is the first to reach its fixture. */
type FixtureEnds = ReadonlyMap<
  number,
  { readonly inlet: Network['inlets'][number]; readonly first: boolean }
>;

function fixtureEnds({ inlets }: Network): FixtureEnds {
  const reached = new Set<string>();
  const inOrder = [...inlets].sort((one, other) => one.run - other.run);
  return new Map(
    inOrder.map((inlet) => {
      const first = !reached.has(inlet.fixture.id);
      reached.add(inlet.fixture.id);
      return [inlet.run, { inlet, first }];
    }),
  );
}

/** What stands where a run ends. */
function endOf({ runs }: Network, followers: readonly number[], ends: FixtureEnds, at: number): Counted {
  const run = runs[at]!;
  const [next, second] = followers;
  const fixture = ends.get(at);
  if (fixture !== undefined) return atFixture(run, at, fixture.inlet.fixture, fixture.first);
  if (run.end !== undefined && 'device' in run.end) {
    return run.end.device === 'manifold'
      ? atManifold(runs, at, run.end, followers)
      : atDevice(runs, at, run.end, followers);
  }
  if (next === undefined) {
    const pipe = pipeOf(run);
    const cap: Piece = { article: partOf('cap', pipe), count: 1, at, from: [at], ends: [pipe] };
    return { pieces: [cap], questions: [{ code: 'open-end', run: run.id }] };
  }
  return second === undefined ? goOn(runs, at, next) : tees(runs, at, followers);
}

/** Fittings drawn in a run that another rule counts: the stop of its fixture, the coupling that joins another pipe. */
function countedElsewhere(
  { runs, parent }: Network,
  followers: readonly (readonly number[])[],
  ends: FixtureEnds,
  at: number,
): Parameters<typeof drawnFittings>[2] {
  const run = runs[at]!;
  const fixture = ends.get(at)?.inlet.fixture;
  const stops = fixture === undefined ? 0 : stopsAtFixture(run, fixture);
  const from = runs[parent[at]!];
  const alone = from !== undefined && from.end === undefined && followers[parent[at]!]!.length === 1;
  const joined = alone && joinOne(pipeOf(from), pipeOf(run)) !== undefined;
  return { 'compression-stop': stops, coupling: joined ? Math.min(1, drawn(run, 'coupling')) : 0 };
}

/** Stops and supplies are put in when the walls are closed, whatever the phase of their run. */
function amountOf(places: readonly RunPlace[]): (piece: Piece) => Amount {
  return ({ article, count, at, from, trim }) => {
    const place = places[at]!;
    return {
      article,
      quantity: new Exact(count),
      place: trim ? { ...place, phase: 'trim' } : place,
      from,
    };
  };
}
