import type { Scheme } from '../job/job.ts';
import type { Inlet, Network } from '../network/network.ts';
import { rebuild } from '../network/rebuild.ts';
import type { Solution } from '../network/solution.ts';
import { solve } from '../network/solve.ts';
import type { MissingPrice } from '../takeoff/price-item.ts';
import { type CostCurve, leastCost, type Tie } from './least-cost.ts';
import { type OptionRules, type PipeOption, pipeOptions } from './pipe-options.ts';

/** What a sizing may decide and has to hold. */
export interface SizingRules extends OptionRules {
  /** No run larger than the one that feeds it. */
  readonly notLarger?: boolean;
  /** Sets of runs, each fed by another of its set, that keep one size. */
  readonly trunks?: readonly ReadonlySet<string>[];
  readonly tolerance?: number;
}

/** A sized scheme: cost in cents, labour, what it asks at the street (Pa), and the scheme with its new sizes. */
export interface Sized {
  readonly scheme: Scheme;
  readonly cost: number;
  readonly hours: number;
  readonly need: number;
}

/** Why nothing fits. */
export type Unsized =
  | { readonly why: 'no-pipe'; readonly runs: readonly string[]; readonly missing: readonly MissingPrice[] }
  /** Even the largest pipes, with which the network is built, leave this inlet short by so many Pa. */
  | { readonly why: 'short'; readonly inlet: Inlet; readonly by: number; readonly largest: Network }
  /** Every inlet could have what it needs, but not with the sizes tied to each other. */
  | { readonly why: 'tied' }
  /** No run ends at a fixture, so there is nothing to size for. */
  | { readonly why: 'no-fixture' };

export type SizingResult =
  | { readonly ok: true; readonly sized: Sized; readonly curve: CostCurve }
  | { readonly ok: false; readonly unsized: Unsized; readonly curve?: CostCurve };

/**
 * Sizes a scheme at the least cost that holds every limit at the pressure of the job's supply, exactly; see
 * `leastCost`. The demand of the service, and with it a flow test's droop, depends on no size.
 *
 * @param between pressures at the street for which the curve is wanted, Pa; only the supply's own where left out
 */
export function sizeScheme(
  network: Network,
  rules: SizingRules,
  between?: { readonly least: number; readonly most: number },
): SizingResult {
  if (network.inlets.length === 0) return { ok: false, unsized: { why: 'no-fixture' } };
  const solution = solve(network);
  const { options, missing, without } = pipeOptions(network, solution, rules);
  if (without.length > 0) return { ok: false, unsized: { why: 'no-pipe', runs: without, missing } };
  const available = solution.supplyPressure;
  const { tolerance } = rules;
  const curve = leastCost({
    network,
    flow: solution.flow,
    choices: options,
    between: {
      least: Math.min(available, between?.least ?? available),
      most: Math.max(available, between?.most ?? available),
    },
    ...(tolerance === undefined ? {} : { tolerance }),
    ...tiesOf(network, rules),
  });
  const sizing = curve.pick(available);
  if (sizing === undefined) return { ok: false, unsized: shortest(network, options), curve };
  const chosen = options.map((list, at) => list[sizing.choice[at]!]!);
  return { ok: true, sized: { ...sizedScheme(network, chosen), need: sizing.need }, curve };
}

/** The scheme with chosen pipes in place of its own, and what they cost. */
export function sizedScheme(
  network: Network,
  chosen: readonly PipeOption[],
): { scheme: Scheme; cost: number; hours: number } {
  const byId = new Map(chosen.map(({ run }) => [run.id, run]));
  return {
    scheme: { ...network.scheme, runs: network.scheme.runs.map((run) => byId.get(run.id)!) },
    cost: chosen.reduce((sum, { cost }) => sum + cost, 0),
    hours: chosen.reduce((sum, { hours }) => sum + hours, 0),
  };
}

function tiesOf(
  network: Network,
  { notLarger = false, trunks = [] }: SizingRules,
): { ties?: readonly Tie[] } {
  if (!notLarger && trunks.length === 0) return {};
  return {
    ties: network.runs.map((run, at): Tie => {
      const above = network.parent[at]!;
      if (above < 0) return 'free';
      if (trunks.some((trunk) => trunk.has(run.id) && trunk.has(network.runs[above]!.id))) return 'same';
      return notLarger ? 'not-larger' : 'free';
    }),
  };
}

/** The inlet that is shortest when every run takes its least loss: no size can help it. */
function shortest(network: Network, options: readonly (readonly PipeOption[])[]): Unsized {
  const largest = options.map((list) => list.reduce((one, other) => (other.loss < one.loss ? other : one)));
  const { scheme } = sizedScheme(network, largest);
  const built = rebuild(network, scheme);
  const solution: Solution = solve(built);
  const margin = ({ run, requiredPressure }: Inlet): number => solution.residual[run]! - requiredPressure;
  const inlet = built.inlets.reduce((one, other) => (margin(other) < margin(one) ? other : one));
  return margin(inlet) < 0 ? { why: 'short', inlet, by: -margin(inlet), largest: built } : { why: 'tied' };
}
