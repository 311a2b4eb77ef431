/**
 * Names of pipe, joints and fittings that a job may use: our keys, with the words that a reader sees. Inch pipe first;
 * metric pipe is named by outside diameter and wall, as `20x2.8`.
 */

export const materials = {
  pex: 'PEX SDR-9',
  'copper-k': 'copper type K',
  'copper-l': 'copper type L',
  'copper-m': 'copper type M',
  cpvc: 'CPVC SDR-11',
  pe: 'PE service tube SDR-9',
  galvanized: 'galvanized steel schedule 40',
  pvc: 'PVC schedule 40',
  'pe-x': 'PE-X S 3.2 (EN ISO 15875)',
  'pe-x-s5': 'PE-X S 5 (EN ISO 15875)',
  'copper-en': 'copper EN 1057',
  'copper-thin': 'thin-wall copper EN 1057',
  multilayer: 'multilayer PE-X/Al/PE',
} as const;
export type MaterialId = keyof typeof materials;

export const joints = {
  solder: 'solder-joint fittings',
  'insert-brass': 'brass insert fittings',
  'insert-polymer': 'polymer insert fittings',
  expansion: 'cold-expansion fittings',
  solvent: 'solvent-cement fittings',
  threaded: 'threaded fittings',
} as const;
export type JointId = keyof typeof joints;

/** The usual joint first. */
export const jointsOf = {
  pex: ['insert-brass', 'insert-polymer', 'expansion'],
  'copper-k': ['solder'],
  'copper-l': ['solder'],
  'copper-m': ['solder'],
  cpvc: ['solvent'],
  pe: ['insert-brass'],
  galvanized: ['threaded'],
  pvc: ['solvent'],
  'pe-x': ['insert-brass', 'insert-polymer', 'expansion'],
  'pe-x-s5': ['insert-brass', 'insert-polymer', 'expansion'],
  'copper-en': ['solder'],
  'copper-thin': ['solder'],
  multilayer: ['insert-brass', 'insert-polymer'],
} as const satisfies Record<MaterialId, readonly JointId[]>;

export const fittings = {
  ell: '90° ell',
  'ell-45': '45° ell',
  'tee-run': 'tee, straight through',
  'tee-branch': 'tee, side branch',
  coupling: 'coupling',
  'ball-valve': 'ball valve',
  'gate-valve': 'gate valve',
  'globe-valve': 'globe valve',
  'butterfly-valve': 'butterfly valve',
  'check-valve': 'check valve',
  'compression-stop': 'compression stop',
  'corporation-stop': 'corporation stop',
  'curb-stop': 'curb stop',
} as const;
export type FittingKind = keyof typeof fittings;

/** Pipe for cold water only: services and outdoor lines. */
export const coldOnly: ReadonlySet<MaterialId> = new Set<MaterialId>(['pe', 'pvc']);

/** Valves that close a building off and leave the whole bore open. */
export const fullWay: ReadonlySet<FittingKind> = new Set<FittingKind>([
  'ball-valve',
  'gate-valve',
  'butterfly-valve',
]);

/** Fittings that close the pipe off. */
export const shutOffs: ReadonlySet<FittingKind> = new Set<FittingKind>([
  'ball-valve',
  'gate-valve',
  'globe-valve',
  'butterfly-valve',
  'compression-stop',
  'curb-stop',
]);
