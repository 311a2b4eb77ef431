import { shutOffs } from '../../tables/pipe/names.ts';
import type { Device, Job, Quantity, Run, Scheme } from '../job/job.ts';
import { apart, developed, route } from './drawing.ts';
import type { Point } from './grid.ts';
import type { Piping, UnsizedRun } from './pipe-drawing.ts';
import type { Site } from './site.ts';

/** A run with its size where that stands already. */
export type DraftRun = UnsizedRun & { readonly size?: string };

/** The runs from the street into the mechanical room, one after the other. */
export interface Service {
  readonly runs: readonly DraftRun[];
  /** Where the last one ends. */
  readonly end: Point;
}

export interface NewService {
  readonly piping: Piping;
  /** From the street to where the service comes in; where it is not known, 60 ft, or 10 ft from a well's tank. */
  readonly length: Quantity | undefined;
  /** Size of the meter; undefined where there is none. */
  readonly meter: string | undefined;
}

/**
 * The service of a scheme that is there already: its runs from the street to the last device or shut-off before it
 * first branches, with sizes and notes, called S1, S2 and so on. It is taken to end in the mechanical room.
 *
 * @returns undefined where the scheme has no such run
 */
export function serviceOf(job: Job, scheme: Scheme, { grid, room }: Site): Service | undefined {
  const behind = (id: string): readonly Run[] => scheme.runs.filter(({ from }) => from === id);
  const runs: Run[] = [];
  let next = behind('street');
  while (next.length === 1 && runs.length < scheme.runs.length) {
    const run = next[0]!;
    if (run.end !== undefined && !onTheWay(run)) break;
    runs.push(run);
    next = behind(run.id);
  }
  if (runs.length === 0) return undefined;
  // Plain pipe behind the last of them is the header's, which is drawn anew.
  const last = runs.findLastIndex((run) => run.end !== undefined || shuts(run));
  runs.length = Math.max(1, last + 1);
  const height = runs.reduce((sum, { rise }) => sum + (rise?.si ?? 0), job.supply.elevation.si);
  return {
    runs: runs.map((run, index) => ({
      ...run,
      id: `S${index + 1}`,
      from: index === 0 ? 'street' : `S${index}`,
    })),
    end: { ...room, z: grid.snap(height) },
  };
}

/** What stands in a service: a meter, a valve, treatment; no heater, manifold or fixture. */
function onTheWay({ end }: Run): boolean {
  if (end === undefined || !('device' in end)) return false;
  return !['heater', 'manifold', 'mixing-valve', 'expansion-tank', 'arrester'].includes(end.device);
}

/**
 * A new service: from the main to a foot over the floor where it comes in, with a corporation stop, a curb stop and
 * the meter, or from a well's tank; and along the plan's axes, first and second, to a foot over the floor of the
 * mechanical room, with the main shut-off.
 */
export function newService(
  job: Job,
  site: Site,
  { piping, length, meter }: NewService,
  inside: Piping,
): Service {
  const { grid, entry, room } = site;
  const street = { ...entry, z: grid.snap(job.supply.elevation.si) };
  const inlet = { ...entry, z: entry.z + grid.feet(1) };
  const end = { ...room, z: room.z + grid.feet(1) };
  const well = job.supply.kind === 'well';
  const guessed = length === undefined;
  const steps = guessed ? grid.feet(well ? 10 : 60) : grid.snap(length.si);
  const corners = route(inlet, end, ['x', 'y', 'z']);
  return {
    end,
    runs: [
      {
        id: 'S1',
        from: 'street',
        ...piping,
        length: grid.length(Math.max(steps, apart(street, inlet))),
        ...risen(site, inlet.z - street.z),
        fittings: well
          ? []
          : [
              { kind: 'corporation-stop', count: 1 },
              { kind: 'curb-stop', count: 1 },
            ],
        ...(meter === undefined ? {} : { end: { device: 'meter', size: meter } as const }),
        note: `${well ? 'From the pressure tank' : 'From the main to the house'}${guessed ? '; its length is a guess' : ''}`,
      },
      {
        id: 'S2',
        from: 'S1',
        ...inside,
        length: grid.length(developed(inlet, { corners })),
        ...risen(site, end.z - inlet.z),
        fittings: [
          ...(corners.length > 1 ? [{ kind: 'ell', count: corners.length - 1 } as const] : []),
          { kind: 'ball-valve', count: 1 },
        ],
        note: 'Into the mechanical room',
      },
    ],
  };
}

/** The same service with a reducing valve at its end, on a foot of pipe of its own where something stands there. */
export function withReducingValve({ runs, end }: Service, set: Quantity, { grid }: Site): Service {
  const valve: Device = { device: 'reducing-valve', set };
  const last = runs.at(-1)!;
  if (last.end === undefined) return { runs: [...runs.slice(0, -1), { ...last, end: valve }], end };
  const { note: _note, rise: _rise, ...same } = last;
  const foot = grid.feet(1);
  const own: DraftRun = {
    ...same,
    id: `S${runs.length + 1}`,
    from: last.id,
    length: grid.length(foot),
    rise: grid.length(foot),
    fittings: [],
    end: valve,
  };
  return { runs: [...runs, own], end: { ...end, z: end.z + foot } };
}

/** Whether heated water cannot pass back to the street. */
export function isClosed({ runs }: Service): boolean {
  return runs.some(({ fittings, end }) => {
    if (fittings.some(({ kind }) => kind === 'check-valve')) return true;
    return end !== undefined && 'device' in end && ['reducing-valve', 'backflow'].includes(end.device);
  });
}

/** Whether a valve in the service closes it; the city's stops in the street are not the house's. */
export function isShutOff({ runs }: Service): boolean {
  return runs.some(shuts);
}

function shuts({ fittings }: Pick<Run, 'fittings'>): boolean {
  return fittings.some(({ kind }) => kind !== 'curb-stop' && shutOffs.has(kind));
}

function risen({ grid }: Site, steps: number): Pick<UnsizedRun, 'rise'> {
  return steps === 0 ? {} : { rise: grid.length(steps) };
}
