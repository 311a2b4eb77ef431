import { type FittingKind, fittings } from '../../tables/pipe/names.ts';
import { type PartKindId, partKinds } from '../../tables/takeoff/part-kinds.ts';
import { nominalInches } from '../hydraulics/nominal-inches.ts';
import type { Device } from '../job/job.ts';
import type { Article } from './article.ts';
import { type PriceIndex, type UnitPrice, unitPrice } from './index-prices.ts';
import { partKey } from './part-price.ts';
import { priceKey } from './price-item.ts';

/** Joints come with their fittings: a book prices one fitting with all its joints made. */
export function isJoint({ kind }: Article): boolean {
  return partKinds[kind].group === 'joint';
}

/**
 * What one of an article costs, or a foot of it; undefined where the book has no price. A price of the book's parts
 * comes first, the most exact one; then those of pipe, fittings and devices. A tee without a price of its own is its two
 * legs, the one through it in the size that runs on and the one by its side in the size of the branch.
 */
export function articlePrice(index: PriceIndex, article: Article): UnitPrice | undefined {
  return partPrice(index, article) ?? listedPrice(index, article);
}

/** From the price of just this article to one that holds for every part of its kind. */
function partPrice({ parts }: PriceIndex, { kind, material, joint, sizes }: Article): UnitPrice | undefined {
  const inches = (size: string): number => nominalInches(size);
  const largest = sizes.reduce((best, size) => (inches(size) > inches(best) ? size : best), sizes[0] ?? '');
  const of = { kind, ...(material && { material }) };
  const joined = { ...of, ...(joint && { joint }) };
  const tries = [
    { ...joined, sizes },
    { ...joined, sizes: [largest] },
    { ...of, sizes: [largest] },
    { kind, sizes: [largest] },
    { ...joined, sizes: [] },
    { ...of, sizes: [] },
    { kind, sizes: [] },
  ];
  for (const one of tries) {
    const price = parts.get(partKey(one));
    if (price !== undefined) return price;
  }
  return undefined;
}

function listedPrice(index: PriceIndex, article: Article): UnitPrice | undefined {
  const { kind, material, joint, sizes } = article;
  const [size = ''] = sizes;
  if (partKinds[kind].group === 'device') return deviceArticlePrice(index, article);
  if (material === undefined) return undefined;
  if (kind === 'pipe') return unitPrice(index, { item: 'pipe', material, size });
  if (joint === undefined) return undefined;
  const fitting = (drawn: FittingKind, size: string): UnitPrice | undefined =>
    unitPrice(index, { item: 'fitting', material, joint, kind: drawn, size });
  if (kind === 'tee') {
    const [, on = '', branch = ''] = sizes;
    const through = fitting('tee-run', on);
    const side = fitting('tee-branch', branch);
    if (through === undefined || side === undefined) return undefined;
    return { money: through.money.plus(side.money), hours: through.hours + side.hours };
  }
  return isDrawn(kind) ? fitting(kind, size) : undefined;
}

function isDrawn(kind: PartKindId): kind is PartKindId & FittingKind {
  return Object.hasOwn(fittings, kind);
}

/** A device by its own size, type or name, else the price of each that has none of its own. */
function deviceArticlePrice({ devices }: PriceIndex, article: Article): UnitPrice | undefined {
  const { kind, sizes, type, ports = 0 } = article;
  const device = kind as Device['device'];
  const size = sizes[0] ?? (device === 'manifold' ? undefined : type);
  const own = priceKey({
    item: 'device',
    device,
    ...(size === undefined ? {} : { size }),
    ...(device === 'manifold' ? { valved: type === 'valved' } : {}),
  });
  const found = devices.get(own) ?? devices.get(priceKey({ item: 'device', device }));
  if (found === undefined) return undefined;
  return {
    money: found.money.plus(found.perPort.money.times(ports)),
    hours: found.hours + found.perPort.hours * ports,
  };
}
