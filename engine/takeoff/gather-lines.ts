import type { Decimal } from 'decimal.js';
import { joints, materials } from '../../tables/pipe/names.ts';
import { partKinds, phases, services } from '../../tables/takeoff/part-kinds.ts';
import { nominalInches } from '../hydraulics/nominal-inches.ts';
import type { Network } from '../network/network.ts';
import { type Article, articleKey } from './article.ts';
import { nothing } from './money.ts';
import type { Area, RunPlace } from './place-of-runs.ts';
import type { TakeOffLine } from './take-off.ts';

/** So much of an article for a place, and the positions of the runs that it comes from. */
export interface Amount {
  readonly article: Article;
  readonly quantity: Decimal;
  readonly place: RunPlace;
  readonly from: readonly number[];
}

/** A line while it grows; the runs of each part by their positions. */
interface Growing {
  readonly line: Omit<TakeOffLine, 'quantity' | 'from'>;
  quantity: Decimal;
  readonly from: Map<string, { readonly at: readonly number[]; quantity: Decimal }>;
}

/** Adds up what is alike, in an order that depends on the drawing alone. */
export function gatherLines(
  { runs, job }: Pick<Network, 'runs' | 'job'>,
  amounts: readonly Amount[],
): TakeOffLine[] {
  const lines = new Map<string, Growing>();
  for (const { article, quantity, place, from } of amounts) {
    const key = `${place.phase} ${place.service} ${areaKey(place.area)} ${articleKey(article)}`;
    let growing = lines.get(key);
    if (growing === undefined) {
      const { unit } = partKinds[article.kind];
      growing = { line: { article, unit, ...place }, quantity: nothing, from: new Map() };
      lines.set(key, growing);
    }
    growing.quantity = growing.quantity.plus(quantity);
    const origin = from.join(' ');
    const there = growing.from.get(origin);
    if (there === undefined) growing.from.set(origin, { at: from, quantity });
    else there.quantity = there.quantity.plus(quantity);
  }
  const levels = new Map(job.levels.map(({ id }, place) => [id, place]));
  return [...lines.values()]
    .map(({ line, quantity, from }): TakeOffLine => {
      const origins = [...from.values()].map((part) => {
        return { runs: part.at.map((at) => runs[at]!.id), quantity: part.quantity };
      });
      return { ...line, quantity, from: origins };
    })
    .sort((one, other) => inOrder(one, other, levels));
}

function areaKey(area: Area): string {
  return area.area === 'level' ? `level ${area.level}` : area.area;
}

const places = (table: object): ReadonlyMap<string, number> =>
  new Map(Object.keys(table).map((key, place) => [key, place]));
const order = {
  kinds: places(partKinds),
  materials: places(materials),
  joints: places(joints),
  phases: places(phases),
  services: places(services),
};

/** Kind, material and joint as the tables name them, sizes rising; then phase, area and service. */
function inOrder(one: TakeOffLine, other: TakeOffLine, levels: ReadonlyMap<string, number>): number {
  return (
    articleOrder(one.article, other.article) ||
    order.phases.get(one.phase)! - order.phases.get(other.phase)! ||
    areaPlace(one.area, levels) - areaPlace(other.area, levels) ||
    order.services.get(one.service)! - order.services.get(other.service)!
  );
}

/** For `sort`: the order in which articles are listed. */
export function articleOrder(one: Article, other: Article): number {
  return (
    order.kinds.get(one.kind)! - order.kinds.get(other.kind)! ||
    (order.materials.get(one.material ?? '') ?? -1) - (order.materials.get(other.material ?? '') ?? -1) ||
    (order.joints.get(one.joint ?? '') ?? -1) - (order.joints.get(other.joint ?? '') ?? -1) ||
    compareSizes(one.sizes, other.sizes) ||
    compareText(articleKey(one), articleKey(other))
  );
}

function compareSizes(one: readonly string[], other: readonly string[]): number {
  for (let at = 0; at < Math.max(one.length, other.length); at++) {
    const apart = nominalInches(one[at] ?? '') - nominalInches(other[at] ?? '');
    if (apart !== 0) return apart;
  }
  return 0;
}

/** By code units, the same on every machine. */
function compareText(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}

function areaPlace(area: Area, levels: ReadonlyMap<string, number>): number {
  if (area.area === 'outdoors') return -2;
  return area.area === 'whole' ? -1 : (levels.get(area.level) ?? 0);
}
