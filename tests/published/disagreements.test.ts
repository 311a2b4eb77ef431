import { describe, expect, it } from 'vitest';
import { demandColumnOf, flowOfUnits } from '../../engine/demand/demand-table.ts';
import { frictionFactor, laminarTo, turbulentFrom } from '../../engine/hydraulics/colebrook.ts';
import { lossAt } from '../../engine/hydraulics/curve.ts';
import { darcyWeisbachGradient } from '../../engine/hydraulics/darcy-weisbach.ts';
import { deviceCurve } from '../../engine/hydraulics/device-curve.ts';
import { hazenWilliams } from '../../engine/hydraulics/hazen-williams.ts';
import { velocity } from '../../engine/hydraulics/velocity.ts';
import { demandTank } from '../../tables/ipc-2018/demand.ts';
import { fromSI, toSI } from '../../tables/units/definitions.ts';
import type { CsvRow } from '../tables/second-reading/read-csv.ts';
import { numberIn, readData, wordIn } from './data/read-data.ts';
import { apart } from './expect-printed.ts';
import { boreOf, darcyWeisbachHead, darcyWeisbachPsi, hazenWilliamsPsi } from './gradients.ts';
import { statedBores } from './stated-bores.ts';

/**
 * Published figures that the engine does not meet within their print’s digits, with how far it is off. They are not
 * tuned away: where a range here no longer holds, either the engine or a table has changed.
 */

/** Expects (computed - printed) / printed to lie within a range, each end in percent and met within half of one. */
function expectApart(shares: readonly number[], leastPercent: number, mostPercent: number): void {
  const least = 100 * Math.min(...shares);
  const most = 100 * Math.max(...shares);
  expect(Math.abs(least - leastPercent), `least ${least} %`).toBeLessThanOrEqual(0.5);
  expect(Math.abs(most - mostPercent), `most ${most} %`).toBeLessThanOrEqual(0.5);
}

const psiRows = (file: string, keep: (row: CsvRow) => boolean): CsvRow[] => readData(file).filter(keep);
const printedPsi = (row: CsvRow): number => numberIn(row, 'psi_per_100ft');

describe('friction of PEX', () => {
  /**
   * Manual A (2014), 5/8 in: the column jumps between two curves (0.050 psi/ft at 3 gpm, 0.080 at 3.5 gpm, 0.181 at 6,
   * 0.287 at 7): an error of the print, whose other columns the engine meets.
   */
  it('manual A, 5/8 in: nearly 20 % under the heavier of its two curves, 3 to 9 % under the lighter', () => {
    const rows = psiRows('pex-manual-a.csv', (row) => wordIn(row, 'size') === '5/8');
    const share = (row: CsvRow): number =>
      apart(hazenWilliamsPsi(boreOf('pex', '5/8'), numberIn(row, 'gpm'), 150), printedPsi(row));
    const light = new Set([1, 1.5, 3, 6]);
    expectApart(rows.filter((row) => !light.has(numberIn(row, 'gpm'))).map(share), -19.7, -17.4);
    expectApart(rows.filter((row) => light.has(numberIn(row, 'gpm'))).map(share), -9.4, -3);
  });

  /** Retailer’s sheet (2018): no temperature stated. What fits it best is warm water, 120 F; ours is 60 F cold. */
  it('county sheet, 2 gpm and more: cold water at 60 F loses 7 to 27 % more', () => {
    const rows = psiRows('pex-county-sheet.csv', (row) => numberIn(row, 'gpm') >= 2);
    const shares = rows.map((row) => {
      const computed = darcyWeisbachPsi(boreOf('pex', wordIn(row, 'size')), numberIn(row, 'gpm'), 1.5e-6, 60);
      return apart(computed, printedPsi(row));
    });
    expectApart(shares, 7.2, 27.3);
  });

  /** The same sheet, 3/8 in, 120 F: it is the one size that fits another temperature, near 90 F. */
  it('county sheet, 3/8 in: 7 to 11 % under it at the temperature of the others', () => {
    const rows = psiRows('pex-county-sheet.csv', (row) => wordIn(row, 'size') === '3/8');
    const shares = rows.map((row) =>
      apart(darcyWeisbachPsi(boreOf('pex', '3/8'), numberIn(row, 'gpm'), 0, 120), printedPsi(row)),
    );
    expectApart(shares, -11, -7.4);
  });

  /** Manual B (2015), 40 F: the seven other columns fit a smooth wall to their last digit; this one is heavier. */
  it('manual B at 40 F: 5 to 7 % under the print', () => {
    const shares = readData('pex-manual-b.csv').map((row) =>
      apart(darcyWeisbachPsi(boreOf('pex', '2-1/2'), numberIn(row, 'gpm'), 0, 40), numberIn(row, 'f40')),
    );
    expectApart(shares, -7, -4.8);
  });
});

describe('friction of other pipe', () => {
  /**
   * Irrigation tutorial page: with C = 140 its other columns fit ASTM B88; these fit bores of 0.517, 0.737, 0.986 (K)
   * and 0.542 in (L), which no edition has. Below 1 psi per 100 ft its digits are too few.
   */
  it.each([
    ['k', '1/2', -9.2, -8.9],
    ['k', '3/4', -6.1, -4.8],
    ['k', '1', -5, 0.4],
    ['l', '1/2', -2.7, -2.6],
  ])('copper %s %s in', (type, size, least, most) => {
    const rows = psiRows(
      'copper-k-and-l.csv',
      (row) => wordIn(row, 'type') === type && wordIn(row, 'size') === size && printedPsi(row) >= 1,
    );
    const bore = boreOf(`copper-${type}` as 'copper-k', size);
    expectApart(
      rows.map((row) => apart(hazenWilliamsPsi(bore, numberIn(row, 'gpm'), 140), printedPsi(row))),
      least,
      most,
    );
  });

  /** CPVC guide (2013), 2 in: the size fits C = 147 where the guide says 150 and its other sizes fit 150. */
  it('CPVC 2 in: 3 to 4 % under the guide', () => {
    const rows = psiRows('cpvc-guide.csv', (row) => wordIn(row, 'size') === '2');
    const bore = statedBores(rows).get('2')!;
    const shares = rows.map((row) =>
      apart(hazenWilliamsPsi(bore, numberIn(row, 'gpm'), 150), printedPsi(row)),
    );
    expectApart(shares, -4, -3.3);
  });

  /** CPVC guide (2013): its bores are near the largest permitted, ours the average: friction differs by 6 to 17 %. */
  it('CPVC on the average bore: 6 to 17 % over the guide', () => {
    const rows = psiRows('cpvc-guide.csv', (row) => wordIn(row, 'size') !== '2');
    const shares = rows.map((row) =>
      apart(
        hazenWilliamsPsi(boreOf('cpvc', wordIn(row, 'size')), numberIn(row, 'gpm'), 150),
        printedPsi(row),
      ),
    );
    expectApart(shares, 5.9, 16.6);
  });

  /**
   * Data book (2025), steel 1/2 in at 1 gpm: Re 4500 in rough pipe by its own numbers would lose 1.39 ft; it prints
   * 1.86, more than a third over Colebrook, and its next row fits again.
   */
  it('steel 1/2 in at 1 gpm: a quarter under the data book', () => {
    const head = darcyWeisbachHead(boreOf('galvanized', '1/2'), 1, toSI(0.00015, 'ft'), 60);
    expectApart([apart(head, 1.86)], -25.5, -25.5);
  });

  /**
   * Between Re 2000 and 4000 no law holds: the library (fluids 1.0.22) goes over to Colebrook at 2040, the engine takes
   * a straight line, so that loss has no jump. There is no loss to speak of at such flows (at most 90 Pa/m here).
   */
  it('transition: up to a third under Colebrook', () => {
    const rows = readData('pipe-points.csv').filter(
      (row) => numberIn(row, 're') > laminarTo && numberIn(row, 're') < turbulentFrom,
    );
    const shares = rows.map((row) => {
      const bore = toSI(numberIn(row, 'bore_in'), 'in');
      const f = frictionFactor(numberIn(row, 're'), numberIn(row, 'roughness_m') / bore);
      expect(numberIn(row, 'pa_per_m')).toBeLessThan(90);
      return apart(f, numberIn(row, 'f'));
    });
    expectApart(shares, -31.3, -7.5);
  });

  /** Laboratory exercise (textbook vignette): 25 mm, 3 m; roughness from the first reading, by Colebrook. */
  it('laboratory pipe: Colebrook makes the third reading 4 % too high', () => {
    const head = (litres: number, roughness: number): number => {
      const speed = velocity.compute({ Q: litres / 1000, d: 0.025 });
      return (3 * darcyWeisbachGradient(speed, 0.025, roughness, 998.2, 0.001002)) / (998.2 * 9.81);
    };
    let low = 0;
    let high = 0.00125;
    for (let turn = 0; turn < 60; turn++) {
      const middle = (low + high) / 2;
      if (head(0.2, middle) < 0.052) low = middle;
      else high = middle;
    }
    expect(low).toBeLessThan(0.00124);
    expectApart([apart(head(0.3, low), 0.11)], 3.9, 3.9);
  });

  /**
   * Printings of Hazen-Williams part with the bore: ours has d^4.8655 (inches), the SI one 10.67 and D^4.8704. Within
   * the sizes of a building by half a percent to 1.2 %, in a main of 18 in by 2.4 %.
   */
  it.each([
    ['1/2 in PEX', 0.475, 0.6],
    ['1 in copper', 1.025, 1],
    ['2-1/2 in copper', 2.465, 1.4],
    ['18 in main', 18, 2.4],
  ])('%s: over the SI printing', (_, inches, percent) => {
    const ours = hazenWilliams.compute({ Q: 10, C: 140, d: inches }) / 100;
    const printed = (10.67 * toSI(10, 'gpm') ** 1.852) / (140 ** 1.852 * toSI(inches, 'in') ** 4.8704);
    expectApart([apart(ours, printed)], percent, percent);
  });
});

describe('contents', () => {
  const ounces = (bore: number): number => fromSI(1 / velocity.compute({ Q: 1, d: bore }), 'floz/ft');

  /** DOE problem set after IPC 2009 Table E202.1: its 3.91 fl oz/ft would be a bore of 0.865 in; makers print 0.863. */
  it('PEX 1 in: half a percent under the code’s table', () => {
    expectApart([apart(ounces(boreOf('pex', '1')), 3.91)], -0.5, -0.5);
  });

  /** Manual A prints 1.82 gal per 100 ft for 3/4 in, where its own bore of 0.671 in holds 1.84. */
  it('PEX 3/4 in: 1 % over manual A', () => {
    expectApart([apart((ounces(boreOf('pex', '3/4')) * 100) / 128, 1.82)], 0.9, 0.9);
  });

  /** The same table: CPVC by nearly the largest bore, ours is the average one. */
  it('CPVC: 2 to 8 % under the code’s table', () => {
    const printed = { '1/2': 1.25, '3/4': 2.67, '1': 4.43, '1-1/4': 6.61, '1-1/2': 9.22, '2': 15.79 };
    const shares = Object.entries(printed).map(([size, value]) => apart(ounces(boreOf('cpvc', size)), value));
    expectApart(shares, -8, -2.7);
  });
});

describe('devices', () => {
  /** Manual B (2015): three rows whose length does not follow from their Cv as the 29 others do. */
  it.each([
    ['3 outlets(1in) 2x2', 'through', 21],
    ['6 outlets 3/4x3/4', 'through', -31.9],
    ['vertical tee 3/4', 'side to outlet 2', 16.5],
  ])('multiport tee, %s, %s', (fitting, path, percent) => {
    const row = readData('multiport-tees.csv').find(
      (each) => each.fitting === fitting && each.path === path,
    )!;
    const bore = boreOf('pex', wordIn(row, 'size_used'));
    const gpm = fromSI(toSI(8, 'ft/s') / velocity.compute({ Q: 1, d: bore }), 'gpm');
    const feet = (gpm / numberIn(row, 'cv')) ** 2 / (darcyWeisbachPsi(bore, gpm, 0, 60) / 100);
    expectApart([apart(feet, numberIn(row, 'feet'))], percent, percent);
  });

  /** Louisiana Administrative Code, Table 1805.A: 11 psi in a 2 in meter at 108 gpm; the meter sheet we use has less. */
  it('2 in meter at 108 gpm: a sixth under the example of the code', () => {
    const loss = lossAt(deviceCurve({ device: 'meter', size: '2' }, '2'), toSI(108, 'gpm'));
    expectApart([apart(fromSI(loss, 'psi'), 11)], -16.7, -16.7);
  });
});

describe('demand', () => {
  const tank = demandColumnOf(demandTank);
  const gpmOf = (units: number): number => fromSI(flowOfUnits(tank, units, false), 'gpm');

  /** Illinois Table N has its own rows at 500 and 600 units; the International curve bends otherwise there. */
  it('600 units: 2 % under Illinois', () => {
    expectApart([apart(gpmOf(500), 125), apart(gpmOf(600), 145)], -1.8, -0.8);
  });

  /** Illinois Table N and NSPC Table B.5.4 below 60 units: curves of their own, with units of their own. */
  it('10 units on tanks: 83 % over Illinois and the National Standard', () => {
    expectApart([apart(gpmOf(10), 8)], 82.5, 82.5);
  });

  it('20 and 30 units: 40 and 17 % over Illinois', () => {
    expectApart([apart(gpmOf(20), 14), apart(gpmOf(30), 20)], 16.5, 40);
  });

  /**
   * Both prints of the factory example add the cold and the hot column at the service (264 + 24 = 288); the engine
   * counts each fixture once, by its total (2 x (12 x 10 + 8 x 2) = 272): 104.5 gpm in place of 108 when rounded up.
   */
  it('service of the factory: 272 units for the printed 288', () => {
    expectApart([apart(2 * (12 * 10 + 8 * 2), 264 + 24)], -5.6, -5.6);
  });

  /**
   * The IPC print (from memory) reads hot pipes from the valve column although no flushometer is on hot water; the
   * engine reads them from the tank column, as the National Standard allows: 24 units are 21.5 gpm rounded up, not 38.
   */
  it('hot pipes of the factory: 43 % under the print', () => {
    expectApart([apart(fromSI(flowOfUnits(tank, 24, true), 'gpm'), 38)], -43.4, -43.4);
  });
});
