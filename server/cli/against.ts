import {
  differences,
  type PriceIndex,
  priceTakeOff,
  type TakeOff,
  type TakeOffPrice,
  takeOff,
} from '../../engine/index.ts';
import { toCents } from '../../engine/takeoff/money.ts';
import type { Call } from './command.ts';
import type { Earlier } from './difference-lines.ts';
import { openJob } from './open-job.ts';
import { isRefusal, type Refusal } from './outcome.ts';

/** The revision that `--against` names, set against a take-off: its chosen scheme; undefined where none is named. */
export async function against(
  { values, input }: Call,
  taken: TakeOff,
  priced: TakeOffPrice,
  prices: PriceIndex,
): Promise<Earlier | Refusal | undefined> {
  const file = values.get('against');
  if (file === undefined) return undefined;
  const report = await openJob(file, undefined, input);
  if (isRefusal(report)) return report;
  const before = takeOff(report.network);
  const was = priceTakeOff(before, prices).total;
  const is = priced.total;
  return {
    name: `${report.network.job.name}, ${before.scheme.name}`,
    differences: differences(before, taken),
    more: was === undefined || is === undefined ? undefined : toCents(is.minus(was)),
  };
}
