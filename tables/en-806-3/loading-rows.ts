import type { UnitRows, UnitsAndCurve } from '../demand/methods.ts';
import type { loadingUnits } from './loading-units.ts';

type Row = keyof (typeof loadingUnits)['rows'];

const both = (row: Row, note?: string): UnitRows => ({
  private: row,
  public: row,
  ...(note === undefined ? {} : { note }),
});
const small = both('wash basin, hand basin, bidet, WC cistern');
const middle = both('domestic kitchen sink, washing machine, dishwasher, sink, shower head');
const bath: UnitRows = {
  private: 'domestic bath',
  public: 'non-domestic kitchen sink DN 20, non-domestic bath',
};
const none: UnitRows = {
  private: null,
  public: null,
  note: 'Table 2 lists no such draw-off: its flow is added whole.',
};

/** Where our kinds of fixture stand in Table 2. */
export const loadingRows: UnitsAndCurve['rows'] = {
  bathtub: bath,
  'bathtub-shower': bath,
  bidet: small,
  'clothes-washer': middle,
  dishwasher: middle,
  'drinking-fountain': none,
  'hand-shower': middle,
  'hose-bibb': both('tap in garden or garage'),
  'ice-maker': none,
  irrigation: none,
  'kitchen-sink': {
    private: 'domestic kitchen sink, washing machine, dishwasher, sink, shower head',
    public: 'non-domestic kitchen sink DN 20, non-domestic bath',
  },
  'laundry-tray': middle,
  lavatory: small,
  'make-up': none,
  'service-sink': middle,
  shower: middle,
  'urinal-flushometer': both('urinal flush valve'),
  'urinal-tank': both(
    'wash basin, hand basin, bidet, WC cistern',
    'Table 2 lists no urinal with a cistern: the WC cistern takes its place.',
  ),
  'water-closet-flushometer': both('flush valve DN 20'),
  'water-closet-flushometer-tank': both(
    'wash basin, hand basin, bidet, WC cistern',
    'Table 2 lists no pressure cistern: the WC cistern takes its place.',
  ),
  'water-closet-one-piece': small,
  'water-closet-tank': small,
};
