import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { QuantityDimension } from '../../../engine/job/job.ts';
import { limits } from '../../../engine/units/limits.ts';
import { parseQuantity } from '../../../engine/units/parse-quantity.ts';
import { fromSI, toSI, units } from '../../../tables/units/definitions.ts';
import type { DisplaySystem, Shown } from '../../../tables/units/display.ts';
import { displayUnits, show, showParts } from '../../../tables/units/display.ts';

describe('show', () => {
  // Written-out conversions: 300 kPa / 6.894757 = 43.51 psi; 1 m = 3.28084 ft; 0.1 L/s x 15.850323 = 1.585 gpm.
  it.each<[number, Shown, DisplaySystem, string]>([
    [300_000, 'pressure', 'us', '43.5 psi'],
    [300_000, 'pressure', 'si', '300 kPa'],
    [1e-4, 'flow', 'us', '1.6 gpm'],
    [1e-4, 'flow', 'si', '0.10 L/s'],
    [1, 'length', 'us', '3.3 ft'],
    [1, 'length', 'si', '1.00 m'],
    [2.4384, 'velocity', 'us', '8.0 ft/s'],
    [2.4384, 'velocity', 'si', '2.44 m/s'],
    [333.15, 'temperature', 'us', '140 \u00b0F'],
    [333.15, 'temperature', 'si', '60.0 \u00b0C'],
    [0.0127, 'diameter', 'us', '0.500 in'],
    [0.0127, 'diameter', 'si', '12.7 mm'],
    [-1e-9, 'length', 'us', '0.0 ft'],
    [-1.2192, 'length', 'us', '-4.0 ft'],
  ])('shows %d as %s in %s', (si, shown, system, text) => {
    expect(show(si, shown, system)).toBe(text);
  });

  it('gives value and symbol apart', () => {
    expect(showParts(427_474.952, 'pressure', 'us')).toEqual({ value: '62.0', symbol: 'psi' });
  });

  it('shows what can be typed again, no further off than half the last digit', () => {
    const dimensions = Object.keys(limits) as QuantityDimension[];
    fc.assert(
      fc.property(
        fc.constantFrom(...dimensions),
        fc.constantFrom<DisplaySystem>('us', 'si'),
        fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        (dimension, system, share) => {
          const { unit: limitUnit, least, most } = limits[dimension];
          const si = toSI(least + share * (most - least), limitUnit);
          const { unit, decimals } = displayUnits[system][dimension];
          const parsed = parseQuantity(show(si, dimension, system), dimension);
          expect(parsed.ok).toBe(true);
          if (!parsed.ok) return;
          const off = Math.abs(fromSI(parsed.quantity.si, unit) - fromSI(si, unit));
          expect(off).toBeLessThanOrEqual(0.5000001 * 10 ** -decimals);
        },
      ),
    );
  });

  it('has units of the right dimension', () => {
    for (const system of ['us', 'si'] as const) {
      for (const [shown, { unit }] of Object.entries(displayUnits[system])) {
        expect(units[unit].dimension).toBe(shown === 'diameter' ? 'length' : shown);
      }
    }
  });
});
