import { describe, expect, it } from 'vitest';
import { lookUp } from '../../../tables/look-up.ts';
import { type MaterialId, materials } from '../../../tables/pipe/names.ts';
import { roughness } from '../../../tables/pipe/roughness.ts';

/** A second reading: ranges of C, and roughness in feet, from reference pages and an engineering data book. */
const read: Record<MaterialId, { c: readonly [number, number]; feet: readonly [number, number] }> = {
  pex: { c: [140, 150], feet: [0, 0.000005] },
  'copper-k': { c: [130, 150], feet: [0.000005, 0.000005] },
  'copper-l': { c: [130, 150], feet: [0.000005, 0.000005] },
  'copper-m': { c: [130, 150], feet: [0.000005, 0.000005] },
  cpvc: { c: [150, 150], feet: [0.000005, 0.000007] },
  pe: { c: [140, 150], feet: [0.000005, 0.000005] },
  galvanized: { c: [100, 120], feet: [0.00049, 0.0005] },
  pvc: { c: [150, 150], feet: [0.000005, 0.000007] },
  // 0.0005 to 0.007 mm is what the second reading recalls of PE-X, 0.007 mm of multilayer pipe.
  'pe-x': { c: [140, 150], feet: [0.0000016, 0.000023] },
  'pe-x-s5': { c: [140, 150], feet: [0.0000016, 0.000023] },
  'copper-en': { c: [130, 150], feet: [0.000005, 0.000005] },
  'copper-thin': { c: [130, 150], feet: [0.000005, 0.000005] },
  multilayer: { c: [150, 150], feet: [0.0000229, 0.000023] },
};

describe('roughness', () => {
  it('stands for every material', () => {
    expect(Object.keys(roughness.rows).sort()).toEqual(Object.keys(materials).sort());
  });

  it.each(Object.entries(read) as [MaterialId, (typeof read)['pex']][])(
    'lies within a second reading: %s',
    (material, { c, feet }) => {
      const own = lookUp(roughness, material, 'c').value;
      expect(own).toBeGreaterThanOrEqual(c[0]);
      expect(own).toBeLessThanOrEqual(c[1]);
      // Two figures in mm: within 2 % of the range in feet.
      const metres = lookUp(roughness, material, 'roughness').value;
      expect(metres).toBeGreaterThanOrEqual(feet[0] * 0.3048 * 0.98);
      expect(metres).toBeLessThanOrEqual(feet[1] * 0.3048 * 1.02);
    },
  );
});
