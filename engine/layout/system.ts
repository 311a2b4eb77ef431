import type { InletSide } from '../job/job.ts';
import type { Cluster } from './clusters.ts';
import type { Stretch } from './drawing.ts';
import type { Point } from './grid.ts';
import type { Site } from './site.ts';

/** What one main serves: the whole house, or one half of it. */
export interface Part {
  /** Before the names of its runs; empty for the whole house. */
  readonly tag: string;
  /** `East half`; empty for the whole house. */
  readonly name: string;
  readonly clusters: readonly Cluster[];
}

/** Draws the pipes of one side of one part from where its water starts, in the mechanical room. */
export type System = (
  start: Point,
  part: Part,
  side: InletSide,
  drawn: { readonly site: Site; readonly bent: boolean },
) => Stretch[];

/** `C` or `H` with the part before it, and what follows. */
export function runName({ tag }: Part, side: InletSide, what: string): string {
  return `${tag}${side === 'cold' ? 'C' : 'H'}${what}`;
}

/** `East half, cold main`. */
export function mainNote({ name }: Part, side: InletSide): string {
  const main = side === 'cold' ? 'Cold main' : 'Hot main';
  return name === '' ? main : `${name}, ${main.toLowerCase()}`;
}
