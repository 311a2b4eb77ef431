import {
  type FittingKind,
  fittings,
  type JointId,
  joints,
  type MaterialId,
  materials,
} from '../../tables/pipe/names.ts';
import { nominalInches } from '../hydraulics/nominal-inches.ts';

interface Line {
  readonly material: MaterialId;
  readonly joint?: JointId;
  readonly kind?: FittingKind;
  readonly size: string;
}

const places = (table: object) => new Map(Object.keys(table).map((key, place) => [key, place]));
const materialPlace = places(materials);
const jointPlace = places(joints);
const kindPlace = places(fittings);

/** The order of lists of material, for `sort`: by material, joint and kind as the tables name them, sizes rising. */
export function inOrder(one: Line, other: Line): number {
  return (
    materialPlace.get(one.material)! - materialPlace.get(other.material)! ||
    (jointPlace.get(one.joint ?? '') ?? 0) - (jointPlace.get(other.joint ?? '') ?? 0) ||
    (kindPlace.get(one.kind ?? '') ?? 0) - (kindPlace.get(other.kind ?? '') ?? 0) ||
    nominalInches(one.size) - nominalInches(other.size)
  );
}
