import { hazenWilliamsExponent } from '../../engine/hydraulics/hazen-williams.ts';
import type { Device } from '../../engine/job/job.ts';
import type { Network } from '../../engine/network/network.ts';
import type { Solution } from '../../engine/network/solution.ts';
import { solve } from '../../engine/network/solve.ts';
import { fixture, job, networkOf, run } from '../jobs/written-job.ts';

/** One pipe of a printed calculation, as far as the engine's tables do not know it; SI. */
export interface PrintedPipe {
  readonly id: string;
  readonly from: string;
  readonly flow: number;
  readonly length: number;
  readonly rise?: number;
  readonly device?: Device;
  /** Equivalent length of its fittings, m. */
  readonly fittings?: number;
  /** Sum of K of its fittings. */
  readonly k?: number;
  readonly bore?: number;
  readonly roughness?: number;
  /** A printed friction gradient, Pa/m, in place of one that is computed. */
  readonly gradient?: number;
}

export interface PrintedWater {
  readonly density: number;
  readonly viscosity: number;
  readonly gravity: number;
}

/**
 * Sends printed flows through the engine's pass of pressures: a network with the printed bores, lengths, coefficients
 * and water in place of those of our tables. What is tested is the pass itself, with its laws.
 *
 * @param inlet pressure at the street, Pa
 */
export function plugIn(
  pipes: readonly PrintedPipe[],
  inlet: number,
  friction: 'hazen-williams' | 'darcy-weisbach',
  water: PrintedWater,
): { network: Network; solution: Solution; at: (id: string) => number } {
  const fed = new Set(pipes.map(({ from }) => from));
  const ends = pipes.filter(({ id, device }) => !fed.has(id) && device === undefined);
  const written = job(
    ends.map(({ id }) => fixture(`at-${id}`, 'hose-bibb')),
    pipes.map(({ id, from, device }) => {
      const isEnd = ends.some((pipe) => pipe.id === id);
      const end = device ?? (isEnd ? ({ fixture: `at-${id}`, inlet: 'cold' } as const) : undefined);
      return run(id, from, end === undefined ? {} : { end });
    }),
    {
      basis: { friction },
      supply: { kind: 'static', elevation: si(0), low: si(inlet), high: si(inlet) },
    },
  );
  const base = networkOf(written);
  const printed = base.runs.map(({ id }) => pipes.find((pipe) => pipe.id === id)!);
  const array = (value: (pipe: PrintedPipe, at: number) => number): Float64Array =>
    Float64Array.from(printed, value);
  const bore = array((pipe, at) => pipe.bore ?? base.bore[at]!);
  const flow = array((pipe) => pipe.flow);
  const velocityPerFlow = bore.map((d) => 4 / (Math.PI * d * d));
  const network: Network = {
    ...base,
    bore,
    velocityPerFlow,
    length: array((pipe) => pipe.length),
    rise: array((pipe) => pipe.rise ?? 0),
    roughness: array((pipe, at) => pipe.roughness ?? base.roughness[at]!),
    fittingLength: array((pipe) => pipe.fittings ?? 0),
    fittingSquare: array((pipe, at) => ((pipe.k ?? 0) * water.density * velocityPerFlow[at]! ** 2) / 2),
    friction: array((pipe, at) =>
      pipe.gradient === undefined ? base.friction[at]! : pipe.gradient / pipe.flow ** hazenWilliamsExponent,
    ),
    density: array(() => water.density),
    viscosity: array(() => water.viscosity),
    elevationLoss: array((pipe) => (pipe.rise ?? 0) * water.density * water.gravity),
    served: knownFlows(flow),
  };
  const solution = solve(network);
  const at = (id: string): number => {
    const position = network.positionOf.get(id);
    if (position === undefined) throw new Error(`no pipe ${id}`);
    return position;
  };
  return { network, solution, at };
}

/** What runs serve when their flows are given: no fixture units, each run its flow. */
export function knownFlows(flow: Float64Array): Network['served'] {
  const { length } = flow;
  const none = new Float64Array(length);
  return { units: none, continuous: flow, largest: none, ownSum: none, valve: new Uint8Array(length) };
}

function si(value: number): { typed: string; si: number } {
  return { typed: `${value}`, si: value };
}
