import type { Decimal } from 'decimal.js';
import type { Device } from '../job/job.ts';
import { Exact, nothing } from './money.ts';
import { partKey } from './part-price.ts';
import type { PriceBook } from './price-book.ts';
import { itemOfDevice, type PriceItem, priceKey } from './price-item.ts';

/** What one foot or one piece costs, and the hours of labour that it takes. */
export interface UnitPrice {
  readonly money: Decimal;
  readonly hours: number;
}

/** A device's price by its number of ports; without ports, `perPort` counts for nothing. */
interface DeviceUnitPrice extends UnitPrice {
  readonly perPort: UnitPrice;
}

/** A price book with its prices at hand. */
export interface PriceIndex {
  readonly book: PriceBook;
  readonly pipe: ReadonlyMap<string, UnitPrice>;
  readonly fittings: ReadonlyMap<string, UnitPrice>;
  readonly devices: ReadonlyMap<string, DeviceUnitPrice>;
  readonly parts: ReadonlyMap<string, UnitPrice>;
}

const free: UnitPrice = { money: nothing, hours: 0 };

/** Makes a checked book ready for pricing; once for a book, then for any number of runs. */
export function indexPrices(book: PriceBook): PriceIndex {
  return {
    book,
    pipe: new Map(
      book.pipe.map((price) => [
        priceKey({ item: 'pipe', ...price }),
        { money: new Exact(price.perFoot), hours: price.hoursPerFoot },
      ]),
    ),
    fittings: new Map(
      book.fittings.map((price) => [
        priceKey({ item: 'fitting', ...price }),
        { money: new Exact(price.each), hours: price.hours },
      ]),
    ),
    devices: new Map(
      book.devices.map((price) => [
        priceKey({ item: 'device', ...price }),
        {
          money: new Exact(price.each),
          hours: price.hours,
          perPort:
            price.device === 'manifold'
              ? { money: new Exact(price.perPort), hours: price.hoursPerPort }
              : free,
        },
      ]),
    ),
    parts: new Map(
      (book.parts ?? []).map((price) => [
        partKey(price),
        { money: new Exact(price.each), hours: price.hours },
      ]),
    ),
  };
}

/** A foot of pipe or one fitting; undefined where the book has no price of it. */
export function unitPrice(
  index: PriceIndex,
  item: Exclude<PriceItem, { item: 'device' }>,
): UnitPrice | undefined {
  return (item.item === 'pipe' ? index.pipe : index.fittings).get(priceKey(item));
}

/**
 * One device, a manifold with all its ports: the price of its own size, type or name, else that of the device
 * without one; undefined where the book has neither.
 */
export function devicePrice(index: PriceIndex, device: Device): UnitPrice | undefined {
  const own = itemOfDevice(device);
  const found =
    index.devices.get(priceKey(own)) ?? index.devices.get(priceKey({ item: 'device', device: own.device }));
  if (found === undefined) return undefined;
  const ports = device.device === 'manifold' ? device.ports : 0;
  return {
    money: found.money.plus(found.perPort.money.times(ports)),
    hours: found.hours + found.perPort.hours * ports,
  };
}
