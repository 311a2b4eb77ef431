import { expect, it } from 'vitest';
import { inOrder } from '../../../engine/takeoff/take-off-order.ts';

it('puts materials in the order of the tables and sizes rising', () => {
  const lines = [
    { material: 'pvc', size: '1/2' },
    { material: 'pex', size: '1' },
    { material: 'pex', size: '2-1/2' },
    { material: 'pex', size: '1/2' },
    { material: 'pex', size: '2' },
    { material: 'copper-l', size: '3/8' },
  ] as const;
  expect(lines.toSorted(inOrder).map(({ material, size }) => `${size} ${material}`)).toEqual([
    '1/2 pex',
    '1 pex',
    '2 pex',
    '2-1/2 pex',
    '3/8 copper-l',
    '1/2 pvc',
  ]);
});

it('puts fittings by joint, then by kind, then by size', () => {
  const fitting = { material: 'pex', joint: 'insert-brass', kind: 'ell', size: '1/2' } as const;
  const lines = [
    { ...fitting, joint: 'expansion' },
    { ...fitting, kind: 'coupling' },
    { ...fitting, size: '3/4' },
    fitting,
  ] as const;
  expect(lines.toSorted(inOrder)).toEqual([lines[3], lines[2], lines[1], lines[0]]);
});
