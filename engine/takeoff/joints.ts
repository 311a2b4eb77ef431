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
  const pieces: Piece[] = [];
  ends.forEach((end, index) => {
    // Ends that are alike make one piece: an ell has two joints of one kind.
    if (ends.findIndex((other) => isSame(end, other)) !== index) return;
    const alike = ends.filter((other) => isSame(end, other)).length;
    const { material, joint, size } = end;
    const article = { kind: jointKinds[joint], material, joint, sizes: [size] };
    pieces.push({ article, count: count * alike, at, from, ends: [] });
  });
  return pieces;
}

function isSame(one: Pipe, other: Pipe): boolean {
  return one.size === other.size && one.material === other.material && one.joint === other.joint;
}
