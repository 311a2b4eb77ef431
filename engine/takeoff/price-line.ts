import { joints, materials } from '../../tables/pipe/names.ts';
import { partKinds } from '../../tables/takeoff/part-kinds.ts';
import { Exact } from './money.ts';
import { partKey } from './part-price.ts';
import type {
  DevicePrice,
  FittingPrice,
  ManifoldPrice,
  Money,
  PartPrice,
  PipePrice,
  PriceBook,
} from './price-book.ts';
import { priceKey, priceName } from './price-item.ts';

/** One price of a book with the list in which it stands. */
export type PriceLine =
  | { readonly list: 'pipe'; readonly price: PipePrice }
  | { readonly list: 'fittings'; readonly price: FittingPrice }
  | { readonly list: 'devices'; readonly price: DevicePrice }
  | { readonly list: 'parts'; readonly price: PartPrice };

export type PriceList = PriceLine['list'];

/** The figures of a price: money of a foot or a piece, hours of labor, and for a manifold those of each port. */
export interface PriceFigures {
  readonly money: Money;
  readonly hours: number;
  readonly ports?: { readonly money: Money; readonly hours: number };
}

/** Every price of a book, list after list, each in the order in which it is kept. */
export function priceLines(book: PriceBook): PriceLine[] {
  return [
    ...book.pipe.map((price): PriceLine => ({ list: 'pipe', price })),
    ...book.fittings.map((price): PriceLine => ({ list: 'fittings', price })),
    ...book.devices.map((price): PriceLine => ({ list: 'devices', price })),
    ...(book.parts ?? []).map((price): PriceLine => ({ list: 'parts', price })),
  ];
}

/** Two lines with the same key price the same item. */
export function lineKey(line: PriceLine): string {
  switch (line.list) {
    case 'pipe':
      return `pipe ${priceKey({ item: 'pipe', ...line.price })}`;
    case 'fittings':
      return `fittings ${priceKey({ item: 'fitting', ...line.price })}`;
    case 'devices':
      return `devices ${priceKey({ item: 'device', ...line.price })}`;
    case 'parts':
      return `parts ${partKey(line.price)}`;
  }
}

/** What a line prices, in the reader's words. */
export function lineName(line: PriceLine): string {
  switch (line.list) {
    case 'pipe':
      return priceName({ item: 'pipe', ...line.price });
    case 'fittings':
      return priceName({ item: 'fitting', ...line.price });
    case 'devices':
      return priceName({ item: 'device', ...line.price });
    case 'parts': {
      const { kind, sizes = [], material, joint } = line.price;
      const named = `${sizes.join(' x ')} ${partKinds[kind].label}`.trim();
      const of = material === undefined ? '' : `, ${materials[material]}`;
      return `${named}${of}${joint === undefined ? '' : ` with ${joints[joint]}`}`;
    }
  }
}

/** Whether the price is for a foot or for a piece. */
export function lineUnit(line: PriceLine): 'ft' | 'each' {
  if (line.list === 'pipe') return 'ft';
  return line.list === 'parts' ? partKinds[line.price.kind].unit : 'each';
}

export function isManifold(price: DevicePrice): price is ManifoldPrice {
  return price.device === 'manifold';
}

/** The figures of a line, whatever its list calls them. */
export function lineFigures(line: PriceLine): PriceFigures {
  if (line.list === 'pipe') return { money: line.price.perFoot, hours: line.price.hoursPerFoot };
  const { each: money, hours } = line.price;
  if (line.list !== 'devices' || !isManifold(line.price)) return { money, hours };
  return { money, hours, ports: { money: line.price.perPort, hours: line.price.hoursPerPort } };
}

/** Whether two prices are the same amount, however many zeros they were typed with. */
export function sameFigures(one: PriceFigures, other: PriceFigures): boolean {
  return (
    sameMoney(one.money, other.money) &&
    one.hours === other.hours &&
    one.ports?.hours === other.ports?.hours &&
    sameMoney(one.ports?.money ?? '0', other.ports?.money ?? '0')
  );
}

function sameMoney(one: Money, other: Money): boolean {
  return one === other || new Exact(one).equals(other);
}
