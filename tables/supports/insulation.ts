import type { ProfileId } from '../profiles.ts';
import { sources } from '../sources.ts';
import type { ValueTable } from '../table.ts';

const checkedOn = '2026-11-25';
const more =
  'R-3 from this nominal size. The section has further cases, recalled and not counted here: pipe outside the ' +
  'conditioned space, buried or under a slab, from the heater to a manifold, serving several dwellings, recirculating. ' +
  'It binds only where the energy code is adopted.';

const iecc2018: ValueTable = {
  kind: 'value',
  id: 'hot-insulation-2018',
  title: 'Smallest hot pipe that is insulated',
  source: sources['iecc-2018'],
  at: { section: 'R403.5.3', checkedOn },
  verified: 'seen-secondary',
  note: more,
  unit: 'in',
  printed: 0.75,
};

const iecc2021: ValueTable = {
  ...iecc2018,
  id: 'hot-insulation-2021',
  source: sources['iecc-2021'],
  at: { section: 'R403.5.2', checkedOn },
};

/** The energy code of the same year as the plumbing rules of a basis. */
export const insulatedFrom: { readonly [profile in ProfileId]: ValueTable } = {
  'ipc-2018': iecc2018,
  'irc-2021': iecc2021,
};
