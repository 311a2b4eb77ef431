import { z } from 'zod';
import { risingSizes } from '../../engine/hydraulics/rising-sizes.ts';
import { bounds } from '../../engine/job/bounds.ts';
import { backflowWords, heaterWords } from '../../engine/job/words.ts';
import { partKey } from '../../engine/takeoff/part-price.ts';
import type {
  DevicePrice,
  FittingPrice,
  PartPrice,
  PipePrice,
  PriceBook,
  PricedPartKind,
} from '../../engine/takeoff/price-book.ts';
import { type PriceItem, priceKey, priceName } from '../../engine/takeoff/price-item.ts';
import { shorten } from '../../engine/units/shorten.ts';
import { arresterSizes } from '../../tables/devices/arresters.ts';
import { manifoldCv } from '../../tables/devices/curves.ts';
import { meterLosses } from '../../tables/devices/meters.ts';
import { pipeDimensions } from '../../tables/pipe/dimensions.ts';
import { fittings, joints, jointsOf, type MaterialId, materials } from '../../tables/pipe/names.ts';
import { nominalSizes } from '../../tables/pipe/nominal-size.ts';
import { type PartKindId, partKinds } from '../../tables/takeoff/part-kinds.ts';
import { fileLimits } from './file-limits.ts';
import { choiceOf, fieldsOf, keysOf, noteOf, patternOf, readList, textOf, yesOrNo } from './schema-parts.ts';

/** The version of the price book that is written. */
export const pricesVersion = 1;

/** Money is text, so that no binary fraction comes near it. */
const moneyOf = (what: string) =>
  patternOf(
    /^(?:0|[1-9]\d{0,6})(?:\.\d{1,4})?$/,
    `${what}, a text of digits from "0" to "9999999.9999" with at most 4 decimals, such as "12.50"`,
  );

function hoursOf(what: string) {
  const error = `${what}, a number from 0 to 1000`;
  return z.number({ error }).min(0, { error }).max(1000, { error }).meta({ description: what });
}

const material = choiceOf(keysOf(materials), 'material of the pipe');
const size = z.string({ error: 'a nominal size, such as "3/4"' });

/** A sentence where a material is not made in a size. */
function sizeProblem(made: MaterialId, of: string): string | undefined {
  const { rows } = pipeDimensions[made];
  if (Object.hasOwn(rows, of)) return undefined;
  return `${shorten(of)} is no size of ${materials[made]}; expected one of ${risingSizes(rows).join(', ')}`;
}

const pipePrice = fieldsOf({
  material,
  size,
  perFoot: moneyOf('price of a foot'),
  hoursPerFoot: hoursOf('hours of labour for a foot'),
}).superRefine((price, context) => {
  const message = sizeProblem(price.material, price.size);
  if (message !== undefined) context.addIssue({ code: 'custom', path: ['size'], message });
});

const fittingPrice = fieldsOf({
  material,
  joint: choiceOf(keysOf(joints), 'how it is joined'),
  kind: choiceOf(keysOf(fittings), 'kind of the fitting'),
  size,
  each: moneyOf('price of one'),
  hours: hoursOf('hours of labour for one'),
}).superRefine((price, context) => {
  const message = sizeProblem(price.material, price.size);
  if (message !== undefined) context.addIssue({ code: 'custom', path: ['size'], message });
  const usual: readonly string[] = jointsOf[price.material];
  if (usual.includes(price.joint)) return;
  context.addIssue({
    code: 'custom',
    path: ['joint'],
    message: `${shorten(price.joint)} does not join ${materials[price.material]}; expected one of ${usual.join(', ')}`,
  });
});

const each = moneyOf('price of one');
const hours = hoursOf('hours of labour for one');

function sized<Id extends string>(device: Id, sizes: readonly string[], what: string) {
  const choice = choiceOf(sizes, what);
  return fieldsOf({ device: z.literal(device), size: z.exactOptional(choice), each, hours });
}

function unsized<Id extends string>(device: Id) {
  return fieldsOf({ device: z.literal(device), each, hours });
}

const devicePrices = [
  sized('meter', risingSizes(meterLosses), 'size of the meter'),
  unsized('reducing-valve'),
  sized('backflow', keysOf(backflowWords), 'type of assembly'),
  unsized('softener'),
  unsized('filter'),
  sized('heater', keysOf(heaterWords), 'type of heater'),
  fieldsOf({
    device: z.literal('manifold'),
    size: choiceOf(risingSizes(manifoldCv.rows), 'size of the manifold'),
    valved: yesOrNo('whether each port has its own valve'),
    each: moneyOf('price of the body'),
    perPort: moneyOf('price of each port'),
    hours: hoursOf('hours of labour for the body'),
    hoursPerPort: hoursOf('hours of labour for each port'),
  }),
  unsized('mixing-valve'),
  unsized('expansion-tank'),
  sized('arrester', keysOf(arresterSizes.rows), 'size letter of the arrester'),
  fieldsOf({
    device: z.literal('other'),
    size: z.exactOptional(textOf(bounds.nameLength, 'name of the device')),
    each,
    hours,
  }),
] as const;
const deviceNames = devicePrices.map((price) => price.shape.device.value).join(', ');
const devicePrice = z.discriminatedUnion('device', devicePrices, {
  error: `a price of a device, one of ${deviceNames}`,
});

/** The kinds of part that have no list of their own. */
const partsPriced = keysOf(partKinds).filter((kind): kind is PricedPartKind => !listedElsewhere(kind));

function listedElsewhere(kind: PartKindId): boolean {
  const { group } = partKinds[kind];
  return group === 'pipe' || group === 'device' || group === 'joint' || Object.hasOwn(fittings, kind);
}

const pipeSizes = Object.values(pipeDimensions).flatMap(({ rows }) => risingSizes(rows));
const partSize = z
  .enum([...keysOf(nominalSizes), ...pipeSizes], { error: 'nominal size, such as 3/4 or 20x2.8' })
  .meta({ description: 'nominal size, such as 3/4 or 20x2.8' });

const partPrice = fieldsOf({
  kind: choiceOf(partsPriced, 'kind of the part'),
  material: z.exactOptional(material),
  joint: z.exactOptional(choiceOf(keysOf(joints), 'how it is joined')),
  sizes: z.exactOptional(
    z
      .array(partSize, { error: 'a list of 1 to 3 sizes' })
      .min(1, { error: 'a list of 1 to 3 sizes' })
      .max(3, {
        error: 'a list of 1 to 3 sizes',
      }),
  ),
  each,
  hours,
}).superRefine((price, context) => {
  if (price.joint === undefined) return;
  const usual: readonly string[] = price.material === undefined ? [] : jointsOf[price.material];
  if (usual.includes(price.joint)) return;
  const message =
    price.material === undefined
      ? `${shorten(price.joint)} came without a material; expected the material that it joins`
      : `${shorten(price.joint)} does not join ${materials[price.material]}; expected one of ${usual.join(', ')}`;
  context.addIssue({ code: 'custom', path: ['joint'], message });
});

/** One price of each list, for tables that are read line by line. */
export const priceEntries: {
  readonly pipe: z.ZodType<PipePrice>;
  readonly fitting: z.ZodType<FittingPrice>;
  readonly device: z.ZodType<DevicePrice>;
  readonly part: z.ZodType<PartPrice>;
} = { pipe: pipePrice, fitting: fittingPrice, device: devicePrice, part: partPrice };

/** Prices of parts, each once. */
const partPrices = readList(partPrice, fileLimits.pricesOfList, 'prices of parts').superRefine(
  (prices, context) => {
    const places = new Map<string, number>();
    prices.forEach((price, index) => {
      const key = partKey(price);
      const before = places.get(key);
      if (before === undefined) {
        places.set(key, index);
        return;
      }
      const message = `${partKinds[price.kind].label} has a price already, at [${before}] of this list; expected each item once`;
      context.addIssue({ code: 'custom', path: [index], message });
    });
  },
);

/** A list of prices in which each item stands once. */
function pricesOf<Entry extends z.ZodType>(
  entry: Entry,
  what: string,
  itemOf: (price: z.output<Entry>) => PriceItem,
) {
  return readList(entry, fileLimits.pricesOfList, what).superRefine((prices, context) => {
    const places = new Map<string, number>();
    prices.forEach((price, index) => {
      const item = itemOf(price);
      const key = priceKey(item);
      const before = places.get(key);
      if (before === undefined) {
        places.set(key, index);
        return;
      }
      const message = `${priceName(item)} has a price already, at [${before}] of this list; expected each item once`;
      context.addIssue({ code: 'custom', path: [index], message });
    });
  });
}

/** Reads the parsed JSON of a price book of the present version. */
export const pricesReader: z.ZodType<PriceBook, unknown> = fieldsOf({
  format: z.literal('hightap-prices', { error: '"hightap-prices"' }),
  version: z.literal(pricesVersion, { error: `the number ${pricesVersion}` }),
  name: textOf(bounds.nameLength, 'name of the price book'),
  note: z.exactOptional(noteOf('note to the price book')),
  invented: yesOrNo('whether the prices are made up'),
  currency: patternOf(/^[A-Z]{3}$/, 'the three capital letters of a currency, such as "USD"'),
  effective: z.iso.date({ error: 'the day from which the prices hold, such as "2026-11-25"' }),
  source: textOf(bounds.nameLength, 'where the prices come from'),
  pipe: pricesOf(pipePrice, 'prices of pipe', (price) => ({ item: 'pipe', ...price })),
  fittings: pricesOf(fittingPrice, 'prices of fittings', (price) => ({ item: 'fitting', ...price })),
  devices: pricesOf(devicePrice, 'prices of devices', (price) => ({ item: 'device', ...price })),
  parts: z.exactOptional(partPrices),
});
