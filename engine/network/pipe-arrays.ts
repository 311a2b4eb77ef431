import { manifoldPortCv } from '../../tables/devices/curves.ts';
import { lookUp } from '../../tables/look-up.ts';
import { pipeDimensions } from '../../tables/pipe/dimensions.ts';
import { type JointId, jointsOf } from '../../tables/pipe/names.ts';
import { roughness as roughnessTable } from '../../tables/pipe/roughness.ts';
import type { Cited } from '../../tables/table.ts';
import { standardGravity, toSI } from '../../tables/units/definitions.ts';
import { fittingLoss } from '../hydraulics/fitting-loss.ts';
import { hazenWilliamsCoefficient } from '../hydraulics/hazen-williams.ts';
import { nominalInches } from '../hydraulics/nominal-inches.ts';
import { risingSizes } from '../hydraulics/rising-sizes.ts';
import { velocity } from '../hydraulics/velocity.ts';
import { type Water, waterAt } from '../hydraulics/water.ts';
import type { Basis, Run } from '../job/job.ts';
import type { FittingSource, Network } from './network.ts';

type PipeArrays = Pick<
  Network,
  | 'length'
  | 'rise'
  | 'bore'
  | 'velocityPerFlow'
  | 'friction'
  | 'roughness'
  | 'fittingLength'
  | 'fittingSquare'
  | 'weight'
  | 'density'
  | 'viscosity'
>;

/** The joint of a run: as the job says, else the material's usual one. */
export function jointOf(run: Pick<Run, 'material' | 'joint'>): JointId {
  return run.joint ?? jointsOf[run.material][0];
}

interface PipeValues {
  readonly bore: Cited;
  readonly c: Cited;
  readonly roughness: Cited;
  readonly perFlow: number;
  /** Hazen-Williams coefficient, cold and hot. */
  readonly friction: readonly [number, number];
}

/**
 * Bores, friction and fittings of every run, as the solver wants them; values that runs of one pipe share are
 * looked up once.
 *
 * @param runs in the order of the network
 * @param hot 1 where a run carries hot water
 * @param onManifold 1 where a run leaves a port of a manifold
 */
export function pipeArrays(
  basis: Basis,
  runs: readonly Run[],
  hot: Uint8Array,
  onManifold: Uint8Array,
): {
  arrays: PipeArrays;
  sources: Pick<Network['sources'], 'bore' | 'hazenWilliamsC' | 'roughness' | 'fittings'>;
} {
  const size = runs.length;
  const arrays = {
    length: new Float64Array(size),
    rise: new Float64Array(size),
    bore: new Float64Array(size),
    velocityPerFlow: new Float64Array(size),
    friction: new Float64Array(size),
    roughness: new Float64Array(size),
    fittingLength: new Float64Array(size),
    fittingSquare: new Float64Array(size),
    weight: new Float64Array(size),
    density: new Float64Array(size),
    viscosity: new Float64Array(size),
  };
  const waters = [waterAt(basis.coldTemperature.si), waterAt(basis.hotTemperature.si)] as const;
  const pipes = new Map<string, PipeValues>();
  const fittingValues = new Map<string, Omit<FittingSource, 'count'>>();
  const sources = {
    bore: [] as Cited[],
    hazenWilliamsC: [] as Cited[],
    roughness: [] as Cited[],
    fittings: [] as FittingSource[][],
  };

  runs.forEach((run, at) => {
    const warm = hot[at] === 1 ? 1 : 0;
    const water = waters[warm];
    const pipe = remember(pipes, `${run.material} ${run.size}`, () => pipeValues(run, waters));
    arrays.length[at] = run.length.si;
    arrays.rise[at] = run.rise?.si ?? 0;
    arrays.bore[at] = pipe.bore.value;
    arrays.velocityPerFlow[at] = pipe.perFlow;
    arrays.friction[at] = pipe.friction[warm];
    arrays.roughness[at] = pipe.roughness.value;
    arrays.density[at] = water.density;
    arrays.viscosity[at] = water.viscosity;
    arrays.weight[at] = basis.elevationFactor?.si ?? water.density * standardGravity;
    sources.bore[at] = pipe.bore;
    sources.hazenWilliamsC[at] = pipe.c;
    sources.roughness[at] = pipe.roughness;
    sources.fittings[at] = [];
    if (onManifold[at] === 1) {
      const port = portLoss(run.size);
      sources.fittings[at]!.push({ kind: 'manifold port', by: 'Cv', count: 1, each: port });
      arrays.fittingSquare[at] = toSI(1, 'psi') / toSI(port.printed, 'gpm') ** 2;
    }
    if (basis.fittingAllowancePercent !== undefined) {
      arrays.fittingLength[at] = (run.length.si * basis.fittingAllowancePercent) / 100;
      return;
    }
    const joint = jointOf(run);
    let k = 0;
    for (const { kind, count } of run.fittings) {
      const loss = remember(fittingValues, `${run.material} ${joint} ${run.size} ${kind}`, () => ({
        kind,
        ...fittingLoss(run.material, joint, run.size, kind, basis.fittings),
      }));
      sources.fittings[at]!.push({ ...loss, count });
      if (loss.by === 'K') k += count * loss.each.value;
      else arrays.fittingLength[at]! += count * loss.each.value;
    }
    arrays.fittingSquare[at]! += (k * water.density * pipe.perFlow ** 2) / 2;
  });
  return { arrays, sources };
}

/** The flow coefficient of a manifold's port for a line of a size; of one that is not listed, the next smaller. */
function portLoss(size: string): Cited {
  const sizes = risingSizes(manifoldPortCv.rows);
  const listed = sizes.findLast((one) => nominalInches(one) <= nominalInches(size)) ?? sizes[0]!;
  return lookUp(manifoldPortCv, listed, 'cv');
}

function pipeValues(run: Run, waters: readonly [Water, Water]): PipeValues {
  const bore = lookUp(pipeDimensions[run.material], run.size, 'bore');
  const c = lookUp(roughnessTable, run.material, 'c');
  const friction = ({ density }: Water): number =>
    hazenWilliamsCoefficient(c.value, bore.value, density, standardGravity);
  return {
    bore,
    c,
    roughness: lookUp(roughnessTable, run.material, 'roughness'),
    perFlow: velocity.compute({ Q: 1, d: bore.value }),
    friction: [friction(waters[0]), friction(waters[1])],
  };
}

function remember<V>(known: Map<string, V>, key: string, make: () => V): V {
  const value = known.get(key);
  if (value !== undefined) return value;
  const made = make();
  known.set(key, made);
  return made;
}
