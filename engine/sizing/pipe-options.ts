import { pipeDimensions } from '../../tables/pipe/dimensions.ts';
import { coldOnly, jointsOf, type MaterialId } from '../../tables/pipe/names.ts';
import { seldomStocked } from '../../tables/pipe/nominal-size.ts';
import { profiles } from '../../tables/profiles.ts';
import { highestStatic, temperatureOf } from '../checks/judge-static.ts';
import { velocityLimit } from '../checks/judge-velocity.ts';
import { leastSupply } from '../checks/least-supply.ts';
import { isOver } from '../checks/over.ts';
import { nominalInches } from '../hydraulics/nominal-inches.ts';
import { pipeRating } from '../hydraulics/pipe-rating.ts';
import { risingSizes } from '../hydraulics/rising-sizes.ts';
import type { Run } from '../job/job.ts';
import { runLoss } from '../network/loss-alone.ts';
import type { Network } from '../network/network.ts';
import type { Solution } from '../network/solution.ts';
import type { PriceIndex } from '../takeoff/index-prices.ts';
import type { MissingPrice } from '../takeoff/price-item.ts';
import { priceRun } from '../takeoff/price-run.ts';
import type { PipeChoice } from './least-cost.ts';

/** One pipe that a run may be made of: the run as it would be, and what decides about it. */
export interface PipeOption extends PipeChoice {
  readonly run: Run;
  /** Pa/m at the design flow. */
  readonly gradient: number;
  readonly hours: number;
}

/** What may be chosen. */
export interface OptionRules {
  readonly prices: PriceIndex;
  /** Runs that stay as they are drawn. */
  readonly keep: ReadonlySet<string>;
  /** Materials to choose among; each run's own where it is left out. */
  readonly materials?: readonly MaterialId[];
}

/** The options of every run by position, and what stood in the way. */
export interface Options {
  readonly options: readonly (readonly PipeOption[])[];
  /** Prices that are not in the book; a pipe without a price is no option. */
  readonly missing: readonly MissingPrice[];
  /** Runs for which no pipe holds every limit. */
  readonly without: readonly string[];
}

/**
 * The pipes that each run may be made of, smallest first: those in stock whose velocity, rating and least size hold
 * at the run's design flow and that have a price. A run that is kept has only itself, whatever its limits say; so has
 * one that carries nothing, such as the stub of an arrester or an expansion tank: no flow can tell its size.
 */
export function pipeOptions(network: Network, solution: Solution, rules: OptionRules): Options {
  const least = leastSizes(network, solution);
  const missing: MissingPrice[] = [];
  const without: string[] = [];
  const options = network.runs.map((run, at) => {
    const kept = rules.keep.has(run.id) || solution.flow[at] === 0;
    const list: PipeOption[] = [];
    for (const candidate of kept ? [run] : candidates(run, rules.materials ?? [run.material])) {
      if (!kept && !holds(network, solution, at, candidate, least[at]!)) continue;
      const priced = priceRun(rules.prices, candidate, candidate.size);
      if (!priced.ok) {
        missing.push(...priced.missing);
        continue;
      }
      const { pipe, fittings, gradient } = runLoss(network, at, candidate, solution.flow[at]!);
      list.push({
        run: candidate,
        pipe: `${candidate.material} ${candidate.size}`,
        inches: nominalInches(candidate.size),
        cost: priced.cents,
        hours: priced.hours,
        loss: pipe + fittings,
        gradient,
      });
    }
    if (list.length === 0) without.push(run.id);
    return list.sort((one, other) => one.inches - other.inches);
  });
  return { options, missing, without };
}

/**
 * The run in every stocked size of the materials; a joint that the material does not have gives way to its usual, and
 * a valve that has its run's size keeps the one it was drawn with, since its loss is a constant of the sizing.
 */
function candidates(drawn: Run, materials: readonly MaterialId[]): Run[] {
  const { end } = drawn;
  const sized =
    end !== undefined && 'device' in end && (end.device === 'reducing-valve' || end.device === 'backflow');
  const run: Run = sized ? { ...drawn, end: { ...end, size: end.size ?? drawn.size } } : drawn;
  return materials.flatMap((material) => {
    const { joint, ...plain } = run;
    const keepsJoint = joint !== undefined && (jointsOf[material] as readonly string[]).includes(joint);
    return risingSizes(pipeDimensions[material].rows)
      .filter((size) => !seldomStocked.has(size))
      .map((size): Run => ({ ...plain, material, size, ...(keepsJoint ? { joint } : {}) }));
  });
}

function holds(network: Network, solution: Solution, at: number, run: Run, least: number): boolean {
  if (network.hot[at] === 1 && coldOnly.has(run.material)) return false;
  if (nominalInches(run.size) < least) return false;
  const { velocity } = runLoss(network, at, run, solution.flow[at]!);
  if (isOver(velocity, velocityLimit(network, at, run.material).value)) return false;
  const rating = pipeRating(run.material, run.size, temperatureOf(network, at));
  return rating !== undefined && highestStatic(network, at) <= rating;
}

/** Least nominal size of every run, inches: the service's, and those that end at fixtures. */
function leastSizes(network: Network, solution: Solution): Float64Array {
  const least = new Float64Array(network.size);
  least[0] = profiles[network.basis.profile].limits.minimumService.printed;
  for (const inlet of network.inlets) {
    least[inlet.run] = Math.max(least[inlet.run]!, leastSupply(network, inlet, solution.supplyPressure));
  }
  return least;
}
