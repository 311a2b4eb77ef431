import { meterLosses } from '../../tables/devices/meters.ts';
import { pipeDimensions } from '../../tables/pipe/dimensions.ts';
import type { Curve } from '../hydraulics/curve.ts';
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
  /** Pipe replaced, m. */
  readonly work: number;
}

/**
 * The single change that lifts a short inlet to what it needs: one size up on a run of its path, the least pipe
 * first; a larger meter, which is the utility's to change, where no pipe does; and where nothing does, what gains
 * most.
 *
 * @returns undefined where nothing on the path can be made larger
 */
export function mendResidual(network: Network, solution: Solution, inlet: Inlet): Mend | undefined {
  const path = pathTo(network, inlet.run);
  const residual = solution.residual[inlet.run]!;
  const trial = (at: number, change: { pipe?: number; fittings?: number; curve?: Curve }) => {
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

  const mending = found.filter(({ mend }) => mend.mends);
  if (mending.length > 0) return mending.reduce((one, other) => (other.work < one.work ? other : one)).mend;
  if (found.length === 0) return undefined;
  return found.reduce((one, other) => (other.mend.gain > one.mend.gain ? other : one)).mend;
}
