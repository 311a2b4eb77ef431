import { describe, expect, it } from 'vitest';
import { velocity } from '../../engine/hydraulics/velocity.ts';
import { manifoldCapacity as ipcManifolds } from '../../tables/ipc-2018/manifold-capacity.ts';
import { manifoldCapacity as ircManifolds } from '../../tables/irc-2021/manifold-capacity.ts';
import { lookUp } from '../../tables/look-up.ts';
import { steelThreadedLengths } from '../../tables/pipe/fitting-lengths/steel-threaded.ts';
import { fromSI, toSI } from '../../tables/units/definitions.ts';
import { numberIn, readData, wordIn } from './data/read-data.ts';
import { expectPrinted } from './expect-printed.ts';
import { boreOf } from './gradients.ts';

/** Content of a pipe as the engine has it (flow over velocity), US fluid ounces per foot. */
function ouncesPerFoot(bore: number): number {
  return fromSI(1 / velocity.compute({ Q: 1, d: bore }), 'floz/ft');
}

describe('content of pipes, US fl oz per foot, US Department of Energy problem set after IPC 2009 Table E202.1', () => {
  const columns = [
    ['copper-m', [1.06, 1.69, 3.43, 5.81, 8.7, 12.18, 21.08]],
    ['copper-l', [0.97, 1.55, 3.22, 5.49, 8.36, 11.83, 20.58]],
    ['copper-k', [0.84, 1.45, 2.9, 5.17, 8.09, 11.45, 20.04]],
    // 1 in is left to disagreements.test.ts.
    ['pex', [0.64, 1.18, 2.35, undefined, 5.81, 8.09, 13.86]],
    // The table’s column of CPVC schedule 40, which has the dimensions of PVC schedule 40.
    ['pvc', [undefined, 1.89, 3.38, 5.53, 9.66, 13.2, 21.88]],
  ] as const;
  const sizes = ['3/8', '1/2', '3/4', '1', '1-1/4', '1-1/2', '2'];
  const cells = columns.flatMap(([material, values]) =>
    values.flatMap((printed, at) => (printed === undefined ? [] : [{ material, size: sizes[at]!, printed }])),
  );

  it('has 33 cells', () => expect(cells).toHaveLength(33));

  /** Half of the last digit, and half a thousandth of an inch of bore, the digit to which bores are printed. */
  it.each(cells)('$material $size in: $printed', ({ material, size, printed }) => {
    const bore = boreOf(material, size);
    expectPrinted(ouncesPerFoot(bore), printed, 0.005 + (2 * 0.0005 * 0.0254 * printed) / bore);
  });

  /** Manufacturer’s design manual A (2014), page 137: gallons per 100 ft of PEX. Half of the last digit. */
  it.each([
    ['1/2', 0.92],
    ['5/8', 1.34],
    ['1', 3.04],
  ])('PEX %s in: %f gal per 100 ft', (size, printed) => {
    expectPrinted((ouncesPerFoot(boreOf('pex', size)) * 100) / 128, printed, 0.005);
  });
});

describe('threaded steel fittings, IRC 2018 Table A.2.2: L/D times the bore', () => {
  const ratios = [
    ['ell-45', 'ell45', 14],
    ['ell', 'ell90', 30],
    ['tee-branch', 'tee_branch', 60],
  ] as const;
  const cells = readData('threaded-steel-lengths.csv').flatMap((row) =>
    ratios.map(([kind, column, ratio]) => ({
      size: wordIn(row, 'size'),
      kind,
      ratio,
      printed: numberIn(row, column),
    })),
  );

  /** The bore of our steel pipe times the L/D that the table prints; half of the last of three digits, and 0.2 %, for
   * some cells are multiples of others already rounded. */
  it.each(cells)('$kind $size in: $printed ft', ({ size, ratio, printed }) => {
    const feet = fromSI(boreOf('galvanized', size) * ratio, 'ft');
    expectPrinted(feet, printed, (printed < 10 ? 0.005 : 0.05) + 0.002 * printed);
  });

  it.each(cells)('$kind $size in stands so in our table', ({ size, kind, printed }) => {
    expect(lookUp(steelThreadedLengths, size, kind).printed).toBe(printed);
  });
});

describe('capacity of manifolds: velocity times the area of the nominal size (figures from memory)', () => {
  /** Half of a gallon: the tables print whole gallons. IPC 2018 Table 604.10.1 at 8 ft/s. */
  it.each([
    ['1/2', 0.5],
    ['3/4', 0.75],
    ['1', 1],
    ['1-1/4', 1.25],
    ['1-1/2', 1.5],
  ] as const)('IPC %s in', (size, inches) => {
    const area = 1 / velocity.compute({ Q: 1, d: toSI(inches, 'in') });
    const flow = fromSI(area * toSI(8, 'ft/s'), 'gpm');
    expectPrinted(flow, lookUp(ipcManifolds, size, 'plastic').printed, 0.5);
    expectPrinted(flow, lookUp(ipcManifolds, size, 'metallic').printed, 0.5);
  });

  /** IRC 2021 Table P2903.8.1: plastic at 12 ft/s, metallic at 8 ft/s. 3/4 in plastic rounds up past a half. */
  it.each([
    ['3/4', 0.75],
    ['1', 1],
    ['1-1/4', 1.25],
    ['1-1/2', 1.5],
  ] as const)('IRC %s in', (size, inches) => {
    const area = 1 / velocity.compute({ Q: 1, d: toSI(inches, 'in') });
    const plastic = fromSI(area * toSI(12, 'ft/s'), 'gpm');
    const metallic = fromSI(area * toSI(8, 'ft/s'), 'gpm');
    expectPrinted(plastic, lookUp(ircManifolds, size, 'plastic').printed, 0.5);
    expectPrinted(metallic, lookUp(ircManifolds, size, 'metallic').printed, 0.5);
  });
});
