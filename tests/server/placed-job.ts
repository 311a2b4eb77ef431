import type { Job, Quantity, QuantityDimension } from '../../engine/index.ts';
import { quickStart } from '../../engine/index.ts';
import { parseQuantity } from '../../engine/units/parse-quantity.ts';
import { writeJob } from '../../server/document/write-job.ts';

function quantity(typed: string, dimension: QuantityDimension): Quantity {
  const parsed = parseQuantity(typed, dimension);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.quantity;
}

/** An invented house of two levels with its fixtures in place and a scheme of each kind, in the sizes drawn up. */
export function placedJob(low = '55 psi'): Job {
  return quickStart({
    name: 'Villa Quoin (invented)',
    units: 'us',
    profile: 'irc-2021',
    levels: [
      { name: 'Ground floor', height: quantity('10 ft', 'length'), fullBaths: 0, halfBaths: 1, laundries: 1 },
      { name: 'Upper floor', height: quantity('9 ft', 'length'), fullBaths: 2, halfBaths: 0, laundries: 0 },
    ],
    kitchenLevel: 0,
    hoseBibbs: 1,
    iceMaker: false,
    rainShower: false,
    source: { kind: 'street', low: quantity(low, 'pressure'), high: quantity('75 psi', 'pressure') },
  });
}

export function placedDocument(low?: string): string {
  return writeJob(placedJob(low));
}
