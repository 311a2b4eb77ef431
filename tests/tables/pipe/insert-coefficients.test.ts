import { describe, expect, it } from 'vitest';
import { colebrookFactor } from '../../../engine/hydraulics/colebrook.ts';
import { waterAt } from '../../../engine/hydraulics/water.ts';
import { pexSdr9 } from '../../../tables/pipe/astm-f876/sdr-9.ts';
import { pexInsertBrassLengths } from '../../../tables/pipe/fitting-lengths/pex-insert-brass.ts';
import { pexInsertPolymerLengths } from '../../../tables/pipe/fitting-lengths/pex-insert-polymer.ts';
import { insertCoefficients } from '../../../tables/pipe/insert-coefficients.ts';
import type { FittingKind } from '../../../tables/pipe/names.ts';
import { toSI } from '../../../tables/units/definitions.ts';

describe('loss coefficients of insert fittings', () => {
  const { density, viscosity } = waterAt(toSI(60, 'F'));
  const tables = [
    ['insert-brass', pexInsertBrassLengths],
    ['insert-polymer', pexInsertPolymerLengths],
  ] as const;
  const cells = tables.flatMap(([joint, lengths]) =>
    Object.entries(insertCoefficients[joint]!.rows).flatMap(([size, { values }]) =>
      (Object.entries(values) as [FittingKind, number][]).map(([kind, k]) => ({
        joint,
        lengths,
        size,
        kind,
        k,
      })),
    ),
  );

  it('stand for four kinds of fitting in each size', () => expect(cells).toHaveLength(4 * (4 + 3)));

  /** K = f L / d at 8 ft/s and 60 F, from the feet that the manual prints; two decimals are carried. */
  it.each(cells)('$joint $size $kind: K $k', ({ lengths, size, kind, k }) => {
    const bore = toSI(pexSdr9.rows[size]!.values.bore!, 'in');
    const f = colebrookFactor((density * toSI(8, 'ft/s') * bore) / viscosity, 1.5e-6 / bore);
    const length = toSI(lengths.rows[size]!.values[kind]!, 'ft');
    expect(Math.abs((f * length) / bore - k)).toBeLessThan(0.0055);
  });
});
