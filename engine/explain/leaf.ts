import type { Cited } from '../../tables/table.ts';
import type { UnitId } from '../../tables/units/definitions.ts';
import type { Quantity } from '../job/job.ts';
import type { Explained } from './step.ts';

/** A term that somebody typed, with the field it stands in; value in SI. */
export function given(value: number, unit: UnitId, field: string, typed: string): Explained {
  return { from: 'given', value, unit, field, typed };
}

/** A typed quantity as a term. */
export function givenQuantity(quantity: Quantity, unit: UnitId, field: string): Explained {
  return { from: 'given', value: quantity.si, unit, field, typed: quantity.typed };
}

/** A published value as a term. */
export function cited(cite: Cited): Explained {
  return { from: 'table', value: cite.value, cite };
}
