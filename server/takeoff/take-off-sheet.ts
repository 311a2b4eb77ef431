import { differences, type PriceIndex } from '../../engine/index.ts';
import { cutPipe } from '../../engine/takeoff/cut-pipe.ts';
import type { Difference } from '../../engine/takeoff/differences.ts';
import { toCents } from '../../engine/takeoff/money.ts';
import { takeOffRules } from '../../tables/takeoff/rules.ts';
import type {
  PipePlan,
  TakeOffDifference,
  TakeOffGrouping,
  TakeOffSheet,
  TypedRates,
} from '../../views/take-off.ts';
import { citedText } from '../../views/text/citation-text.ts';
import { questionText } from '../../views/text/question-text.ts';
import { citedValue } from '../words/cited-words.ts';
import type { OpenJob } from '../workbench/workbench.tsx';
import { bidLines } from './bid-lines.ts';
import { cutPlanOf } from './cut-plan.ts';
import { groupLines } from './group-lines.ts';
import { itemName } from './item-name.ts';
import { pipeBought } from './pipe-bought.ts';
import { type PricedTakeOff, takeOffScheme } from './take-off-scheme.ts';

/** What a reader asked of a take-off: ids of schemes, empty for the chosen one and for none, and how to group it. */
export interface AskedTakeOff {
  readonly scheme: string;
  readonly against: string;
  readonly grouping: TakeOffGrouping;
  readonly plan: PipePlan;
  readonly rates: TypedRates;
}

/** The page of a take-off; throws what {@link takeOffScheme} throws. */
export function takeOffSheet({ id, job }: OpenJob, prices: PriceIndex, asked: AskedTakeOff): TakeOffSheet {
  const one = takeOffScheme(job, asked.scheme, prices);
  const { taken, priced } = one;
  return {
    id,
    job,
    book: prices.book,
    scheme: taken.scheme,
    grouping: asked.grouping,
    groups: groupLines(job, priced.lines, asked.grouping),
    cents: toCents(priced.priced),
    hours: priced.hours,
    complete: priced.total !== undefined,
    missing: priced.missing.map(itemName),
    plan: asked.plan,
    pipes: cutPipe(taken, cutPlanOf(asked.plan)).map((pipe) => pipeBought(pipe, job.units)),
    rates: asked.rates,
    bid: priced.total === undefined ? undefined : bidLines(priced.total, priced.hours, asked.rates),
    questions: taken.questions.map(questionText),
    rules: taken.rules.map((rule) => takeOffRules[rule]),
    values: taken.cited.map((cited) => `${citedValue(cited)}. ${citedText(cited)}`),
    against: asked.against === '' ? undefined : against(takeOffScheme(job, asked.against, prices), one),
  };
}

function against(before: PricedTakeOff, after: PricedTakeOff): NonNullable<TakeOffSheet['against']> {
  const { added, dropped } = differences(before.taken, after.taken);
  const was = before.priced.total;
  const is = after.priced.total;
  return {
    ...before.taken.scheme,
    added: added.map(inWords),
    dropped: dropped.map(inWords),
    more: was === undefined || is === undefined ? undefined : toCents(is.minus(was)),
  };
}

function inWords({ article, unit, by, before, after }: Difference): TakeOffDifference {
  return {
    item: itemName(article),
    unit,
    by: by.toNumber(),
    before: before.toNumber(),
    after: after.toNumber(),
  };
}
