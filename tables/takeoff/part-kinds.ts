import type { FittingKind } from '../pipe/names.ts';

/** What a take-off counts: our keys, with the words that a reader sees. */
export interface PartKind {
  readonly label: string;
  readonly group: PartGroup;
  /** Counted, or measured in feet. */
  readonly unit: 'each' | 'ft';
}

/** The sections of a take-off, in the order in which they are listed. */
export const partGroups = {
  pipe: 'Pipe',
  fitting: 'Fittings',
  valve: 'Valves and stops',
  connection: 'Connections to devices and fixtures',
  device: 'Devices',
  joint: 'Joints',
  support: 'Supports',
  insulation: 'Insulation',
  sundry: 'Sleeves, plates and testing',
} as const;
export type PartGroup = keyof typeof partGroups;

const fitting = (label: string): PartKind => ({ label, group: 'fitting', unit: 'each' });
const valve = (label: string): PartKind => ({ label, group: 'valve', unit: 'each' });
const connection = (label: string): PartKind => ({ label, group: 'connection', unit: 'each' });
const device = (label: string): PartKind => ({ label, group: 'device', unit: 'each' });
const joint = (label: string): PartKind => ({ label, group: 'joint', unit: 'each' });
const support = (label: string): PartKind => ({ label, group: 'support', unit: 'each' });
const sundry = (label: string): PartKind => ({ label, group: 'sundry', unit: 'each' });

/** In the order in which a take-off lists them. */
export const partKinds = {
  pipe: { label: 'pipe', group: 'pipe', unit: 'ft' },

  tee: fitting('tee'),
  ell: fitting('90° ell'),
  'ell-45': fitting('45° ell'),
  coupling: fitting('coupling'),
  reducer: fitting('reducing coupling'),
  adapter: fitting('adapter between pipes'),
  nipple: fitting('nipple'),
  cap: fitting('cap'),

  'ball-valve': valve('ball valve'),
  'gate-valve': valve('gate valve'),
  'globe-valve': valve('globe valve'),
  'butterfly-valve': valve('butterfly valve'),
  'check-valve': valve('check valve'),
  'corporation-stop': valve('corporation stop'),
  'curb-stop': valve('curb stop'),
  'compression-stop': valve('compression stop'),
  supply: valve('flexible supply'),

  'meter-coupling': connection('meter coupling'),
  union: connection('union'),
  'threaded-adapter': connection('threaded adapter'),
  'manifold-port': connection('manifold port fitting'),
  'port-plug': connection('manifold port plug'),
  'stub-out': connection('stub-out'),
  'drop-ear-ell': connection('drop-ear ell'),
  'flushometer-connection': connection('flushometer valve connection'),

  meter: device('meter'),
  'reducing-valve': device('reducing valve'),
  backflow: device('backflow assembly'),
  softener: device('softener'),
  filter: device('filter'),
  heater: device('heater'),
  manifold: device('manifold'),
  'mixing-valve': device('mixing valve'),
  'expansion-tank': device('expansion tank'),
  arrester: device('arrester'),
  other: device('other device'),

  'crimp-ring': joint('crimp or press ring'),
  'expansion-ring': joint('expansion ring'),
  'solder-joint': joint('solder joint'),
  'solvent-joint': joint('solvent-cement joint'),
  'threaded-joint': joint('threaded joint'),

  hanger: support('hanger or strap'),
  'riser-support': support('riser support'),
  guide: support('mid-story guide'),

  insulation: { label: 'pipe insulation', group: 'insulation', unit: 'ft' },

  sleeve: sundry('sleeve'),
  'nail-plate': sundry('nail plate'),
  'test-cap': sundry('test cap'),
  'test-gauge': sundry('test gauge'),
} as const satisfies Record<string, PartKind> &
  Record<Exclude<FittingKind, 'tee-run' | 'tee-branch'>, PartKind>;

export type PartKindId = keyof typeof partKinds;

/** When a part is put in. */
export const phases = {
  underground: 'underground',
  'rough-in': 'rough-in',
  trim: 'trim',
} as const;
export type PhaseId = keyof typeof phases;

/** What water a part carries. */
export const services = {
  cold: 'cold',
  hot: 'hot',
  outdoor: 'outdoor',
} as const;
export type ServiceId = keyof typeof services;
