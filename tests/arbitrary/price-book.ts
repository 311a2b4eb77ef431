import fc from 'fast-check';
import { backflowWords, heaterWords } from '../../engine/job/words.ts';
import type {
  DevicePrice,
  FittingPrice,
  Money,
  PartPrice,
  PipePrice,
  PriceBook,
} from '../../engine/takeoff/price-book.ts';
import { pipeDimensions } from '../../tables/pipe/dimensions.ts';
import { fittings, jointsOf, materials } from '../../tables/pipe/names.ts';
import { arbitraryName, keysOf, withOptional } from './run.ts';

/** Money as people type it: with no decimals, some, or trailing zeros. */
export const arbitraryMoney: fc.Arbitrary<Money> = fc
  .tuple(fc.nat({ max: 9_999_999 }), fc.option(fc.stringMatching(/^\d{1,4}$/), { nil: undefined }))
  .map(([whole, decimals]) => (decimals === undefined ? `${whole}` : `${whole}.${decimals}`));

const arbitraryHours = fc.double({ min: 0, max: 1000, noNaN: true });

const pipeKind = fc.constantFrom(...keysOf(materials)).chain((material) =>
  fc.record({
    material: fc.constant(material),
    size: fc.constantFrom(...keysOf(pipeDimensions[material].rows)),
  }),
);

const pipe: fc.Arbitrary<PipePrice> = fc
  .tuple(pipeKind, arbitraryMoney, arbitraryHours)
  .map(([kind, perFoot, hoursPerFoot]) => ({ ...kind, perFoot, hoursPerFoot }));

const fitting: fc.Arbitrary<FittingPrice> = pipeKind.chain(({ material, size }) =>
  fc.record({
    material: fc.constant(material),
    joint: fc.constantFrom(...jointsOf[material]),
    kind: fc.constantFrom(...keysOf(fittings)),
    size: fc.constant(size),
    each: arbitraryMoney,
    hours: arbitraryHours,
  }),
);

const price = { each: arbitraryMoney, hours: arbitraryHours };
const device: fc.Arbitrary<DevicePrice> = fc.oneof(
  withOptional({ device: fc.constant('meter' as const), ...price }, { size: fc.constantFrom('5/8', '2') }),
  withOptional(
    { device: fc.constant('backflow' as const), ...price },
    { size: fc.constantFrom(...keysOf(backflowWords)) },
  ),
  withOptional(
    { device: fc.constant('heater' as const), ...price },
    { size: fc.constantFrom(...keysOf(heaterWords)) },
  ),
  withOptional({ device: fc.constant('arrester' as const), ...price }, { size: fc.constantFrom('A', 'F') }),
  withOptional({ device: fc.constant('other' as const), ...price }, { size: arbitraryName }),
  fc.record({
    device: fc.constantFrom(
      'reducing-valve' as const,
      'softener' as const,
      'filter' as const,
      'mixing-valve' as const,
      'expansion-tank' as const,
    ),
    ...price,
  }),
  fc.record({
    device: fc.constant('manifold' as const),
    size: fc.constantFrom('3/4', '1', '2'),
    valved: fc.boolean(),
    ...price,
    perPort: arbitraryMoney,
    hoursPerPort: arbitraryHours,
  }),
);

const part: fc.Arbitrary<PartPrice> = withOptional(
  { kind: fc.constantFrom('tee' as const, 'stub-out' as const, 'insulation' as const), ...price },
  {
    material: fc.constantFrom(...keysOf(materials)),
    sizes: fc.array(fc.constantFrom('1/2', '1', '2'), { minLength: 1, maxLength: 3 }),
  },
);

const day = fc
  .date({ min: new Date('1990-01-01'), max: new Date('2099-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));

/** Any book that the types and the file allow. */
export const arbitraryPriceBook: fc.Arbitrary<PriceBook> = withOptional(
  {
    format: fc.constant('hightap-prices' as const),
    version: fc.constant(1 as const),
    name: arbitraryName,
    invented: fc.boolean(),
    currency: fc.stringMatching(/^[A-Z]{3}$/),
    effective: day,
    source: arbitraryName,
    pipe: fc.uniqueArray(pipe, { maxLength: 12, selector: ({ material, size }) => `${material} ${size}` }),
    fittings: fc.uniqueArray(fitting, {
      maxLength: 12,
      selector: ({ material, joint, kind, size }) => [material, joint, kind, size].join(' '),
    }),
    devices: fc.uniqueArray(device, {
      maxLength: 12,
      selector: (one) => `${one.device} ${one.device === 'manifold' && one.valved} ${one.size}`,
    }),
  },
  {
    note: arbitraryName,
    parts: fc.uniqueArray(part, {
      maxLength: 12,
      selector: ({ kind, material, sizes }) => `${kind} ${material} ${sizes}`,
    }),
  },
);
