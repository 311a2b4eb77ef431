import { z } from 'zod';
import type { UnitSystem } from '../../engine/job/job.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { choice, quantity, text } from './fields.ts';

export function levelForm(system: UnitSystem) {
  return z.object({ name: text('a name'), elevation: quantity('length', displayUnits[system].length.unit) });
}

export const groupForm = z.object({
  name: text('a name'),
  kind: choice('what it is counted as', ['full-bath', 'half-bath', 'kitchen', 'laundry']),
});
