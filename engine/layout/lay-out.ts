import { type FixtureKind, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { profiles } from '../../tables/profiles.ts';
import type { Device, Job, Run, Scheme } from '../job/job.ts';
import { buildNetwork } from '../network/build-network.ts';
import type { Defect } from '../network/defect.ts';
import type { Network } from '../network/network.ts';
import { solve } from '../network/solve.ts';
import { clustersOf, onSide } from './clusters.ts';
import { tidy } from './drawing.ts';
import { firstSizes, sizedEnd } from './first-sizes.ts';
import { halvesOf } from './halves.ts';
import { homeRun } from './home-run.ts';
import { drawRoom, type Room } from './mechanical-room.ts';
import type { Missing } from './missing.ts';
import type { LayoutKind, LayoutOptions } from './options.ts';
import { type Piping, pipeDrawing } from './pipe-drawing.ts';
import { reducingValveSet } from './reducing-valve.ts';
import {
  type DraftRun,
  isClosed,
  isShutOff,
  newService,
  type Service,
  serviceOf,
  withReducingValve,
} from './service.ts';
import { type Site, siteOf } from './site.ts';
import type { Part, System } from './system.ts';
import { trunk } from './trunk.ts';
import { zones } from './zones.ts';

export type LaidOut =
  | { readonly ok: true; readonly scheme: Scheme }
  | { readonly ok: false; readonly missing: readonly Missing[] };

const systems: { readonly [kind in LayoutKind]: System } = { trunk, 'home-run': homeRun, zones };

const names: { readonly [kind in LayoutKind]: string } = {
  trunk: 'Trunk and branch',
  'home-run': 'Home runs from one pair of manifolds',
  zones: 'Zone manifolds',
};

/**
 * Draws up a scheme from a job's places and schedule: an ordinary one, to edit, size and compare like any other.
 * The service, then the header in the mechanical room, then the layout of its kind; lengths along the plan's axes with
 * rises and drops, fittings counted from the drawing. Sizes are a first guess. The same job and options give the same
 * scheme.
 *
 * @returns the scheme, or what the job does not say
 */
export function layOut(job: Job, options: LayoutOptions): LaidOut {
  const read = siteOf(job);
  if (!read.ok) return read;
  const { site } = read;
  const parts = partsOf(job, site, options);
  if (parts === undefined) return { ok: false, missing: [{ code: 'halves' }] };
  const service = serviceFor(job, site, options);
  const first = draftNetwork(job, draw(service, site, parts, job, options));
  if (!first.ok) return { ok: false, missing: [{ code: 'sound-job', defects: first.defects }] };
  const set = reducingValveSet(first.network, service.runs.length - 1);
  if (set === undefined) return { ok: true, scheme: sized(first, options) };
  const reduced = withReducingValve(service, options.service?.reducingValve ?? set, site);
  const second = draftNetwork(job, draw(reduced, site, parts, job, options));
  if (!second.ok) return { ok: false, missing: [{ code: 'sound-job', defects: second.defects }] };
  return { ok: true, scheme: sized(second, options) };
}

function partsOf(
  job: Job,
  { fixtures }: Site,
  { halves = false }: LayoutOptions,
): readonly Part[] | undefined {
  const clusters = clustersOf(
    fixtures.filter((placed) => !isOutdoor(placed)),
    job.groups,
  );
  return halves ? halvesOf(clusters, profiles[job.basis.profile]) : [{ tag: '', name: '', clusters }];
}

function isHeated(parts: readonly Part[]): boolean {
  return parts.some(({ clusters }) => onSide(clusters, 'hot').length > 0);
}

function isOutdoor({ fixture }: Site['fixtures'][number]): boolean {
  const traits: FixtureKind = fixtureKinds[fixture.kind];
  return traits.outdoor === true;
}

function serviceFor(job: Job, site: Site, { service = {}, ...options }: LayoutOptions): Service {
  const scheme = chosenScheme(job);
  const copied = service.new || scheme === undefined ? undefined : serviceOf(job, scheme, site);
  if (copied !== undefined) return copied;
  const well = job.supply.kind === 'well';
  const { meter = well ? 'none' : undefined } = service;
  return newService(
    job,
    site,
    {
      piping: { material: service.material ?? 'pe' },
      length: service.length,
      meter: meter === 'none' ? undefined : (meter ?? '1'),
    },
    pipingOf(options),
  );
}

function chosenScheme(job: Job): Scheme | undefined {
  return job.schemes.find(({ id }) => id === job.chosen);
}

function pipingOf({ material = 'pex', joint }: Pick<LayoutOptions, 'material' | 'joint'>): Piping {
  return { material, ...(joint === undefined ? {} : { joint }) };
}

function draw(
  service: Service,
  site: Site,
  parts: readonly Part[],
  job: Job,
  options: LayoutOptions,
): DraftRun[] {
  const heater = options.heater ?? heaterOf(chosenScheme(job)) ?? { device: 'heater', type: 'storage' };
  const piping = pipingOf(options);
  const room: Room = {
    site,
    system: systems[options.kind],
    bent: piping.material === 'pex' && (options.bendHomeRuns ?? true),
    parts,
    heater,
    heaters: options.heaters ?? 'each',
    outdoor: site.fixtures.filter(isOutdoor),
    tank: isClosed(service) && heater.type === 'storage' && isHeated(parts),
    shutOff: !isShutOff(service),
  };
  const drawing = drawRoom(service.end, room).flatMap((stretch) => tidy(service.end, stretch));
  const from = { run: service.runs.at(-1)!.id, at: service.end };
  return [...service.runs, ...pipeDrawing(drawing, from, { grid: site.grid, piping })];
}

function heaterOf(scheme: Scheme | undefined): Extract<Device, { device: 'heater' }> | undefined {
  for (const { end } of scheme?.runs ?? []) {
    if (end !== undefined && 'device' in end && end.device === 'heater') return end;
  }
  return undefined;
}

/** A draft and its network, in which runs whose size is open have one that every material is made in. */
type Draft = { readonly ok: true; readonly runs: readonly DraftRun[]; readonly network: Network };

function draftNetwork(
  job: Job,
  runs: readonly DraftRun[],
): Draft | { ok: false; defects: readonly Defect[] } {
  const scheme: Scheme = {
    id: 'draft',
    name: 'draft',
    runs: runs.map((run): Run => ({ size: '1', ...run })),
  };
  const built = buildNetwork({ ...job, schemes: [scheme], chosen: scheme.id });
  return built.ok ? { ok: true, runs, network: built.network } : built;
}

/** Runs before the first main, and the mains of two halves, by the names that they are drawn under. */
const entryName = /^[SM]\d+$/;
const halfMainName = /^[A-Z]M\d+$/;
const wholeMainName = /^[CH]M\d+$/;

function sized({ runs, network }: Draft, options: LayoutOptions): Scheme {
  const { kind, halves = false, mainSize, service = {} } = options;
  const copied = runs[0]?.size !== undefined;
  const solution = solve(network);
  const entry = network.runs.map(({ id }) => entryName.test(id));
  const drafts = new Map(runs.map((run) => [run.id, run]));
  const run = network.runs.map(({ id }, at) => {
    const isHalfMain = halfMainName.test(id) && !wholeMainName.test(id);
    return drafts.get(id)?.size ?? (entry[at] ? service.size : isHalfMain ? mainSize : undefined);
  });
  const meter = copied || service.meter !== undefined;
  const ended = network.runs.map((_, at) => sizedEnd(network, solution, at, meter));
  const sizes = firstSizes(network, solution, { run, main: mainSize, entry });
  return {
    id: options.id ?? `${kind}${halves ? '-halves' : ''}`,
    name: options.name ?? `${names[kind]}${halves ? ', two halves' : ''}`,
    runs: runs.map((draft): Run => {
      const at = network.positionOf.get(draft.id)!;
      const end = ended[at];
      const { id, from, ...rest } = draft;
      return { id, from, ...rest, size: sizes[at]!, ...(end === undefined ? {} : { end }) };
    }),
  };
}
