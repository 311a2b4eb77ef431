import { type JointId, joints, type MaterialId, materials } from '../../tables/pipe/names.ts';
import { type PartKindId, partKinds } from '../../tables/takeoff/part-kinds.ts';
import type { Run } from '../job/job.ts';
import { jointOf } from '../network/pipe-arrays.ts';

/** What a pipe is, as far as fittings must fit it. */
export interface Pipe {
  readonly material: MaterialId;
  readonly joint: JointId;
  readonly size: string;
}

/** One thing that a take-off counts or measures: two with the same {@link articleKey} come out of one bin. */
export interface Article {
  readonly kind: PartKindId;
  /** Of the pipe that it belongs to; none where it fits any. */
  readonly material?: MaterialId;
  readonly joint?: JointId;
  /** A tee's run in, run on and branch; a reducer's or adapter's from and to; else one, or none. */
  readonly sizes: readonly string[];
  /** The other side of an adapter. */
  readonly to?: Pick<Pipe, 'material' | 'joint'>;
  /** Type or name of a device, `tankless`; `valved` or `plain` of a manifold. */
  readonly type?: string;
  /** Of a manifold. */
  readonly ports?: number;
}

export function pipeOf(run: Pick<Run, 'material' | 'joint' | 'size'>): Pipe {
  return { material: run.material, joint: jointOf(run), size: run.size };
}

/** Copper tube of every wall has one outside diameter, inch or metric, so that one fitting takes all of its series. */
export function fitsAlike(one: Pipe, other: Pipe): boolean {
  return bodyOf(one.material) === bodyOf(other.material) && one.joint === other.joint;
}

function bodyOf(material: MaterialId): string {
  if (material === 'copper-en' || material === 'copper-thin') return 'metric copper';
  return material.startsWith('copper-') ? 'copper' : material;
}

/** An article of one pipe, in its size unless others are given. */
export function partOf(kind: PartKindId, { material, joint, size }: Pipe, sizes = [size]): Article {
  return { kind, material, joint, sizes };
}

export function articleKey({ kind, material, joint, sizes, to, type, ports }: Article): string {
  const pipe = `${material ?? ''} ${joint ?? ''}`;
  // The name of a device may hold anything: it stands last.
  return `${kind} ${sizes.join('x')} ${pipe} ${to?.material ?? ''} ${to?.joint ?? ''} ${ports ?? ''} ${type ?? ''}`;
}

/** The article in the reader's words: `1 x 1 x 3/4 tee, PEX SDR-9 with brass insert fittings`. */
export function articleName({ kind, material, joint, sizes, to, type, ports }: Article): string {
  const pipe = (one: MaterialId, by: JointId | undefined): string =>
    by === undefined ? materials[one] : `${materials[one]} with ${joints[by]}`;
  const what = [
    sizes.join(' x '),
    partKinds[kind].label,
    type?.replaceAll('-', ' ') ?? '',
    ports === undefined ? '' : `${ports} ports`,
  ];
  const head = what.filter((word) => word !== '').join(' ');
  if (material === undefined) return head;
  const ends = to === undefined ? '' : ` to ${pipe(to.material, to.joint)}`;
  return `${head}, ${pipe(material, joint)}${ends}`;
}
