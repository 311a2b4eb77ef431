import { meterLosses } from '../../tables/devices/meters.ts';
import { citeValue } from '../../tables/look-up.ts';
import { pipeDimensions } from '../../tables/pipe/dimensions.ts';
import { profiles } from '../../tables/profiles.ts';
import { deviceCurve } from '../hydraulics/device-curve.ts';
import { largerSizes } from '../hydraulics/rising-sizes.ts';
import { lossAlone } from '../network/loss-alone.ts';
import type { Inlet, Network } from '../network/network.ts';
import { pathTo } from '../network/path.ts';
import { pressureAlong } from '../network/pressure-along.ts';
import type { Solution } from '../network/solution.ts';
import type { Mend } from './finding.ts';

/** Trials on one path: the runs that lose most are the ones worth enlarging. */
const trials = 12;

interface Trial {
  readonly mend: Mend & { readonly gain: number; readonly mends: boolean };
  /** Pipe replaced, m; a turn of a valve's screw is none, a meter is the last resort. */
  readonly work: number;
}

/**
 * The single change that lifts a short inlet to what it needs: a reducing valve set higher, as far as the static limit
 * allows; one size up on a run of its path, the least pipe first; a larger meter, which is the utility's to change,
 * where no pipe does. Where nothing does, what gains most; where even pipe without friction would not, more pressure.
 *
 * @returns undefined where nothing on the path can be changed
 */
export function mendResidual(network: Network, solution: Solution, inlet: Inlet): Mend | undefined {
  const path = pathTo(network, inlet.run);
  const residual = solution.residual[inlet.run]!;
  const trial = (at: number, change: Parameters<typeof pressureAlong>[4]) => {
    const gain = pressureAlong(network, solution, path, at, change) - residual;
    return { gain, mends: residual + gain >= inlet.requiredPressure };
  };

  const lossOf = (at: number): number => solution.pipeLoss[at]! + solution.fittingLoss[at]!;
  const found: Trial[] = [];
  for (const at of [...path].sort((one, other) => lossOf(other) - lossOf(one)).slice(0, trials)) {
    const run = network.runs[at]!;
    const [size] = largerSizes(pipeDimensions[run.material].rows, run.size);
    if (size === undefined) continue;
    const outcome = trial(at, lossAlone(network, at, size, solution.flow[at]!));
    found.push({ mend: { do: 'larger-pipe', run: run.id, size, ...outcome }, work: run.length.si });
  }
  for (const at of path) {
    const run = network.runs[at]!;
    if (run.end === undefined || !('device' in run.end) || run.end.device !== 'meter') continue;
    const [size] = largerSizes(meterLosses, run.end.size);
    if (size === undefined) continue;
    const outcome = trial(at, { curve: deviceCurve({ device: 'meter', size }, size) });
    found.push({
      mend: { do: 'larger-meter', run: run.id, size, ...outcome },
      work: Number.POSITIVE_INFINITY,
    });
  }

  for (const at of path) {
    const setting = raisedSetting(network, solution, at);
    if (setting === undefined) continue;
    const { set, run } = setting;
    const outcome = trial(at, { setPressure: set });
    if (outcome.gain > 0) found.push({ mend: { do: 'raise-setting', run, set, ...outcome }, work: 0 });
  }

  const friction = path.reduce((sum, at) => sum + lossOf(at), 0);
  const short = inlet.requiredPressure - residual;
  if (short > friction && !found.some(({ mend }) => mend.mends)) return { do: 'raise-pressure', by: short };
  const mending = found.filter(({ mend }) => mend.mends);
  if (mending.length > 0) return mending.reduce((one, other) => (other.work < one.work ? other : one)).mend;
  if (found.length === 0) return undefined;
  return found.reduce((one, other) => (other.mend.gain > one.mend.gain ? other : one)).mend;
}

/**
 * The reducing valve at the end of a run set as high as the static limit of the fixtures behind it allows, where that is
 * higher than it is; the lowest fixture has the most pressure at rest.
 */
function raisedSetting(
  network: Network,
  solution: Solution,
  at: number,
): { readonly run: string; readonly set: number } | undefined {
  const placed = network.deviceAt[at]!;
  const device = placed < 0 ? undefined : network.devices[placed]!;
  if (device?.setPressure === undefined) return undefined;
  const limit = citeValue(profiles[network.basis.profile].limits.maximumStatic).value;
  const behind = network.inlets.filter(({ run }) => run > at && run < network.subtreeEnd[at]!);
  const highest = Math.max(...behind.map(({ run }) => solution.staticPressure[run]!));
  const set = device.setPressure + limit - highest;
  return set > device.setPressure ? { run: network.runs[at]!.id, set } : undefined;
}
