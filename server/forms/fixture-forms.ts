import { z } from 'zod';
import { bounds } from '../../engine/job/bounds.ts';
import type { UnitSystem } from '../../engine/job/job.ts';
import { wholeNumber } from '../../engine/job/line-words.ts';
import { type FixtureKindId, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { displayUnits } from '../../tables/units/display.ts';
import {
  choice,
  idText,
  optionalChoice,
  optionalId,
  optionalQuantity,
  optionalText,
  text,
  tick,
} from './fields.ts';

const kinds = Object.keys(fixtureKinds) as readonly FixtureKindId[];

const count = optionalText(20)
  .refine((value) => wholeNumber(value, bounds.fixtureCount.least, bounds.fixtureCount.most) !== undefined, {
    error: `Give a whole number from ${bounds.fixtureCount.least} to ${bounds.fixtureCount.most}.`,
  })
  .transform(Number);

/** All that a schedule says of a fixture, and the run of a side that is newly piped. */
export function fixtureForm(system: UnitSystem) {
  const units = displayUnits[system];
  return z.object({
    id: idText('a short name'),
    name: text('a name'),
    kind: choice('a kind', kinds),
    count,
    use: choice('the use', ['private', 'public']),
    level: optionalText(64),
    room: optionalText(),
    group: optionalText(64),
    height: optionalQuantity('length', units.length.unit),
    flow: optionalQuantity('flow', units.flow.unit),
    pressure: optionalQuantity('pressure', units.pressure.unit),
    inlets: optionalChoice('what is piped', ['both', 'cold', 'hot']),
    continuous: tick,
    newFrom: optionalText(64),
    newLine: optionalText(bounds.lineLength),
  });
}

export type FixtureForm = z.output<ReturnType<typeof fixtureForm>>;

export const addFixtureForm = z.object({
  name: text('a name'),
  id: optionalId('The short name'),
  kind: choice('a kind', kinds),
  level: optionalText(64),
  room: optionalText(),
  coldFrom: optionalText(64),
  coldLine: optionalText(bounds.lineLength),
  hotFrom: optionalText(64),
  hotLine: optionalText(bounds.lineLength),
});

export type AddFixtureForm = z.output<typeof addFixtureForm>;
