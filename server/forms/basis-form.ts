import { z } from 'zod';
import type { Basis, Job, UnitSystem } from '../../engine/job/job.ts';
import { type ProfileId, profiles } from '../../tables/profiles.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { present } from '../edits/edited.ts';
import { readDemandForm } from './demand-form.ts';
import { choice, optionalChoice, optionalQuantity, optionalText, quantity } from './fields.ts';
import type { FormFields } from './form-fields.ts';
import { type FormResult, readForm } from './read-form.ts';

function schema(system: UnitSystem) {
  const units = displayUnits[system];
  return z.object({
    profile: choice('a code', Object.keys(profiles) as readonly ProfileId[]),
    between: choice('what is done between rows', ['interpolate', 'round-up']),
    friction: choice('a friction law', ['hazen-williams', 'darcy-weisbach']),
    coldTemperature: quantity('temperature', units.temperature.unit),
    hotTemperature: quantity('temperature', units.temperature.unit),
    elevationFactor: optionalQuantity('pressure gradient', system === 'us' ? 'psi/ft' : 'kPa/m'),
    // Equivalent lengths are what a basis has that does not say, and are left unsaid.
    fittings: optionalChoice('what fittings lose by', ['equivalent-length', 'loss-coefficient']).transform(
      (value) => (value === 'loss-coefficient' ? value : undefined),
    ),
    fittingAllowancePercent: optionalText(20)
      .refine((value) => value === '' || (/^\d{1,3}(\.\d+)?$/.test(value) && Number(value) <= 200), {
        error: 'Give a percentage from 0 to 200, or nothing to count the fittings drawn.',
      })
      .transform((value) => (value === '' ? undefined : Number(value))),
    velocityCold: optionalQuantity('velocity', units.velocity.unit),
    velocityHot: optionalQuantity('velocity', units.velocity.unit),
    units: choice('the units', ['us', 'si']),
  });
}

/** The basis, and the system in which figures are shown. Bare numbers are in the system of the page they came from. */
export function readBasisForm(
  fields: FormFields,
  system: UnitSystem,
): FormResult<Pick<Job, 'basis' | 'units'>> {
  const result = readForm(schema(system), fields);
  if (!result.ok) return result;
  const { units, ...basis } = result.value;
  const demand = readDemandForm(fields, system, basis.profile);
  if (!demand.ok) return demand;
  return { ok: true, value: { units, basis: present({ ...basis, demand: demand.value }) as Basis } };
}
