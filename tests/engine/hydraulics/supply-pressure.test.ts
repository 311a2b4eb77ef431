import { describe, expect, it } from 'vitest';
import { supplyPressure, supplyStatic } from '../../../engine/hydraulics/supply-pressure.ts';
import type { Supply } from '../../../engine/job/job.ts';
import { fromSI, toSI } from '../../../tables/units/definitions.ts';
import { ft, gpm, psi } from '../../jobs/written-job.ts';

const elevation = ft(0);
const psiAt = (supply: Supply, flow: number): number =>
  fromSI(supplyPressure(supply, toSI(flow, 'gpm')), 'psi');
const stillPsi = (supply: Supply): number => fromSI(supplyStatic(supply), 'psi');

describe('static supply', () => {
  const supply: Supply = { kind: 'static', elevation, low: psi(50), high: psi(72) };
  it('gives its low under any flow and its high at rest', () => {
    expect(
      [psiAt(supply, 0), psiAt(supply, 40), stillPsi(supply)].map((p) => Math.round(p * 1e6) / 1e6),
    ).toEqual([50, 50, 72]);
  });
});

describe('well', () => {
  const supply: Supply = { kind: 'well', elevation, cutIn: psi(30), cutOut: psi(50) };
  it('gives its cut-in under flow and its cut-out at rest', () => {
    expect(psiAt(supply, 9)).toBeCloseTo(30, 9);
    expect(stillPsi(supply)).toBeCloseTo(50, 9);
  });
});

describe('flow test', () => {
  const supply: Supply = { kind: 'flow-test', elevation, static: psi(65), residual: psi(50), flow: gpm(40) };

  it('gives the two points of the test', () => {
    expect(psiAt(supply, 0)).toBeCloseTo(65, 9);
    expect(psiAt(supply, 40)).toBeCloseTo(50, 9);
  });

  /** 65 - 15 x 0.5^1.85; 0.5^1.85 is 0.27739. */
  it('droops with the 1.85th power', () => expect(psiAt(supply, 20)).toBeCloseTo(65 - 15 * 0.27739, 3));

  it('starts from the day’s low where it is known', () => {
    expect(psiAt({ ...supply, low: psi(58) }, 40)).toBeCloseTo(43, 9);
  });

  it('is at rest at the higher of the test’s static and the day’s high', () => {
    expect(stillPsi(supply)).toBeCloseTo(65, 9);
    expect(stillPsi({ ...supply, high: psi(74) })).toBeCloseTo(74, 9);
    expect(stillPsi({ ...supply, high: psi(60) })).toBeCloseTo(65, 9);
  });
});
