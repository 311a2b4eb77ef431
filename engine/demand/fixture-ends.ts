import type { Fixture } from '../job/job.ts';
import type { Inlet } from '../network/network.ts';

/** Every piped fixture with its inlets, one or two, in the order of their runs. */
export type FixtureEnds = ReadonlyMap<Fixture, readonly Inlet[]>;

/** The last run that feeds both of two runs; see network/lowest-common-run.ts. */
export type Meet = (one: number, other: number) => number;

/** The inlets of a network by fixture. */
export function fixtureEnds(inlets: readonly Inlet[]): FixtureEnds {
  const ends = new Map<Fixture, Inlet[]>();
  for (const inlet of inlets) {
    const list = ends.get(inlet.fixture);
    if (list === undefined) ends.set(inlet.fixture, [inlet]);
    else list.push(inlet);
  }
  return ends;
}
