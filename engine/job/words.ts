import type { FittingKind, JointId, MaterialId } from '../../tables/pipe/names.ts';
import type { Device } from './job.ts';

/** Words of the shorthand; the first spelling of each is the one that is written, all of them are read. */
export type Words<Id extends string> = { readonly [id in Id]: readonly [string, ...string[]] };

export const materialWords: Words<MaterialId> = {
  pex: ['PEX'],
  'copper-l': ['copper L', 'copper type L', 'copper', 'type L copper'],
  'copper-k': ['copper K', 'copper type K', 'type K copper'],
  'copper-m': ['copper M', 'copper type M', 'type M copper'],
  cpvc: ['CPVC'],
  pe: ['PE', 'polyethylene'],
  galvanized: ['galvanized', 'galv', 'galvanized steel'],
  pvc: ['PVC'],
  'pe-x': ['PE-X', 'PE-X S3.2', 'PE-X S 3.2'],
  'pe-x-s5': ['PE-X S5', 'PE-X S 5'],
  'copper-en': ['copper EN', 'copper EN 1057', 'EN copper', 'EN 1057 copper'],
  'copper-thin': ['thin copper', 'thin-wall copper', 'copper thin'],
  multilayer: ['multilayer', 'multilayer pipe'],
};

export const jointWords: Words<JointId> = {
  solder: ['solder', 'soldered', 'sweat'],
  'insert-brass': ['brass', 'insert brass', 'insert-brass', 'brass insert'],
  'insert-polymer': ['polymer', 'insert polymer', 'insert-polymer', 'polymer insert', 'poly'],
  expansion: ['expansion', 'cold expansion', 'cold-expansion'],
  solvent: ['solvent', 'glued', 'solvent cement'],
  threaded: ['threaded'],
};

/** Singular; the plural is read with `s`, `es` or `'s` behind the last word, and written with `s`. */
export const fittingWords: Words<FittingKind> = {
  ell: ['ell', 'elbow', '90', '90 ell', '90 elbow'],
  'ell-45': ['45', '45 ell', '45 elbow'],
  'tee-branch': ['tee', 'side tee', 'branch tee', 'tee branch', 'tee side'],
  'tee-run': ['through tee', 'tee run', 'run tee', 'tee through'],
  coupling: ['coupling', 'coupler'],
  'ball-valve': ['ball valve'],
  'gate-valve': ['gate valve'],
  'globe-valve': ['globe valve', 'globe'],
  'butterfly-valve': ['butterfly valve'],
  'check-valve': ['check valve', 'check'],
  'compression-stop': ['stop', 'compression stop', 'angle stop'],
  'corporation-stop': ['corp stop', 'corporation stop', 'corp'],
  'curb-stop': ['curb stop'],
};

export const deviceWords: Words<Device['device']> = {
  meter: ['meter', 'water meter'],
  'reducing-valve': ['prv', 'reducing valve', 'pressure reducing valve'],
  backflow: ['backflow', 'backflow assembly'],
  softener: ['softener'],
  filter: ['filter'],
  heater: ['heater', 'water heater'],
  manifold: ['manifold'],
  'mixing-valve': ['mixing valve'],
  'expansion-tank': ['expansion tank'],
  arrester: ['arrester', 'hammer arrester', 'water hammer arrester'],
  other: ['other'],
};

export const backflowWords: Words<Extract<Device, { device: 'backflow' }>['type']> = {
  'reduced-pressure': ['rp', 'reduced pressure', 'reduced-pressure', 'rpz'],
  'double-check': ['dc', 'double check', 'double-check'],
  'dual-check-vented': ['vented', 'dual check vented', 'dual-check-vented'],
};

export const heaterWords: Words<Extract<Device, { device: 'heater' }>['type']> = {
  storage: ['storage', 'tank'],
  tankless: ['tankless'],
};

export const inletWords: Words<'cold' | 'hot'> = {
  cold: ['cold', 'cw'],
  hot: ['hot', 'hw'],
};

/** A pipe size, or that of a meter or manifold: `3/4`, `1-1/4`, `20x2.8`; whether the tables hold it is asked later. */
export const sizePattern = /^\d[\dA-Za-z./-]{0,11}$/;

/** Size letters of a water hammer arrester. */
export const arresterSizePattern = /^[A-Za-z0-9]{1,4}$/;

/** Ids of runs, fixtures, levels, groups and schemes; names that every object has are kept out. */
export const idPattern = /^(?!(?:constructor|prototype)$)[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/;
