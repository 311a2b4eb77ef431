import { describe, it } from 'vitest';
import { lossAt } from '../../engine/hydraulics/curve.ts';
import { deviceCurve } from '../../engine/hydraulics/device-curve.ts';
import { fromSI, toSI } from '../../tables/units/definitions.ts';
import { numberIn, readData, wordIn } from './data/read-data.ts';
import { expectPrinted } from './expect-printed.ts';
import { boreOf, darcyWeisbachPsi } from './gradients.ts';

describe('multiport tees, manufacturer’s design manual B (2015), page 105: length from Cv', () => {
  /** Three rows whose length and Cv do not belong together in print: disagreements.test.ts. */
  const apartInPrint = new Set([
    '3 outlets(1in) 2x2, through',
    '6 outlets 3/4x3/4, through',
    'vertical tee 3/4, side to outlet 2',
  ]);
  const rows = readData('multiport-tees.csv').filter(
    (row) => !apartInPrint.has(`${wordIn(row, 'fitting')}, ${wordIn(row, 'path')}`),
  );

  /**
   * The manual says that it makes lengths of Cv at 8 ft/s: loss of the valve by its Cv, over friction per foot. Half a
   * foot: Cv and length are printed to a tenth (3 % of Cv 3.4 is 0.4 ft of 6.4), and the temperature of the friction is
   * not stated (60 F here, smooth wall).
   */
  it.each(rows)('$fitting, $path: $feet ft', (row) => {
    const bore = boreOf('pex', wordIn(row, 'size_used'));
    const flow = toSI(8, 'ft/s') * (Math.PI / 4) * bore * bore;
    const valve = deviceCurve({ device: 'mixing-valve', cv: numberIn(row, 'cv') }, wordIn(row, 'size_used'));
    const perFoot = darcyWeisbachPsi(bore, fromSI(flow, 'gpm'), 0, 60) / 100;
    expectPrinted(fromSI(lossAt(valve, flow), 'psi') / perFoot, numberIn(row, 'feet'), 0.5);
  });
});

describe('displacement meters, one-page sheet of meter losses after AWWA', () => {
  /**
   * Beyond half of the safe maximum the sheet follows the square of the flow from its last row; so far our curves, read
   * from the sheet’s rows, must do the same. 6 %, as the sheet’s own rows scatter about the square.
   */
  it.each([
    { size: '5/8', maximum: 20, loss: 15 },
    { size: '3/4', maximum: 30, loss: 15 },
    { size: '1', maximum: 50, loss: 15 },
    { size: '1-1/2', maximum: 100, loss: 20 },
    { size: '2', maximum: 160, loss: 20 },
    { size: '3', maximum: 300, loss: 20 },
    { size: '4', maximum: 500, loss: 20 },
  ])('$size in meter: square law from $loss psi at $maximum gpm', ({ size, maximum, loss }) => {
    const curve = deviceCurve({ device: 'meter', size }, size);
    const at = (share: number): number => fromSI(lossAt(curve, toSI(share * maximum, 'gpm')), 'psi');
    expectPrinted(at(1), loss, 1e-9);
    expectPrinted(at(0.8), loss * 0.64, 0.06 * loss * 0.64);
    expectPrinted(at(0.65), loss * 0.4225, 0.06 * loss * 0.4225);
    // Beyond the last row, where the sheet ends, the square goes on.
    expectPrinted(at(1.2), loss * 1.44, 1e-9);
  });
});

describe('reducing valve, manufacturer’s sheet', () => {
  /** 7.3 psi at 8 gpm through a 3/4 in valve, as printed; so a run of 3/4 in, and a 3/4 in valve in a larger run. */
  it.each([
    [undefined, '3/4'],
    ['3/4', '1-1/4'],
  ])('valve %s in a run of %s in: 7.3 psi at 8 gpm', (size, run) => {
    const set = { typed: '60 psi', si: toSI(60, 'psi') };
    const valve = { device: 'reducing-valve', set, ...(size === undefined ? {} : { size }) } as const;
    expectPrinted(fromSI(lossAt(deviceCurve(valve, run), toSI(8, 'gpm')), 'psi'), 7.3, 0.05);
  });

  /** The sheet's upper design flows: 12.5 gpm in 3/4 in, 19 in 1 in, 34 in 1-1/4 in: the same fall at the same share. */
  it.each([
    ['1/2', 7.3],
    ['1', 19],
    ['1-1/4', 34],
    ['1-1/2', 44],
    ['2', 70],
  ])('%s in: 7.3 psi at 64 %% of its design flow of %d gpm', (run, design) => {
    const set = { typed: '60 psi', si: toSI(60, 'psi') };
    const curve = deviceCurve({ device: 'reducing-valve', set }, run);
    expectPrinted(fromSI(lossAt(curve, toSI((8 / 12.5) * design, 'gpm')), 'psi'), 7.3, 0.1);
  });
});

describe('reduced-pressure assembly, training page', () => {
  /** Springs of the two checks: 5 psi and 1 psi at the least, so 6 psi before any flow, whatever its size. */
  it.each(['3/4', '1', '2'])('%s in: 6 psi at no flow', (size) => {
    const curve = deviceCurve({ device: 'backflow', type: 'reduced-pressure', size }, '1');
    expectPrinted(fromSI(lossAt(curve, 0), 'psi'), 5 + 1, 1e-9);
  });
});
