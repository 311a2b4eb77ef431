import { describe, expect, it } from 'vitest';
import type { Device, Run } from '../../../engine/job/job.ts';
import { fixture, hot, job, psi, run } from '../../jobs/written-job.ts';
import { findingsOf } from './findings-of.ts';

const valve: Device = { device: 'reducing-valve', set: psi(60) };
const house = (
  service: Partial<Run>,
  added: readonly Run[] = [],
  heater: 'storage' | 'tankless' = 'storage',
) =>
  job(
    [fixture('sink', 'kitchen-sink', { inlets: 'hot' })],
    [
      { ...run('service', 'street'), ...service },
      run('line', 'service'),
      run('heater', 'line', { end: { device: 'heater', type: heater } }),
      run('hot', 'heater', { end: hot('sink') }),
      ...added,
    ],
  );
const tankAt = (from: string): Run => run('tank', from, { end: { device: 'expansion-tank' } });

describe('expansion-uncontrolled', () => {
  it.each<[string, Partial<Run>]>([
    ['a reducing valve', { end: valve }],
    ['a backflow assembly', { end: { device: 'backflow', type: 'double-check' } }],
    ['a check valve', { fittings: [{ kind: 'check-valve', count: 1 }] }],
  ])('behind %s without a tank', (_, service) => {
    expect(findingsOf('expansion-uncontrolled', house(service))).toMatchObject([
      { severity: 'error', run: 'service', heater: 'heater', mend: { do: 'add-expansion-tank' } },
    ]);
  });

  it('behind a check valve on the heater’s own supply, wherever the tank is then', () => {
    const shut: Partial<Run> = { fittings: [{ kind: 'check-valve', count: 1 }] };
    const own = (tank?: Run) => {
      const written = house({}, tank === undefined ? [] : [tank]);
      const runs = written.schemes[0]!.runs.map((each) =>
        each.id === 'heater' ? { ...each, ...shut } : each,
      );
      return { ...written, schemes: [{ id: 'only', name: 'Only', runs }] };
    };
    expect(findingsOf('expansion-uncontrolled', own())).toMatchObject([{ run: 'heater', heater: 'heater' }]);
    expect(findingsOf('expansion-uncontrolled', own(tankAt('line')))).toHaveLength(1);
    expect(findingsOf('expansion-uncontrolled', own(tankAt('heater')))).toHaveLength(1);
  });

  it('not with a tank between the valve and the heater, but with one on the hot side', () => {
    expect(findingsOf('expansion-uncontrolled', house({ end: valve }, [tankAt('line')]))).toEqual([]);
    expect(findingsOf('expansion-uncontrolled', house({ end: valve }, [tankAt('heater')]))).toHaveLength(1);
  });

  it('with the tank behind another check valve, where it cannot help', () => {
    const shut = run('shut', 'line', { fittings: { 'check-valve': 1 } });
    expect(findingsOf('expansion-uncontrolled', house({ end: valve }, [shut, tankAt('shut')]))).toHaveLength(
      1,
    );
  });

  it('not where water can pass back to the street', () => {
    expect(findingsOf('expansion-uncontrolled', house({}))).toEqual([]);
  });

  it('not with a tankless heater', () => {
    expect(findingsOf('expansion-uncontrolled', house({ end: valve }, [], 'tankless'))).toEqual([]);
  });
});
