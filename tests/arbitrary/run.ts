import fc from 'fast-check';
import { bounds } from '../../engine/job/bounds.ts';
import type { Device, FittingCount, LossPoint, Run, RunEnd } from '../../engine/job/job.ts';
import { fittings, joints, materials } from '../../tables/pipe/names.ts';
import { arbitraryFlow, arbitraryHeight, arbitraryLength, arbitraryPressure } from './quantity.ts';

export function keysOf<T extends object>(table: T): (keyof T & string)[] {
  return Object.keys(table) as (keyof T & string)[];
}

/** An object whose optional fields are there or not, but never undefined. */
export function withOptional<Always extends object, Sometimes extends object>(
  always: { [K in keyof Always]: fc.Arbitrary<Always[K]> },
  sometimes: { [K in keyof Sometimes]: fc.Arbitrary<Sometimes[K]> },
): fc.Arbitrary<Always & Partial<Sometimes>> {
  const fields = { ...always, ...sometimes } as Record<string, fc.Arbitrary<unknown>>;
  return fc.record(fields, { requiredKeys: Object.keys(always) }) as unknown as fc.Arbitrary<
    Always & Partial<Sometimes>
  >;
}

/** Names as people and mischief write them. */
export const arbitraryName: fc.Arbitrary<string> = fc.oneof(
  fc.constantFrom(
    'Rain shower',
    'Bad, oben',
    '<b onclick="x">sink</b>',
    'O\u2019Hare \u{1f6bf}',
    '"',
    '\\',
    '5 > 4 & 3',
  ),
  fc
    .string({ unit: 'grapheme', minLength: 1, maxLength: 30 })
    .map((text) => text.replace(/[\p{Cc}\p{Cs}]/gu, '') || 'x')
    .filter((text) => text.length <= bounds.nameLength),
);

export const arbitraryId: fc.Arbitrary<string> = fc
  .stringMatching(/^[A-Za-z0-9][A-Za-z0-9_-]{0,12}$/)
  .filter((id) => id !== 'constructor' && id !== 'prototype' && id !== 'street');

export const arbitraryFittings: fc.Arbitrary<FittingCount[]> = fc.array(
  fc.record({ kind: fc.constantFrom(...keysOf(fittings)), count: fc.integer({ min: 1, max: 1000 }) }),
  { maxLength: 5 },
);

/** A loss curve with rising flows. */
export const arbitraryCurve: fc.Arbitrary<LossPoint[]> = fc
  .array(fc.record({ flow: arbitraryFlow, loss: arbitraryPressure }), { minLength: 1, maxLength: 6 })
  .map((points) =>
    points
      .sort((a, b) => a.flow.si - b.flow.si)
      .filter((point, index) => index === 0 || point.flow.si > points[index - 1]!.flow.si),
  )
  .filter((points) => points.length > 1 || points[0]!.flow.si > 0);

const size = fc.constantFrom('1/2', '3/4', '1', '1-1/4', '5/8x3/4', '2-1/2', '20x2.8');
const curve = { curve: arbitraryCurve };

export const arbitraryDevice: fc.Arbitrary<Device> = fc.oneof(
  withOptional({ device: fc.constant('meter' as const), size }, curve),
  withOptional(
    { device: fc.constant('reducing-valve' as const), set: arbitraryPressure },
    { size, ...curve },
  ),
  withOptional(
    {
      device: fc.constant('backflow' as const),
      type: fc.constantFrom(
        'reduced-pressure' as const,
        'double-check' as const,
        'dual-check-vented' as const,
      ),
    },
    { size, ...curve },
  ),
  withOptional({ device: fc.constant('softener' as const) }, curve),
  withOptional({ device: fc.constant('filter' as const) }, curve),
  withOptional(
    {
      device: fc.constant('heater' as const),
      type: fc.constantFrom('storage' as const, 'tankless' as const),
    },
    curve,
  ),
  withOptional(
    {
      device: fc.constant('manifold' as const),
      size,
      ports: fc.integer({ min: 1, max: 100 }),
      valved: fc.boolean(),
    },
    curve,
  ),
  withOptional(
    { device: fc.constant('mixing-valve' as const) },
    { cv: fc.double({ min: 1e-6, max: 10_000, noNaN: true }), ...curve },
  ),
  fc.record({ device: fc.constant('expansion-tank' as const) }),
  fc.record({ device: fc.constant('arrester' as const), size: fc.constantFrom('AA', 'A', 'B', 'F') }),
  fc.record({ device: fc.constant('other' as const), name: arbitraryName, curve: arbitraryCurve }),
);

export const arbitraryEnd: fc.Arbitrary<RunEnd> = fc.oneof(
  arbitraryDevice,
  fc.record({ fixture: arbitraryId, inlet: fc.constantFrom('cold' as const, 'hot' as const) }),
);

/** Any run that the types and the file allow, whether or not it makes sense where it stands. */
export const arbitraryRun: fc.Arbitrary<Run> = withOptional(
  {
    id: arbitraryId,
    from: arbitraryId,
    size,
    material: fc.constantFrom(...keysOf(materials)),
    length: arbitraryLength,
    fittings: arbitraryFittings,
  },
  {
    joint: fc.constantFrom(...keysOf(joints)),
    rise: arbitraryHeight,
    end: arbitraryEnd,
    note: arbitraryName,
  },
);
