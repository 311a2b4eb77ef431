import type {
  Basis,
  Fixture,
  FixtureGroup,
  Job,
  Level,
  Quantity,
  Run,
  RunEnd,
  Supply,
} from '../../engine/job/job.ts';
import { buildNetwork } from '../../engine/network/build-network.ts';
import type { Network } from '../../engine/network/network.ts';
import type { Report } from '../../engine/network/report.ts';
import { report } from '../../engine/report.ts';
import type { FittingKind } from '../../tables/pipe/names.ts';
import { toSI, type UnitId } from '../../tables/units/definitions.ts';

/** A quantity as if it had been typed. */
export function q(value: number, unit: UnitId): Quantity {
  return { typed: `${value} ${unit}`, si: toSI(value, unit) };
}

export const psi = (value: number): Quantity => q(value, 'psi');
export const gpm = (value: number): Quantity => q(value, 'gpm');
export const ft = (value: number): Quantity => q(value, 'ft');
export const fahrenheit = (value: number): Quantity => q(value, 'F');

/** 60 psi at night and by day, at the height of the datum. */
export const street: Supply = { kind: 'static', elevation: ft(0), low: psi(60), high: psi(60) };

export const usualBasis: Basis = {
  profile: 'ipc-2018',
  between: 'interpolate',
  friction: 'hazen-williams',
  coldTemperature: fahrenheit(60),
  hotTemperature: fahrenheit(140),
};

/** A run of 10 ft of 1 in PEX without fittings, unless it says otherwise. */
export function run(
  id: string,
  from: string,
  rest: Partial<Omit<Run, 'id' | 'from' | 'fittings'>> & {
    readonly fittings?: { readonly [kind in FittingKind]?: number };
  } = {},
): Run {
  const { fittings = {}, ...others } = rest;
  return {
    id,
    from,
    size: '1',
    material: 'pex',
    length: ft(10),
    fittings: Object.entries(fittings).map(([kind, count]) => ({ kind: kind as FittingKind, count })),
    ...others,
  };
}

export function fixture(id: string, kind: Fixture['kind'], rest: Partial<Fixture> = {}): Fixture {
  return { id, name: id, kind, use: 'private', count: 1, ...rest };
}

/** The end of a run at the cold inlet of a fixture. */
export const cold = (id: string): RunEnd => ({ fixture: id, inlet: 'cold' });
export const hot = (id: string): RunEnd => ({ fixture: id, inlet: 'hot' });

/** An invented job of one scheme. */
export function job(
  fixtures: readonly Fixture[],
  runs: readonly Run[],
  rest: {
    readonly basis?: Partial<Basis>;
    readonly supply?: Supply;
    readonly levels?: readonly Level[];
    readonly groups?: readonly FixtureGroup[];
  } = {},
): Job {
  return {
    format: 'hightap-job',
    version: 2,
    name: 'Invented building',
    units: 'us',
    basis: { ...usualBasis, ...rest.basis },
    supply: rest.supply ?? street,
    levels: rest.levels ?? [],
    groups: rest.groups ?? [],
    fixtures,
    schemes: [{ id: 'only', name: 'Only', runs }],
    chosen: 'only',
  };
}

/** The network of a job that must be good. */
export function networkOf(written: Job): Network {
  const built = buildNetwork(written);
  if (!built.ok) throw new Error(JSON.stringify(built.defects));
  return built.network;
}

export function reportOf(written: Job): Report {
  return report(networkOf(written));
}

/** The value at the run of an id. */
export function at(network: Network, values: ArrayLike<number>, id: string): number {
  const position = network.positionOf.get(id);
  if (position === undefined) throw new Error(`no run ${id}`);
  return values[position]!;
}
