import { z } from 'zod';
import type { Supply, UnitSystem } from '../../engine/job/job.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { present } from '../edits/edited.ts';
import { choice, optionalQuantity, quantity } from './fields.ts';
import type { FormFields } from './form-fields.ts';
import { type FormResult, readForm } from './read-form.ts';

function schemas(system: UnitSystem) {
  const units = displayUnits[system];
  const pressure = quantity('pressure', units.pressure.unit);
  const optionalPressure = optionalQuantity('pressure', units.pressure.unit);
  const elevation = quantity('length', units.length.unit);
  return {
    static: z.object({ kind: z.literal('static'), elevation, low: pressure, high: pressure }),
    'flow-test': z.object({
      kind: z.literal('flow-test'),
      elevation,
      static: pressure,
      residual: pressure,
      flow: quantity('flow', units.flow.unit),
      low: optionalPressure,
      high: optionalPressure,
    }),
    well: z.object({
      kind: z.literal('well'),
      elevation,
      cutIn: pressure,
      cutOut: pressure,
      pumpFlow: optionalQuantity('flow', units.flow.unit),
    }),
  };
}

const kindForm = z.object({ kind: choice('a source', ['static', 'flow-test', 'well']) });

/** The supply. Where its kind was just changed, the fields of the new kind are asked for, not complained about. */
export function readSupplyForm(
  fields: FormFields,
  system: UnitSystem,
  previous: Supply['kind'],
): FormResult<Supply> {
  const kind = readForm(kindForm, fields);
  if (!kind.ok) return kind;
  const chosen = kind.value.kind;
  const result = readForm<object>(schemas(system)[chosen], fields);
  if (result.ok) return { ok: true, value: present(result.value) as Supply };
  const untouched =
    chosen !== previous && Object.keys(result.problems).every((name) => (fields[name] ?? '') === '');
  if (!untouched) return result;
  return {
    ok: false,
    problems: { '': 'Fill in these fields; the supply stays as it was until they are complete.' },
  };
}
