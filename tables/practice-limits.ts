import { sources } from './sources.ts';
import type { ValueTable } from './table.ts';

/** Limits that no adopted code of ours states: recommendations, common practice, and this project's own. */

export const hotVolume: ValueTable = {
  kind: 'value',
  id: 'hot-volume',
  title: 'Water stored between the source of hot water and a fixture',
  source: sources['epa-watersense'],
  at: { section: '3.3', checkedOn: '2026-11-25' },
  verified: 'seen',
  note: 'A recommendation: at most 0.5 gal (64 fl oz) stored. A code binds only where it is adopted.',
  unit: 'gal',
  printed: 0.5,
};

export const hotColdApart: ValueTable = {
  kind: 'value',
  id: 'hot-cold-apart',
  title: 'Difference of hot and cold pressure at a mixing valve',
  source: sources['trade-practice'],
  at: { checkedOn: '2026-11-25' },
  verified: 'common-practice',
  note: 'No source; the maker of the valve says what it can balance.',
  unit: 'psi',
  printed: 10,
};

export const scaldTemperature: ValueTable = {
  kind: 'value',
  id: 'scald-temperature',
  title: 'Hot water at a bath, shower or lavatory without a limiting device',
  source: sources['trade-practice'],
  at: { checkedOn: '2026-11-25' },
  verified: 'common-practice',
  note:
    'The usual caution, no source: hotter water scalds in seconds. The local code and the licensed plumber decide on ' +
    'the limit and on the mixing valve.',
  unit: 'F',
  printed: 120,
};

export const lawsApartLeast: ValueTable = {
  kind: 'value',
  id: 'laws-apart-least',
  title: 'Difference of the two friction laws that is worth a word',
  source: sources.hightap,
  at: { checkedOn: '2026-11-25' },
  verified: 'common-practice',
  note: "This project's own threshold, not a code's.",
  unit: 'psi',
  printed: 1,
};

export const lawsApart: ValueTable = {
  kind: 'value',
  id: 'laws-apart',
  title: 'Friction by Hazen-Williams and by Darcy-Weisbach apart on the worst path',
  source: sources.hightap,
  at: { checkedOn: '2026-11-25' },
  verified: 'common-practice',
  note: "This project's own threshold: a part of one, not a code's.",
  unit: 'one',
  printed: 0.1,
};
