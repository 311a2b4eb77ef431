import { profiles } from '../../tables/profiles.ts';
import { demandChoice, demandMethod } from '../demand/demand-method.ts';
import { fixtureEnds } from '../demand/fixture-ends.ts';
import { gatherFlows } from '../demand/gather-flows.ts';
import { gatherCodeUnits } from '../demand/gather-units.ts';
import { deviceCurve } from '../hydraulics/device-curve.ts';
import type { Job, Run } from '../job/job.ts';
import { checkNames, checkRuns } from './check-references.ts';
import type { Defect } from './defect.ts';
import { lowestCommonRun } from './lowest-common-run.ts';
import type { Network, PlacedDevice } from './network.ts';
import { type Order, orderRuns } from './order-runs.ts';
import { pipeArrays } from './pipe-arrays.ts';
import { placeInlets } from './place-inlets.ts';
import { staticPressures } from './static-pressure.ts';

/** A network, or every reason why the scheme makes none. */
export type Built =
  | { readonly ok: true; readonly network: Network }
  | { readonly ok: false; readonly defects: readonly Defect[] };

/**
 * Makes one scheme of a job ready to solve.
 *
 * @param schemeId the job's chosen scheme where it is left out
 */
export function buildNetwork(job: Job, schemeId: string = job.chosen): Built {
  const scheme = job.schemes.find(({ id }) => id === schemeId);
  if (scheme === undefined) return { ok: false, defects: [{ code: 'no-such-scheme', scheme: schemeId }] };
  const defects = [...checkNames(job), ...checkRuns(scheme)];
  const ordered = orderRuns(scheme);
  if (!ordered.ok) return { ok: false, defects: [...defects, ...ordered.defects] };

  const { indexAt, parent, subtreeEnd } = ordered.order;
  const runs = Array.from(indexAt, (index) => scheme.runs[index]!);
  const hot = hotRuns(runs, parent);
  const placed = placeInlets(job, runs, hot);
  defects.push(...placed.defects, ...runsAfterEnds(runs, ordered.order));
  if (defects.length > 0) return { ok: false, defects };

  const { basis, supply } = job;
  const profile = profiles[basis.profile];
  const size = runs.length;
  const pipes = pipeArrays(basis, runs, hot, onManifolds(runs, parent));
  const ends = fixtureEnds(placed.inlets);
  const meet = lowestCommonRun(parent, subtreeEnd);
  const code = gatherCodeUnits(job, profile, parent, ends, meet);
  const task = { basis, profile, units: job.units, parent, ends, meet, code };
  const method = demandMethod(demandChoice(basis, profile), task);
  const { served, ...flowsAdded } = gatherFlows(method.counts, parent, ends, meet);
  const devices = placeDevices(runs);
  const elevationLoss = pipes.arrays.weight.map((weight, at) => weight * pipes.arrays.rise[at]!);
  return {
    ok: true,
    network: {
      job,
      scheme,
      basis,
      supply,
      size,
      runs,
      positionOf: new Map(runs.map((run, at) => [run.id, at])),
      parent,
      subtreeEnd,
      hot,
      ...pipes.arrays,
      elevation: elevations(supply.elevation.si, pipes.arrays.rise, parent),
      elevationLoss,
      ...devices,
      staticPressure: staticPressures({ supply, parent, elevationLoss, ...devices }),
      unitsAdded: code.added,
      ...flowsAdded,
      served: { ...served, units: code.units },
      demand: method.demand(served),
      inlets: placed.inlets,
      sources: { ...pipes.sources, units: code.sources },
    },
  };
}

/** 1 where a run leaves a port of a manifold. */
function onManifolds(runs: readonly Run[], parent: Int32Array): Uint8Array {
  return Uint8Array.from(parent, (above) => {
    const end = above < 0 ? undefined : runs[above]!.end;
    return end !== undefined && 'device' in end && end.device === 'manifold' ? 1 : 0;
  });
}

/** 1 where the water of a run came through a heater. */
function hotRuns(runs: readonly Run[], parent: Int32Array): Uint8Array {
  const hot = new Uint8Array(runs.length);
  for (let at = 1; at < runs.length; at++) {
    const above = parent[at]!;
    const end = runs[above]!.end;
    if (hot[above] === 1 || (end !== undefined && 'device' in end && end.device === 'heater')) hot[at] = 1;
  }
  return hot;
}

/** Runs that go on from where nothing can: a fixture's inlet, an expansion tank, an arrester. */
function runsAfterEnds(runs: readonly Run[], { parent }: Order): Defect[] {
  const defects: Defect[] = [];
  for (let at = 1; at < runs.length; at++) {
    const from = runs[parent[at]!]!;
    const { end } = from;
    if (end === undefined) continue;
    const closed = 'fixture' in end || end.device === 'expansion-tank' || end.device === 'arrester';
    if (closed) defects.push({ code: 'run-after-end', run: runs[at]!.id, from: from.id });
  }
  return defects;
}

function elevations(start: number, rise: Float64Array, parent: Int32Array): Float64Array {
  const elevation = new Float64Array(rise.length);
  for (let at = 0; at < rise.length; at++) {
    const above = parent[at]!;
    elevation[at] = (above < 0 ? start : elevation[above]!) + rise[at]!;
  }
  return elevation;
}

function placeDevices(runs: readonly Run[]): Pick<Network, 'deviceAt' | 'devices'> {
  const deviceAt = new Int32Array(runs.length).fill(-1);
  const devices: PlacedDevice[] = [];
  runs.forEach(({ end, size }, run) => {
    if (end === undefined || !('device' in end)) return;
    deviceAt[run] = devices.length;
    const curve = deviceCurve(end, size);
    devices.push(
      end.device === 'reducing-valve'
        ? { device: end, run, curve, setPressure: end.set.si }
        : { device: end, run, curve },
    );
  });
  return { deviceAt, devices };
}
