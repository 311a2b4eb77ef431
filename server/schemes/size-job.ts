import { nominalInches } from '../../engine/hydraulics/nominal-inches.ts';
import {
  buildNetwork,
  type HandMethodId,
  handMethods,
  type Network,
  type PipeOption,
  type PriceIndex,
  pipeOptions,
  priceOfPressure,
  type Report,
  report,
  type Scheme,
  type SizingRules,
  sizedScheme,
  sizeScheme,
} from '../../engine/index.ts';
import { priceName } from '../../engine/takeoff/price-item.ts';
import { priceRun } from '../../engine/takeoff/price-run.ts';
import { materials } from '../../tables/pipe/names.ts';
import type { ChangedRun, MethodResult, SizingFound, SizingQuestion } from '../../views/sizing.ts';
import { curveWindow, pipeCost } from './cost-of-spare.ts';
import { nextTurn } from './next-turn.ts';

/** A reader's question as the engine takes it. */
export function sizingRules(question: SizingQuestion, prices: PriceIndex): SizingRules {
  return {
    prices,
    keep: new Set(question.keep),
    notLarger: question.notLarger,
    trunks: question.trunks.map((trunk) => new Set(trunk)),
    ...(question.materials.length > 0 ? { materials: question.materials } : {}),
  };
}

/** Sizes a scheme at least cost and by hand, and finds what a change of one run gains; others are served between. */
export async function sizeJob(
  drawn: Report,
  question: SizingQuestion,
  prices: PriceIndex,
): Promise<SizingFound> {
  const { network, solution, worst } = drawn;
  const rules = sizingRules(question, prices);
  const available = solution.supplyPressure;
  const result = sizeScheme(network, rules, {
    least: available - curveWindow.below,
    most: available + curveWindow.above,
  });
  const least = result.ok ? result.sized.scheme : undefined;
  const methods: MethodResult[] = [methodOf('drawn', drawn, prices, least)];
  if (least !== undefined) methods.push(methodOf('least-cost', resized(network, least), prices, least));
  const { options, without, missing } = pipeOptions(network, solution, rules);
  if (without.length === 0 && network.inlets.length > 0) {
    for (const method of Object.keys(handMethods) as HandMethodId[]) {
      await nextTurn();
      const chosen: readonly PipeOption[] = handMethods[method]({ network, solution, options });
      const byHand = resized(network, sizedScheme(network, chosen).scheme);
      methods.push(methodOf(method, byHand, prices, least));
    }
  }
  await nextTurn();
  return {
    available,
    methods,
    least: least && { scheme: least, changed: changedRuns(network, least, prices) },
    unsized: result.ok ? undefined : result.unsized,
    missing: [...new Set(missing.map(priceName))],
    curve: Array.from(result.curve?.cost ?? [], (cents, at) => ({ cents, need: result.curve!.need[at]! })),
    psi: worst === undefined ? [] : priceOfPressure(drawn, worst.inlet, prices),
  };
}

function methodOf(
  method: MethodResult['method'],
  { network, worst, findings }: Report,
  prices: PriceIndex,
  least: Scheme | undefined,
): MethodResult {
  return {
    method,
    cost: pipeCost(network.runs, prices),
    worst,
    errors: findings.filter(({ severity }) => severity === 'error').length,
    against: least && against(network.scheme, least),
  };
}

function against(scheme: Scheme, least: Scheme): { larger: number; smaller: number } {
  let larger = 0;
  let smaller = 0;
  scheme.runs.forEach(({ size }, at) => {
    const difference = nominalInches(size) - nominalInches(least.runs[at]!.size);
    if (difference > 0) larger++;
    if (difference < 0) smaller++;
  });
  return { larger, smaller };
}

function resized({ job, scheme }: Network, other: Scheme): Report {
  const built = buildNetwork(
    { ...job, schemes: job.schemes.map((one) => (one.id === scheme.id ? other : one)) },
    scheme.id,
  );
  if (!built.ok) throw new Error('a scheme with other sizes lost its tree');
  return report(built.network);
}

function changedRuns({ scheme }: Network, least: Scheme, prices: PriceIndex): ChangedRun[] {
  return scheme.runs.flatMap((run, at): ChangedRun[] => {
    const other = least.runs[at]!;
    if (other.size === run.size && other.material === run.material) return [];
    const [old, now] = [priceRun(prices, run, run.size), priceRun(prices, other, other.size)];
    const names = other.material !== run.material;
    return [
      {
        id: run.id,
        before: names ? `${run.size} ${materials[run.material]}` : run.size,
        after: names ? `${other.size} ${materials[other.material]}` : other.size,
        more: old.ok && now.ok ? now.cents - old.cents : undefined,
      },
    ];
  });
}
