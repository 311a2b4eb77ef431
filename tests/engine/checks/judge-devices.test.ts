import { describe, expect, it } from 'vitest';
import type { Device, Supply } from '../../../engine/job/job.ts';
import { fromSI } from '../../../tables/units/definitions.ts';
import { fixture, ft, gpm, psi } from '../../jobs/written-job.ts';
import { findingsOf, quietBut } from './findings-of.ts';

const through = (end: Device, flow: number) =>
  quietBut({ service: { end } }, [], { fixtures: [fixture('closet', 'hose-bibb', { flow: gpm(flow) })] });

describe('meter-over-maximum', () => {
  /** Meter sheet after AWWA: a 5/8 in meter passes 20 gpm at most. */
  it('over 20 gpm in a 5/8 in meter', () => {
    const meter = { device: 'meter', size: '5/8' } as const;
    const [found] = findingsOf('meter-over-maximum', through(meter, 20.1));
    expect(found).toMatchObject({ severity: 'error', run: 'service', size: '5/8' });
    expect(fromSI(found!.limit, 'gpm')).toBeCloseTo(20, 9);
    expect(findingsOf('meter-over-maximum', through(meter, 20))).toEqual([]);
    expect(findingsOf('meter-over-maximum', through({ device: 'meter', size: '3/4' }, 20.1))).toEqual([]);
  });
});

describe('curve-exceeded', () => {
  const curve = [
    { flow: gpm(2), loss: psi(1) },
    { flow: gpm(8), loss: psi(6) },
  ];
  it('beyond the last point of a curve', () => {
    expect(findingsOf('curve-exceeded', through({ device: 'filter', curve }, 8.1))).toMatchObject([
      { severity: 'warning', run: 'service' },
    ]);
    expect(findingsOf('curve-exceeded', through({ device: 'filter', curve }, 8))).toEqual([]);
  });
  it('beyond the only point of a curve', () => {
    const [only] = curve;
    expect(findingsOf('curve-exceeded', through({ device: 'filter', curve: [only!] }, 2.1))).toHaveLength(1);
    expect(findingsOf('curve-exceeded', through({ device: 'filter', curve: [only!] }, 2))).toEqual([]);
  });
  it('beyond the curve of a meter that its maker allows more', () => {
    const meter = { device: 'meter', size: '5/8', curve } as const;
    expect(findingsOf('curve-exceeded', through(meter, 9))).toHaveLength(1);
    expect(findingsOf('curve-exceeded', through(meter, 8))).toEqual([]);
  });
  it('not for a valve given by its Cv, which holds at any flow', () => {
    expect(findingsOf('curve-exceeded', through({ device: 'mixing-valve', cv: 1 }, 15))).toEqual([]);
  });
});

describe('pump-short', () => {
  const well = (pump: number): { supply: Supply } => ({
    supply: { kind: 'well', elevation: ft(0), cutIn: psi(40), cutOut: psi(60), pumpFlow: gpm(pump) },
  });
  it('where the service asks more than the pump gives', () => {
    expect(findingsOf('pump-short', quietBut({}, [], well(2.9)))).toMatchObject([
      { severity: 'warning', run: 'service' },
    ]);
    expect(findingsOf('pump-short', quietBut({}, [], well(3)))).toEqual([]);
    expect(findingsOf('pump-short', quietBut({}))).toEqual([]);
  });
});

describe('street-beyond-test', () => {
  const tested = (flow: number) =>
    findingsOf(
      'street-beyond-test',
      quietBut({}, [], {
        supply: { kind: 'flow-test', elevation: ft(0), static: psi(70), residual: psi(60), flow: gpm(flow) },
      }),
    );

  it('where the service draws more than the street was tested at: a closet, 3 gpm', () => {
    expect(tested(2.9)).toMatchObject([{ severity: 'warning', run: 'service' }]);
    expect(tested(3)).toEqual([]);
  });
});

describe('demand-beyond-table', () => {
  /** The IPC’s table ends at 5000 units; a public tank closet has 5. */
  const hall = (count: number) =>
    quietBut({}, [], { fixtures: [fixture('closet', 'water-closet-tank', { use: 'public', count })] });
  it('over the last row', () => {
    expect(findingsOf('demand-beyond-table', hall(1001))).toMatchObject([
      { run: 'service', units: 5005, limit: 5000 },
    ]);
    expect(findingsOf('demand-beyond-table', hall(1000))).toEqual([]);
  });
});
