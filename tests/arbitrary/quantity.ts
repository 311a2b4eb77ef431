import fc from 'fast-check';
import type { Quantity, QuantityDimension } from '../../engine/job/job.ts';
import { parseQuantity } from '../../engine/units/parse-quantity.ts';

/** The quantity that a text says; the text must be good. */
export function quantity(text: string, dimension: QuantityDimension): Quantity {
  const parsed = parseQuantity(text, dimension);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.quantity;
}

/** A number with up to three decimals, as a person writes it. */
export function decimalText(least: number, most: number): fc.Arbitrary<string> {
  return fc
    .tuple(
      fc.integer({ min: Math.ceil(least * 1000), max: Math.floor(most * 1000) }),
      fc.integer({ min: 0, max: 3 }),
    )
    .map(([thousandths, digits]) => {
      const text = (thousandths / 1000).toFixed(digits);
      return Number(text) < least || Number(text) > most ? String(thousandths / 1000) : text;
    });
}

const spaced = fc.constantFrom('', ' ');

/** Unsigned lengths from `least` to `most` feet in the trade's spellings. */
export function lengthText(least: number, most: number): fc.Arbitrary<string> {
  const feet = fc.tuple(decimalText(least, most), spaced, fc.constantFrom('ft', "'", 'feet', '\u2032'));
  const pair = fc.tuple(
    fc.integer({ min: Math.ceil(least), max: Math.floor(most) - 1 }),
    fc.integer({ min: 0, max: 11 }),
    fc.constantFrom(
      ["'", ' ', '"'],
      ["'", '-', '"'],
      ["'", ' - ', '"'],
      [' ft', ' ', ' in'],
      ['\u2032', ' ', '\u2033'],
    ),
    fc.constantFrom('', '-1/2', ' 3/4', '\u00bd'),
  );
  const metric = fc.tuple(decimalText(least * 0.3048, most * 0.3048), spaced, fc.constantFrom('m'));
  return fc.oneof(
    feet.map((parts) => parts.join('')),
    pair.map(
      ([foot, inch, [first, between, last], part]) => `${foot}${first}${between}${inch}${part}${last}`,
    ),
    metric.map((parts) => parts.join('')),
  );
}

export const arbitraryLength: fc.Arbitrary<Quantity> = lengthText(0, 200).map((text) =>
  quantity(text, 'length'),
);

/** Heights of either sign. */
export const arbitraryHeight: fc.Arbitrary<Quantity> = fc
  .tuple(fc.constantFrom('', '-', '+', '\u2212'), lengthText(0, 60))
  .map(([sign, text]) => quantity(`${sign}${text}`, 'length'));

function inUnits(dimension: QuantityDimension, ranges: readonly (readonly [string, number, number])[]) {
  return fc.oneof(
    ...ranges.map(([unit, least, most]) =>
      fc
        .tuple(decimalText(least, most), spaced)
        .map(([number, space]) => quantity(`${number}${space}${unit}`, dimension)),
    ),
  );
}

export const arbitraryPressure = inUnits('pressure', [
  ['psi', 1, 150],
  ['kPa', 7, 1000],
  ['bar', 0.1, 10],
]);

export const arbitraryFlow = inUnits('flow', [
  ['gpm', 0.1, 60],
  ['L/s', 0.01, 4],
  ['L/min', 0.5, 200],
]);

export const arbitraryVelocity = inUnits('velocity', [
  ['ft/s', 1, 12],
  ['m/s', 0.5, 4],
]);

export const arbitraryGradient = inUnits('pressure gradient', [
  ['psi/ft', 0.4, 0.5],
  ['kPa/m', 9, 11],
]);

export function arbitraryTemperature(leastCelsius: number, mostCelsius: number): fc.Arbitrary<Quantity> {
  return inUnits('temperature', [
    ['C', leastCelsius, mostCelsius],
    ['\u00b0F', leastCelsius * 1.8 + 32, mostCelsius * 1.8 + 32],
  ]);
}
