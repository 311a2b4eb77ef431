import type { Profile } from '../profile.ts';

const footnote =
  'Not listed: a listed fixture of similar flow takes its place, by footnote a of Table E103.3(2) (from memory)';

/** Where our kinds of fixture stand in Tables E103.3(2), 604.3 and 604.5. */
export const fixtureRows: Profile['fixtureRows'] = {
  bathtub: {
    units: { private: 'bathtub, private', public: 'bathtub, public' },
    outlet: 'bathtub, balanced-pressure, thermostatic or combination valve',
    supply: 'bathtub, 60 x 32 in and smaller',
  },
  'bathtub-shower': {
    units: { private: 'bathtub, private', public: 'bathtub, public' },
    outlet: 'bathtub, balanced-pressure, thermostatic or combination valve',
    supply: 'bathtub, 60 x 32 in and smaller',
    note: 'The shower over a bathtub adds nothing: one of the two runs.',
  },
  bidet: {
    units: { private: 'bidet, private', public: 'bidet, private' },
    outlet: 'bidet, thermostatic mixing valve',
    supply: 'bidet',
    note: 'The code lists the bidet for private use only; the row serves both.',
  },
  'clothes-washer': {
    units: { private: 'washing machine (8 lb), private', public: 'washing machine (8 lb), public' },
    outlet: 'laundry tray',
    supply: 'laundry, 1 to 3 compartments',
    note: 'Tables 604.3 and 604.5 do not list the clothes washer: the laundry tray takes its place.',
  },
  dishwasher: {
    units: { private: 'dishwashing machine, private', public: 'dishwashing machine, private' },
    outlet: 'dishwasher, residential',
    supply: 'dishwashing machine, domestic',
    note: 'A domestic machine in either use; a commercial machine takes its maker’s flow.',
  },
  'drinking-fountain': {
    units: { private: 'drinking fountain, offices', public: 'drinking fountain, offices' },
    outlet: 'drinking fountain',
    supply: 'drinking fountain',
  },
  'hand-shower': {
    units: { private: 'shower head, private', public: 'shower head, public' },
    outlet: 'shower, balanced-pressure, thermostatic or combination valve',
    supply: 'shower, single head',
    note: `${footnote}: a shower head.`,
  },
  'hose-bibb': {
    units: { private: null, public: null },
    outlet: 'sillcock, hose bibb',
    supply: 'hose bibb',
    note: 'Table E103.3(2) prints no hose bibb: its flow is added as continuous flow.',
  },
  'ice-maker': {
    units: { private: 'drinking fountain, offices', public: 'drinking fountain, offices' },
    outlet: 'drinking fountain',
    supply: null,
    note: `${footnote}: a drinking fountain. Its maker says what tube it takes.`,
  },
  irrigation: {
    units: { private: null, public: null },
    outlet: 'sillcock, hose bibb',
    supply: null,
    note: 'Continuous flow. The outlet table does not list it: give the flow and pressure of the zone that is largest.',
  },
  'kitchen-sink': {
    units: { private: 'kitchen sink, private', public: 'kitchen sink, hotel or restaurant' },
    outlet: 'sink, residential',
    supply: 'kitchen sink',
  },
  'laundry-tray': {
    units: { private: 'laundry trays (1 to 3), private', public: 'laundry trays (1 to 3), private' },
    outlet: 'laundry tray',
    supply: 'laundry, 1 to 3 compartments',
    note: 'The code lists laundry trays for private use only; the row serves both.',
  },
  lavatory: {
    units: { private: 'lavatory, private', public: 'lavatory, public' },
    outlet: 'lavatory, private',
    supply: 'lavatory',
    note: 'The outlet is the private one, 0.8 gpm; a public metering faucet flows 0.4 gpm.',
  },
  'make-up': {
    units: { private: null, public: null },
    outlet: 'sillcock, hose bibb',
    supply: null,
    note: 'Continuous flow. The outlet table does not list it: give the flow and pressure that the equipment asks for.',
  },
  'service-sink': {
    units: { private: 'service sink, offices', public: 'service sink, offices' },
    outlet: 'sink, service',
    supply: 'sink, service',
  },
  shower: {
    units: { private: 'shower head, private', public: 'shower head, public' },
    outlet: 'shower, balanced-pressure, thermostatic or combination valve',
    supply: 'shower, single head',
  },
  'urinal-flushometer': {
    units: { private: 'urinal, 3/4 in flushometer valve', public: 'urinal, 3/4 in flushometer valve' },
    outlet: 'urinal, valve',
    supply: 'urinal, flushometer valve',
    note: 'A 3/4 in valve; the code counts 10 units for a 1 in valve.',
  },
  'urinal-tank': {
    units: { private: 'urinal, flush tank', public: 'urinal, flush tank' },
    outlet: 'water closet, tank, close coupled',
    supply: 'urinal, flush tank',
    note: 'Table 604.3 does not list the urinal with a flush tank: a close-coupled closet takes its place.',
  },
  'water-closet-flushometer': {
    units: {
      private: 'water closet, private, flushometer valve',
      public: 'water closet, public, flushometer valve',
    },
    outlet: 'water closet, siphonic, flushometer valve',
    supply: 'water closet, flushometer valve',
    note: 'A siphonic closet; a blowout closet asks for 45 psi.',
  },
  'water-closet-flushometer-tank': {
    units: { private: 'water closet, flushometer tank', public: 'water closet, flushometer tank' },
    outlet: 'water closet, flushometer tank',
    supply: 'water closet, flushometer tank',
  },
  'water-closet-one-piece': {
    units: { private: 'water closet, private, flush tank', public: 'water closet, public, flush tank' },
    outlet: 'water closet, tank, one piece',
    supply: 'water closet, one piece',
  },
  'water-closet-tank': {
    units: { private: 'water closet, private, flush tank', public: 'water closet, public, flush tank' },
    outlet: 'water closet, tank, close coupled',
    supply: 'water closet, flush tank',
  },
};
