import type { JointId } from '../../tables/pipe/names.ts';
import type { PartKindId } from '../../tables/takeoff/part-kinds.ts';
import type { Pipe } from './article.ts';
import type { Piece } from './piece.ts';

/** What makes a joint of each way of joining. */
const jointKinds: { readonly [joint in JointId]: PartKindId } = {
  solder: 'solder-joint',
  'insert-brass': 'crimp-ring',
  'insert-polymer': 'crimp-ring',
  expansion: 'expansion-ring',
  solvent: 'solvent-joint',
  threaded: 'threaded-joint',
};

/** One joint for each end of pipe in a part, of the material of the fitting and the size of the end. */
export function jointsOfPiece({ ends, count, at, from }: Piece): Piece[] {
  return ends.map(({ material, joint, size }: Pipe) => {
    const article = { kind: jointKinds[joint], material, joint, sizes: [size] };
    return { article, count, at, from, ends: [] };
  });
}
