import { nominalInches } from '../hydraulics/nominal-inches.ts';
import type { Scheme } from '../job/job.ts';
import { rebuild } from '../network/rebuild.ts';
import type { Report } from '../network/report.ts';
import { report } from '../report.ts';
import { type MissingPrice, priceKey } from '../takeoff/price-item.ts';
import { priceScheme, type SchemePrice } from '../takeoff/price-scheme.ts';
import { type HandMethodId, handMethods } from './hand-methods.ts';
import { type PipeOption, pipeOptions } from './pipe-options.ts';
import { priceOfPressure } from './price-of-pressure.ts';
import { type PsiPrice, priceOfPsi } from './price-of-psi.ts';
import { type SizingResult, type SizingRules, sizedScheme, sizeScheme } from './size-scheme.ts';

/** A scheme in some sizes: what they cost and what they leave. */
export interface StudiedSizes {
  readonly scheme: Scheme;
  readonly report: Report;
  /** Pipe and fittings in cents, and their labour; undefined while the book lacks a price. */
  readonly runs: { readonly cost: number; readonly hours: number } | undefined;
  /** The whole of it, devices too. */
  readonly price: SchemePrice;
}

/** A hand method's sizes, and on how many runs they are larger and smaller than those of least cost. */
export interface StudiedMethod extends StudiedSizes {
  readonly method: HandMethodId;
  readonly larger: number;
  readonly smaller: number;
}

/** What would make a scheme fit that no sizes can: more pressure at the street, or one change. */
export interface Remedy {
  /** Least pressure at the street with which some sizes fit (Pa) and their cost; undefined where none is enough. */
  readonly street: { readonly need: number; readonly cost: number } | undefined;
  /** Changes other than of pipes, at the inlet that is shortest, the most gain first. */
  readonly changes: readonly PsiPrice[];
}

/** Everything that there is to say about a scheme's sizes. */
export interface SizingStudy {
  readonly drawn: StudiedSizes;
  readonly result: SizingResult;
  /** The sizes of least cost; undefined where nothing fits. */
  readonly least: StudiedSizes | undefined;
  /** Empty where some run has no pipe to choose. */
  readonly methods: readonly StudiedMethod[];
  /** Least cost in cents by pressure at the street, Pa; undefined where nothing fits. */
  readonly curve: readonly { readonly street: number; readonly cost: number | undefined }[];
  /** Single changes to the sizes of least cost (or to those drawn) on the way to their worst inlet. */
  readonly changes: readonly PsiPrice[];
  /** Where no sizes reach one inlet. */
  readonly remedy: Remedy | undefined;
  /** Prices that the book lacks, each once: those pipes were no choice. */
  readonly missing: readonly MissingPrice[];
}

/**
 * Sizes a scheme at the least cost and sets beside it what is drawn, what the hand methods would choose, what other
 * pressures at the street would cost, and what one more psi costs.
 *
 * @param streets pressures at the street for the curve, Pa
 */
export function studySizing(drawn: Report, rules: SizingRules, streets: readonly number[]): SizingStudy {
  const { network, solution } = drawn;
  const result = sizeScheme(network, rules, { least: Math.min(...streets), most: Math.max(...streets) });
  const { options, missing, without } = pipeOptions(network, solution, rules);
  const asDrawn = pipeOptions(network, solution, { ...rules, keep: new Set(network.positionOf.keys()) });
  const pipes = asDrawn.options.map(([own]) => own);
  const complete = asDrawn.without.length === 0;
  const before: StudiedSizes = {
    scheme: network.scheme,
    report: drawn,
    runs: complete
      ? sizedScheme(
          network,
          pipes.filter((pipe) => pipe !== undefined),
        )
      : undefined,
    price: priceScheme(rules.prices, network.scheme),
  };
  const study = (chosen: readonly PipeOption[]): StudiedSizes => {
    const { scheme, cost, hours } = sizedScheme(network, chosen);
    return studied(drawn, rules, scheme, { cost, hours });
  };
  const least = result.ok ? studied(drawn, rules, result.sized.scheme, result.sized) : undefined;
  const names = Object.keys(handMethods) as HandMethodId[];
  const methods = (without.length > 0 || network.inlets.length === 0 ? [] : names).map(
    (method): StudiedMethod => {
      const chosen = handMethods[method]({ network, solution, options });
      return { method, ...study(chosen), ...against(chosen, least) };
    },
  );
  const after = (least ?? before).report;
  return {
    drawn: before,
    result,
    least,
    methods,
    curve: streets.map((street) => ({ street, cost: result.curve?.pick(street)?.cost })),
    changes: after.worst === undefined ? [] : priceOfPressure(after, after.worst.inlet, rules.prices),
    remedy: remedyOf(result, drawn, rules),
    missing: [...new Map([...missing, ...asDrawn.missing].map((item) => [priceKey(item), item])).values()],
  };
}

function studied(
  { network }: Report,
  { prices }: SizingRules,
  scheme: Scheme,
  { cost, hours }: { readonly cost: number; readonly hours: number },
): StudiedSizes {
  return {
    scheme,
    report: report(rebuild(network, scheme)),
    runs: { cost, hours },
    price: priceScheme(prices, scheme),
  };
}

/** Runs larger and smaller than those of least cost; by nominal size, whatever the materials. */
function against(
  chosen: readonly PipeOption[],
  least: StudiedSizes | undefined,
): { larger: number; smaller: number } {
  const inches = new Map(least?.report.network.runs.map((run) => [run.id, nominalInches(run.size)]));
  const apart = chosen.map((option) => option.inches - (inches.get(option.run.id) ?? option.inches));
  return { larger: apart.filter((by) => by > 0).length, smaller: apart.filter((by) => by < 0).length };
}

function remedyOf(
  result: SizingResult,
  { network, solution }: Report,
  rules: SizingRules,
): Remedy | undefined {
  if (result.ok || result.unsized.why !== 'short') return undefined;
  const { largest, inlet } = result.unsized;
  const above = { least: solution.supplyPressure, most: Number.POSITIVE_INFINITY };
  const { curve } = sizeScheme(network, rules, above);
  const need = curve?.need.at(-1);
  const cost = curve?.cost.at(-1);
  return {
    street: need === undefined || cost === undefined ? undefined : { need, cost },
    changes: priceOfPsi(report(largest), inlet, rules.prices).sort((one, other) => other.gain - one.gain),
  };
}
