import { arresterSizes } from '../../tables/devices/arresters.ts';
import { manifoldCv } from '../../tables/devices/curves.ts';
import { meterLosses } from '../../tables/devices/meters.ts';
import { pipeDimensions } from '../../tables/pipe/dimensions.ts';
import { type JointId, jointsOf } from '../../tables/pipe/names.ts';
import { risingSizes } from '../hydraulics/rising-sizes.ts';
import type { Device, Job, Places, Scheme, Supply } from '../job/job.ts';
import type { Defect } from './defect.ts';

/** Names in a job that are used twice or lead nowhere, apart from the tree itself. */
export function checkNames(job: Job): Defect[] {
  const defects: Defect[] = [];
  twice(job.fixtures, (fixture) => defects.push({ code: 'fixture-twice', fixture }));
  twice(job.levels, (level) => defects.push({ code: 'level-twice', level }));
  twice(job.groups, (group) => defects.push({ code: 'group-twice', group }));
  twice(job.schemes, (scheme) => defects.push({ code: 'scheme-twice', scheme }));
  const levels = new Set(job.levels.map(({ id }) => id));
  const groups = new Set(job.groups.map(({ id }) => id));
  for (const { id, level, group } of job.fixtures) {
    if (level !== undefined && !levels.has(level))
      defects.push({ code: 'level-missing', fixture: id, level });
    if (group !== undefined && !groups.has(group))
      defects.push({ code: 'group-missing', fixture: id, group });
  }
  if (job.places !== undefined) defects.push(...checkPlaces(job.places, levels));
  return [...defects, ...checkSupply(job.supply)];
}

function checkPlaces(places: Places, levels: ReadonlySet<string>): Defect[] {
  const defects: Defect[] = [];
  for (const place of ['serviceEntry', 'mechanicalRoom'] as const) {
    const { level } = places[place];
    if (!levels.has(level)) defects.push({ code: 'place-level-missing', place, level });
  }
  twice(places.risers, (riser) => defects.push({ code: 'riser-twice', riser }));
  return defects;
}

/** Sizes, joints and rises of a scheme's runs that no pipe or device of theirs has. */
export function checkRuns(scheme: Scheme): Defect[] {
  const defects: Defect[] = [];
  for (const run of scheme.runs) {
    const { rows } = pipeDimensions[run.material];
    if (!Object.hasOwn(rows, run.size)) {
      const { size, material } = run;
      defects.push({ code: 'unknown-size', run: run.id, size, material, sizes: risingSizes(rows) });
    }
    const joints: readonly JointId[] = jointsOf[run.material];
    if (run.joint !== undefined && !joints.includes(run.joint)) {
      defects.push({ code: 'joint-mismatch', run: run.id, joint: run.joint, material: run.material, joints });
    }
    const rise = run.rise?.si ?? 0;
    // A hair of room for lengths and rises that were typed in different units.
    if (Math.abs(rise) > run.length.si * (1 + 1e-9)) {
      defects.push({ code: 'rise-over-length', run: run.id, rise, length: run.length.si });
    }
    if (run.end !== undefined && 'device' in run.end) defects.push(...checkDevice(run.id, run.end));
  }
  return defects;
}

function checkDevice(run: string, device: Device): Defect[] {
  const sizes = sizesOf(device);
  if (sizes === undefined || !('size' in device) || sizes.includes(device.size)) return [];
  return [{ code: 'unknown-device-size', run, device: device.device, size: device.size, sizes }];
}

/** Sizes in which the tables have a device, or undefined where it comes without a size. */
function sizesOf(device: Device): string[] | undefined {
  switch (device.device) {
    case 'meter':
      return risingSizes(meterLosses);
    case 'manifold':
      return risingSizes(manifoldCv.rows);
    case 'arrester':
      return Object.keys(arresterSizes.rows);
    default:
      return undefined;
  }
}

function checkSupply(supply: Supply): Defect[] {
  switch (supply.kind) {
    case 'static':
      return inverted(supply.low.si, supply.high.si);
    case 'well':
      return inverted(supply.cutIn.si, supply.cutOut.si);
    case 'flow-test': {
      const { static: still, residual, low, high } = supply;
      if (residual.si > still.si || supply.flow.si <= 0) {
        return [{ code: 'flow-test-inverted', static: still.si, residual: residual.si }];
      }
      return low === undefined ? [] : inverted(low.si, Math.max(still.si, high?.si ?? 0));
    }
  }
}

function inverted(low: number, high: number): Defect[] {
  return low > high ? [{ code: 'pressures-inverted', low, high }] : [];
}

function twice(list: readonly { readonly id: string }[], found: (id: string) => void): void {
  const seen = new Set<string>();
  for (const { id } of list) {
    if (seen.has(id)) found(id);
    seen.add(id);
  }
}
