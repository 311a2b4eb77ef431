import { describe, expect, it } from 'vitest';
import { darcyWeisbachGradient } from '../../engine/hydraulics/darcy-weisbach.ts';
import { velocity } from '../../engine/hydraulics/velocity.ts';
import { waterAt } from '../../engine/hydraulics/water.ts';
import type { Device } from '../../engine/job/job.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { q } from '../jobs/written-job.ts';
import { numberIn, readData, wordIn } from './data/read-data.ts';
import { expectPrinted } from './expect-printed.ts';
import { type PrintedPipe, plugIn } from './plug-in.ts';

/** Inside diameters of copper tube by EN 1057 in the wall thicknesses of Table X, mm. */
const bores: Readonly<Record<string, number>> = { '15': 13.6, '22': 20.2, '28': 26.2 };
const rows = readData('bs-6700-table-d4.csv');
const roughness = 1.5e-6;
const water = waterAt(toSI(10, 'C'));

/** A valve that loses so much at a flow. */
function stopValve(flow: number, kilopascals: number): Device {
  return {
    device: 'other',
    name: 'stopvalves',
    curve: [{ flow: q(flow, 'm3/s'), loss: q(kilopascals, 'kPa') }],
  };
}

describe('BS 6700:2006, Table D.4: velocity and gradient of every row', () => {
  it('has 11 rows', () => expect(rows).toHaveLength(11));

  /** Read off a nomogram, to two digits: up to 9 % of velocity, the print’s bores being those of thicker walls. */
  it.each(rows)('$ref: $v_m_s m/s', (row) => {
    const bore = bores[wordIn(row, 'dn')]! / 1000;
    const printed = numberIn(row, 'v_m_s');
    expectPrinted(velocity.compute({ Q: numberIn(row, 'l_s') / 1000, d: bore }), printed, 0.09 * printed);
  });

  /** Darcy-Weisbach, drawn copper at 10 C, against the nomogram: 25 %, its reading and its bores together. */
  it.each(rows)('$ref: $kpa_m kPa/m', (row) => {
    const bore = bores[wordIn(row, 'dn')]! / 1000;
    const speed = velocity.compute({ Q: numberIn(row, 'l_s') / 1000, d: bore });
    const printed = numberIn(row, 'kpa_m');
    const computed = darcyWeisbachGradient(speed, bore, roughness, water.density, water.viscosity) / 1000;
    expectPrinted(computed, printed, 0.25 * printed);
    expect(computed, 'the nomogram errs to the safe side').toBeLessThan(printed);
  });
});

describe('BS 6700:2006, Table D.4: the chain of pressures', () => {
  /** kPa as metres of a water that weighs 1 kPa per metre. */
  const kilopascals = { density: 1000, viscosity: water.viscosity, gravity: 1 };
  const chain = (part: string): PrintedPipe[] =>
    rows
      .filter((row) => wordIn(row, 'part') === part)
      .map((row) => {
        const [from, to] = wordIn(row, 'ref').split('-');
        const flow = numberIn(row, 'l_s') / 1000;
        const valve = numberIn(row, 'valve_kpa');
        return {
          id: to!,
          from: from === '1' || from === 'C1' ? 'street' : from!,
          flow,
          length: numberIn(row, 'effective_m'),
          // The printed loss spread over the effective length: gradients are rounded harder than losses.
          gradient: (numberIn(row, 'pipe_kpa') * 1000) / numberIn(row, 'effective_m'),
          rise: -numberIn(row, 'drop_kpa'),
          ...(valve === 0 ? {} : { device: stopValve(flow, valve) }),
        };
      });
  const plugged = {
    A: plugIn(chain('A'), 300e3, 'hazen-williams', kilopascals),
    B: plugIn(chain('B'), 0, 'hazen-williams', kilopascals),
  };

  /** With the printed losses the arithmetic must close: half of the last digit in each row passed (1 and 0.1 kPa). */
  it.each(rows)('$ref: $residual_kpa kPa left', (row) => {
    const part = wordIn(row, 'part') as 'A' | 'B';
    const { solution, at } = plugged[part];
    const end = at(wordIn(row, 'ref').split('-')[1]!);
    expectPrinted(solution.residual[end]! / 1000, numberIn(row, 'residual_kpa'), 1e-6);
  });

  /** Gradient times effective length, which is 1.4 times the actual: half of the last digit of loss and of gradient. */
  it.each(rows)('$ref: $pipe_kpa kPa in the pipe', (row) => {
    const gradient = numberIn(row, 'kpa_m');
    const effective = numberIn(row, 'effective_m');
    expectPrinted(effective, 1.4 * numberIn(row, 'length_m'), 0.03);
    const digit = wordIn(row, 'part') === 'A' ? 0.5 : 0.05;
    const gradientDigit = wordIn(row, 'part') === 'A' ? 0.05 : 0.025;
    expectPrinted(gradient * effective, numberIn(row, 'pipe_kpa'), digit + gradientDigit * effective);
  });

  /** Surplus over what each fitting requires, where the table gives one. */
  it.each(rows.filter((row) => row.required_kpa !== ''))('$ref: $surplus_kpa kPa over', (row) => {
    const { solution, at } = plugged[wordIn(row, 'part') as 'A' | 'B'];
    const residual = solution.residual[at(wordIn(row, 'ref').split('-')[1]!)]! / 1000;
    expectPrinted(residual - numberIn(row, 'required_kpa'), numberIn(row, 'surplus_kpa'), 0.051);
  });
});
