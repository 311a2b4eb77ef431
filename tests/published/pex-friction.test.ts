import { describe, expect, it } from 'vitest';
import { numberIn, readData, wordIn } from './data/read-data.ts';
import { expectPrinted } from './expect-printed.ts';
import { boreOf, darcyWeisbachPsi, hazenWilliamsPsi } from './gradients.ts';

describe('PEX SDR-9, manufacturer’s design manual A (2014), page 137', () => {
  /**
   * C = 150 is not stated; it reproduces the page. The 5/8 in column is left out: it jumps (0.050 psi/ft at 3 gpm, 0.080
   * at 3.5 gpm, where the other columns rise by a third) and stands in disagreements.test.ts.
   */
  const rows = readData('pex-manual-a.csv').filter((row) => wordIn(row, 'size') !== '5/8');

  /** Half of the last digit (0.001 psi/ft), and half a percent, by which printings of Hazen-Williams differ. */
  const allowed = (printed: number): number => 0.05 + 0.005 * printed;

  it('has 51 points', () => expect(rows).toHaveLength(51));

  it.each(rows)('$size in, $gpm gpm: $psi_per_100ft psi per 100 ft', (row) => {
    const printed = numberIn(row, 'psi_per_100ft');
    const bore = boreOf('pex', wordIn(row, 'size'));
    expectPrinted(hazenWilliamsPsi(bore, numberIn(row, 'gpm'), 150), printed, allowed(printed));
  });

  it.each(rows.filter((row) => wordIn(row, 'gpm') === '1'))('$size in: bore $bore_in in', (row) => {
    expectPrinted(boreOf('pex', wordIn(row, 'size')) / 0.0254, numberIn(row, 'bore_in'), 0.0005);
  });
});

describe('PEX SDR-9 2-1/2 in by temperature, manufacturer’s design manual B (2015), page 99', () => {
  const temperatures = [60, 80, 100, 120, 140, 160, 180] as const;
  const points = readData('pex-manual-b.csv').flatMap((row) =>
    temperatures.map((temperature) => ({
      gpm: numberIn(row, 'gpm'),
      temperature,
      printed: numberIn(row, `f${temperature}`),
    })),
  );

  it('has 231 points', () => expect(points).toHaveLength(231));

  /**
   * A smooth wall reproduces the page. Half of the last digit (0.01 psi), and 0.2 %: the table of water is read by
   * straight lines between rows 5 K apart. The 40 F column is in disagreements.test.ts.
   */
  it.each(points)('$gpm gpm at $temperature F: $printed psi per 100 ft, smooth wall', (point) => {
    const { gpm, temperature, printed } = point;
    const computed = darcyWeisbachPsi(boreOf('pex', '2-1/2'), gpm, 0, temperature);
    expectPrinted(computed, printed, 0.005 + 0.002 * printed);
  });

  /** Our tables give PEX a roughness of 1.5 um, which costs 0.6 to 1.2 % here: no more than that is allowed. */
  it.each(points)('$gpm gpm at $temperature F: $printed psi per 100 ft, roughness of our table', (point) => {
    const { gpm, temperature, printed } = point;
    const computed = darcyWeisbachPsi(boreOf('pex', '2-1/2'), gpm, 1.5e-6, temperature);
    expectPrinted(computed, printed, 0.005 + 0.013 * printed);
  });

  it.each(readData('pex-manual-b.csv'))('$ft_per_s ft/s is $gpm gpm', (row) => {
    const bore = boreOf('pex', '2-1/2') / 0.0254;
    // gpm = 2.448 v d^2; half of the last digit of the flow, and of the bore's third decimal.
    const gpm = (numberIn(row, 'ft_per_s') * bore * bore * (Math.PI / 4) * 12 * 60) / 231;
    expectPrinted(gpm, numberIn(row, 'gpm'), 0.006 + 0.0005 * gpm);
  });
});

describe('PEX SDR-9, retailer’s data sheet in county records (2018)', () => {
  /** 3/8 in has three points and fits no temperature that fits the others: disagreements.test.ts. */
  const rows = readData('pex-county-sheet.csv').filter((row) => wordIn(row, 'size') !== '3/8');

  it('has 42 points', () => expect(rows).toHaveLength(42));

  /**
   * The sheet states no law and no temperature; smooth-wall Darcy-Weisbach at 120 F on the average bore comes nearest
   * of the temperatures tried. 7 % and half of the last digit: the sheet’s points scatter by as much about any one
   * temperature.
   */
  it.each(rows)('$size in, $gpm gpm: $psi_per_100ft psi per 100 ft at 120 F', (row) => {
    const printed = numberIn(row, 'psi_per_100ft');
    const computed = darcyWeisbachPsi(boreOf('pex', wordIn(row, 'size')), numberIn(row, 'gpm'), 0, 120);
    expectPrinted(computed, printed, 0.005 + 0.07 * printed);
  });

  /**
   * How steeply loss grows with flow does not hang on the temperature much: from 3 gpm to the last row the sheet has an
   * exponent that only a law with a Reynolds number gives (Hazen-Williams: 1.852 whatever the flow). 0.03 covers the
   * sheet’s third digit over the span of flows.
   */
  it.each(['1/2', '5/8', '3/4', '1'])('%s in: exponent of flow', (size) => {
    const column = rows.filter((row) => wordIn(row, 'size') === size && numberIn(row, 'gpm') >= 3);
    const first = column[0]!;
    const last = column.at(-1)!;
    const flows = numberIn(last, 'gpm') / numberIn(first, 'gpm');
    const printed =
      Math.log(numberIn(last, 'psi_per_100ft') / numberIn(first, 'psi_per_100ft')) / Math.log(flows);
    const loss = (gpm: number): number => darcyWeisbachPsi(boreOf('pex', size), gpm, 0, 120);
    const computed = Math.log(loss(numberIn(last, 'gpm')) / loss(numberIn(first, 'gpm'))) / Math.log(flows);
    expect(printed).toBeLessThan(1.82);
    expectPrinted(computed, printed, 0.03);
  });
});
