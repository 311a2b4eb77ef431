import type { Profile } from '../profile.ts';

const similar = 'Not listed in Table P2903.6: a listed fixture of similar flow takes its place';
const sameFor = (row: string | null) => ({ private: row, public: row });

/**
 * Where our kinds of fixture stand in Tables P2903.6 and P2903.1, and in the IPC's table of supply sizes. The code is
 * for dwellings: it makes no difference between private and public use.
 */
export const fixtureRows: Profile['fixtureRows'] = {
  bathtub: {
    units: sameFor('bathtub'),
    outlet: 'bathtub, balanced-pressure, thermostatic or combination valve',
    supply: 'bathtub, 60 x 32 in and smaller',
  },
  'bathtub-shower': {
    units: sameFor('bathtub'),
    outlet: 'bathtub, balanced-pressure, thermostatic or combination valve',
    supply: 'bathtub, 60 x 32 in and smaller',
    note: 'The row holds with or without an overhead shower head.',
  },
  bidet: {
    units: sameFor('kitchen sink'),
    outlet: 'bidet, thermostatic mixing valve',
    supply: 'bidet',
    note: `${similar}: a sink.`,
  },
  'clothes-washer': {
    units: sameFor('clothes washer'),
    outlet: 'laundry tray',
    supply: 'laundry, 1 to 3 compartments',
    note: 'Table P2903.1 does not list the clothes washer: the laundry tray takes its place.',
  },
  dishwasher: {
    units: sameFor('dishwasher'),
    outlet: 'dishwasher',
    supply: 'dishwashing machine, domestic',
  },
  'drinking-fountain': {
    units: sameFor('lavatory'),
    outlet: 'lavatory',
    supply: 'drinking fountain',
    note: `${similar}: a lavatory, 0.8 gpm.`,
  },
  'hand-shower': {
    units: sameFor('shower stall'),
    outlet: 'shower, balanced-pressure, thermostatic or combination valve',
    supply: 'shower, single head',
    note: `${similar}: a shower.`,
  },
  'hose-bibb': {
    units: sameFor('hose bibb'),
    outlet: 'sillcock, hose bibb',
    supply: 'hose bibb',
    note: 'The units assume 2.5 gpm, half of the flow that Table P2903.1 asks for at the outlet.',
  },
  'ice-maker': {
    units: sameFor('lavatory'),
    outlet: 'lavatory',
    supply: null,
    note: `${similar}: a lavatory, the least that is listed and more than the appliance draws. Its maker says what tube it takes.`,
  },
  irrigation: {
    units: sameFor(null),
    outlet: 'sillcock, hose bibb',
    supply: null,
    note: 'Continuous flow. The outlet table does not list it: give the flow and pressure of the zone that is largest.',
  },
  'kitchen-sink': { units: sameFor('kitchen sink'), outlet: 'sink', supply: 'kitchen sink' },
  'laundry-tray': {
    units: sameFor('laundry tub'),
    outlet: 'laundry tray',
    supply: 'laundry, 1 to 3 compartments',
  },
  lavatory: { units: sameFor('lavatory'), outlet: 'lavatory', supply: 'lavatory' },
  'make-up': {
    units: sameFor(null),
    outlet: 'sillcock, hose bibb',
    supply: null,
    note: 'Continuous flow. The outlet table does not list it: give the flow and pressure that the equipment asks for.',
  },
  'service-sink': {
    units: sameFor('laundry tub'),
    outlet: 'laundry tray',
    supply: 'sink, service',
    note: `${similar}: a laundry tub, in both tables.`,
  },
  shower: {
    units: sameFor('shower stall'),
    outlet: 'shower, balanced-pressure, thermostatic or combination valve',
    supply: 'shower, single head',
  },
  'urinal-flushometer': {
    units: sameFor('urinal, 3/4 in flushometer valve (IPC 2018)'),
    outlet: 'urinal, valve (IPC 2018)',
    supply: 'urinal, flushometer valve',
    note: 'The IRC lists no flushometer valve: rows of the IPC, which shares the demand curve, take its place.',
  },
  'urinal-tank': {
    units: sameFor('water closet (tank type)'),
    outlet: 'water closet, tank, close coupled',
    supply: 'urinal, flush tank',
    note: `${similar}: a close-coupled closet, in both tables.`,
  },
  'water-closet-flushometer': {
    units: sameFor('water closet, flushometer valve (IPC 2018)'),
    outlet: 'water closet, siphonic, flushometer valve (IPC 2018)',
    supply: 'water closet, flushometer valve',
    note: 'The IRC lists no flushometer valve: rows of the IPC, which shares the demand curve, take its place.',
  },
  'water-closet-flushometer-tank': {
    units: sameFor('water closet (tank type)'),
    outlet: 'water closet, flushometer tank',
    supply: 'water closet, flushometer tank',
    note: 'Table P2903.6 has one row for closets with a tank.',
  },
  'water-closet-one-piece': {
    units: sameFor('water closet (tank type)'),
    outlet: 'water closet, tank, one-piece',
    supply: 'water closet, one piece',
  },
  'water-closet-tank': {
    units: sameFor('water closet (tank type)'),
    outlet: 'water closet, tank, close coupled',
    supply: 'water closet, flush tank',
  },
};
