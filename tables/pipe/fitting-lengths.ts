import { copperSolderLengths } from './fitting-lengths/copper-solder.ts';
import { copperValveLengths } from './fitting-lengths/copper-valves.ts';
import { cpvcSolventLengths } from './fitting-lengths/cpvc-solvent.ts';
import type { FittingLengths } from './fitting-lengths/fitting-columns.ts';
import { illinoisValveLengths } from './fitting-lengths/illinois-valves.ts';
import { illinoisWroughtLengths } from './fitting-lengths/illinois-wrought.ts';
import { peInsertStandIn, pexExpansionStandIn } from './fitting-lengths/insert-stand-ins.ts';
import { pexInsertBrassLengths } from './fitting-lengths/pex-insert-brass.ts';
import { pexInsertPolymerLengths } from './fitting-lengths/pex-insert-polymer.ts';
import { pexPressBronzeLengths } from './fitting-lengths/pex-press-bronze.ts';
import { pexPressPolymerLengths } from './fitting-lengths/pex-press-polymer.ts';
import { pvcSolventLengths } from './fitting-lengths/pvc-solvent.ts';
import { serviceStopLengths } from './fitting-lengths/service-stops.ts';
import { steelThreadedLengths } from './fitting-lengths/steel-threaded.ts';
import { upcThreadedLengths } from './fitting-lengths/upc-threaded.ts';
import type { JointId, MaterialId } from './names.ts';

/** No table of valves by material was found but copper's: these serve every material. */
const valves: readonly FittingLengths[] = [copperValveLengths, illinoisValveLengths, serviceStopLengths];

const copper = { solder: [copperSolderLengths, illinoisWroughtLengths, ...valves] } as const;

/** Tables of equivalent length in order of preference: the first that prints a fitting in its size is taken. */
export const fittingLengths: {
  readonly [material in MaterialId]: { readonly [joint in JointId]?: readonly FittingLengths[] };
} = {
  pex: {
    'insert-brass': [pexInsertBrassLengths, pexPressBronzeLengths, ...valves],
    'insert-polymer': [pexInsertPolymerLengths, pexPressPolymerLengths, ...valves],
    expansion: [pexExpansionStandIn, ...valves],
  },
  'copper-k': copper,
  'copper-l': copper,
  'copper-m': copper,
  cpvc: { solvent: [cpvcSolventLengths, ...valves] },
  pe: { 'insert-brass': [peInsertStandIn, ...valves] },
  galvanized: { threaded: [steelThreadedLengths, upcThreadedLengths, ...valves] },
  pvc: { solvent: [pvcSolventLengths, ...valves] },
  // No table of lengths was found for metric pipe: its fittings go by K.
  'pe-x': {},
  'pe-x-s5': {},
  'copper-en': {},
  'copper-thin': {},
  multilayer: {},
};
