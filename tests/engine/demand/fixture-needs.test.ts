import { describe, expect, it } from 'vitest';
import { requiredFlow, requiredPressure, sidesOf } from '../../../engine/demand/fixture-needs.ts';
import { fixtureUnits } from '../../../engine/demand/unit-count.ts';
import { profiles } from '../../../tables/profiles.ts';
import { fromSI } from '../../../tables/units/definitions.ts';
import { fixture, gpm, psi } from '../../jobs/written-job.ts';

const ipc = profiles['ipc-2018'];
const irc = profiles['irc-2021'];

describe('sides', () => {
  it('are the kind’s, or the job’s', () => {
    expect(sidesOf(fixture('a', 'lavatory'))).toEqual(['cold', 'hot']);
    expect(sidesOf(fixture('a', 'dishwasher'))).toEqual(['hot']);
    expect(sidesOf(fixture('a', 'lavatory', { inlets: 'cold' }))).toEqual(['cold']);
  });
});

describe('flow and pressure', () => {
  /** IPC 2018 Table 604.3: shower, balanced-pressure: 2.5 gpm, 20 psi. */
  it('are the code’s', () => {
    const flow = requiredFlow(ipc, fixture('a', 'shower'));
    const pressure = requiredPressure(ipc, fixture('a', 'shower'));
    expect(fromSI(flow.value, 'gpm')).toBeCloseTo(2.5, 9);
    expect(fromSI(pressure.value, 'psi')).toBeCloseTo(20, 9);
    expect(flow.from).toMatchObject({ printed: 2.5 });
  });

  it('or the maker’s', () => {
    const rain = fixture('a', 'shower', { flow: gpm(3.5), pressure: psi(30) });
    expect(requiredFlow(ipc, rain)).toEqual({ value: gpm(3.5).si, from: 'maker' });
    expect(requiredPressure(ipc, rain)).toEqual({ value: psi(30).si, from: 'maker' });
  });
});

describe('fixture units', () => {
  const printed = (units: ReturnType<typeof fixtureUnits>) => ({
    cold: units?.sides.cold?.printed,
    hot: units?.sides.hot?.printed,
    total: units?.total.printed,
  });

  it('are the printed three of a fixture on both sides', () => {
    expect(printed(fixtureUnits(ipc, fixture('a', 'lavatory')))).toEqual({ cold: 0.5, hot: 0.5, total: 0.7 });
    const office = fixture('a', 'lavatory', { use: 'public' });
    expect(printed(fixtureUnits(ipc, office))).toEqual({ cold: 1.5, hot: 1.5, total: 2 });
  });

  it('are the total on the one side that is piped', () => {
    const basin = fixture('a', 'lavatory', { inlets: 'cold' });
    expect(printed(fixtureUnits(ipc, basin))).toEqual({ cold: 0.7, hot: undefined, total: 0.7 });
  });

  it('are none where the fixture runs for long, by its kind, the job or the code', () => {
    expect(fixtureUnits(ipc, fixture('a', 'irrigation'))).toBeUndefined();
    expect(fixtureUnits(ipc, fixture('a', 'lavatory', { continuous: true }))).toBeUndefined();
    expect(fixtureUnits(ipc, fixture('a', 'hose-bibb'))).toBeUndefined();
    expect(fixtureUnits(irc, fixture('a', 'hose-bibb'))?.total.printed).toBe(2.5);
  });
});
