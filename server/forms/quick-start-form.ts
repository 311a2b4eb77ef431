import { z } from 'zod';
import type { Quantity, QuickStart, QuickStartLevel } from '../../engine/index.ts';
import { parseQuantity } from '../../engine/units/parse-quantity.ts';
import { type ProfileId, profiles } from '../../tables/profiles.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { mostLevels } from '../../views/quick-start.ts';
import type { Problems } from '../../views/workbench.ts';
import { choice, text, tick, withFieldUnit } from './fields.ts';
import type { FormFields } from './form-fields.ts';
import { type FormResult, readForm } from './read-form.ts';

/** A house, not a hotel: more of one kind on one level is taken for a slip of the keys. */
const mostRooms = 9;
const mostHoseBibbs = 9;

const pressureFields = { street: ['low', 'high'], well: ['cutIn', 'cutOut'] } as const;

const answers = z.object({
  name: text('a name'),
  units: choice('the units', ['us', 'si']),
  profile: choice('a code', Object.keys(profiles) as readonly ProfileId[]),
  kitchen: z.string().default(''),
  hoseBibbs: z.string().default(''),
  iceMaker: tick,
  rainShower: tick,
  source: choice('where the water comes from', ['street', 'well']),
});

/** The answers of a quick start; every problem is told by its field. Bare numbers are in the units chosen. */
export function readQuickStartForm(fields: FormFields): FormResult<QuickStart> {
  const read = readForm(answers, fields);
  const problems: Record<string, string> = read.ok ? {} : { ...read.problems };
  const units = fields.units === 'si' ? 'si' : 'us';
  const typed = (name: string) => (fields[name] ?? '').trim();

  const measured = (name: string, dimension: 'length' | 'pressure'): Quantity => {
    const parsed = parseQuantity(withFieldUnit(typed(name), displayUnits[units][dimension].unit), dimension);
    if (!parsed.ok) problems[name] = `${parsed.problem}.`;
    else if (!(parsed.quantity.si > 0)) problems[name] = `${typed(name)} came; expected more than nothing.`;
    return parsed.ok ? parsed.quantity : { typed: '', si: 0 };
  };
  const counted = (name: string, most: number): number => {
    const value = typed(name) === '' ? '0' : typed(name);
    if (/^\d{1,3}$/.test(value) && Number(value) <= most) return Number(value);
    problems[name] = `${value.slice(0, 20)} came; expected a whole number from 0 to ${most}.`;
    return 0;
  };

  const rows: number[] = [];
  const levels: QuickStartLevel[] = [];
  for (let row = 0; row < mostLevels; row++) {
    const name = typed(`level${row}`);
    if (name === '') continue;
    if (name.length > 60) problems[`level${row}`] = 'This is longer than 60 characters.';
    const height = measured(`height${row}`, 'length');
    if (height.si > mostHeight) {
      problems[`height${row}`] =
        `${height.typed} came; expected no more than 10 m (33 ft) from floor to floor.`;
    }
    rows.push(row);
    levels.push({
      name,
      height,
      fullBaths: counted(`full${row}`, mostRooms),
      halfBaths: counted(`half${row}`, mostRooms),
      laundries: counted(`laundry${row}`, mostRooms),
    });
  }
  if (levels.length === 0) problems.level0 = 'Name at least one level.';
  const kitchenLevel = rows.indexOf(Number(typed('kitchen') || Number.NaN));
  if (kitchenLevel < 0 && levels.length > 0)
    problems.kitchen = 'Choose the level of the kitchen among those named.';
  const hoseBibbs = counted('hoseBibbs', mostHoseBibbs);
  const source = read.ok ? read.value.source : fields.source === 'well' ? 'well' : 'street';
  const [lowName, highName] = pressureFields[source];
  const [low, high] = [measured(lowName, 'pressure'), measured(highName, 'pressure')];
  if (low.si > high.si && problems[lowName] === undefined && problems[highName] === undefined) {
    problems[lowName] = `${low.typed} is over ${high.typed}; exchange them.`;
  }
  if (!read.ok || Object.keys(problems).length > 0)
    return { ok: false, problems: problems satisfies Problems };
  const { name, profile, iceMaker, rainShower } = read.value;
  return {
    ok: true,
    value: {
      name,
      units,
      profile,
      levels,
      kitchenLevel,
      hoseBibbs,
      iceMaker,
      rainShower,
      source:
        source === 'street' ? { kind: 'street', low, high } : { kind: 'well', cutIn: low, cutOut: high },
    },
  };
}

/** From floor to floor, m. */
const mostHeight = 10.1;
