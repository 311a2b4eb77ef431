import { describe, expect, it } from 'vitest';
import { type FixtureKind, type FixtureKindId, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import type { Profile } from '../../tables/profile.ts';
import { profiles } from '../../tables/profiles.ts';

const kinds = Object.keys(fixtureKinds) as FixtureKindId[];

describe.each(Object.entries(profiles) as [string, Profile][])('%s', (_, profile) => {
  it('maps every kind of fixture, and no other', () => {
    expect(Object.keys(profile.fixtureRows).sort()).toEqual([...kinds].sort());
  });

  it.each(kinds)('maps %s to rows that exist', (kind) => {
    const { units, outlet, supply } = profile.fixtureRows[kind];
    for (const row of [units.private, units.public]) {
      if (row !== null) expect(Object.keys(profile.fixtureUnits.rows)).toContain(row);
    }
    expect(Object.keys(profile.outlets.rows)).toContain(outlet);
    if (supply !== null) expect(Object.keys(profile.supplySizes.rows)).toContain(supply);
  });

  it.each(kinds)('has the columns of the inlets of %s', (kind) => {
    const { inlets, continuous }: FixtureKind = fixtureKinds[kind];
    const { units, note } = profile.fixtureRows[kind];
    for (const row of [units.private, units.public]) {
      if (row === null) {
        expect(note, 'a kind without units says why').toBeDefined();
        continue;
      }
      expect(continuous, 'a continuous flow has no units').toBeUndefined();
      const { cold, hot, total } = profile.fixtureUnits.rows[row]!.values;
      expect(total).toBeGreaterThan(0);
      if (inlets !== 'hot') expect(cold).toBeGreaterThan(0);
      if (inlets !== 'cold') expect(hot).toBeGreaterThan(0);
      if (inlets === 'hot') expect(cold).toBeUndefined();
    }
  });

  it('gives flow and pressure in every outlet row, and a size in every supply row', () => {
    for (const { values } of Object.values(profile.outlets.rows)) {
      expect(values.flow).toBeGreaterThan(0);
      expect(values.pressure).toBeGreaterThan(0);
    }
    for (const { values } of Object.values(profile.supplySizes.rows)) expect(values.size).toBeGreaterThan(0);
  });

  it('has the three values of every group it prints', () => {
    for (const { tank, valve } of Object.values(profile.groupRows)) {
      for (const row of [tank, valve]) {
        if (row === null) continue;
        const { cold, hot, total } = profile.fixtureUnits.rows[row]!.values;
        expect(Math.max(cold!, hot!)).toBeLessThan(total!);
        expect(cold! + hot!).toBeGreaterThan(total!);
      }
    }
  });

  /** Footnote a of IPC Table E103.3(2): hot and cold apart are three quarters of the total; print rounds it. */
  it('has parts of three quarters of the total where a single fixture takes hot and cold', () => {
    const both = Object.entries(profile.fixtureUnits.rows).filter(
      ([name, { values }]) =>
        values.cold !== undefined && values.hot !== undefined && !name.includes('group'),
    );
    expect(both.length).toBeGreaterThanOrEqual(6);
    for (const [name, { values }] of both) {
      expect(values.cold, name).toBe(values.hot);
      expect(Math.abs(values.cold! - 0.75 * values.total!), name).toBeLessThanOrEqual(0.0501);
    }
  });

  it('has manifold capacities of 8 ft/s in metal through the area of the nominal size', () => {
    const { manifoldCapacity } = profile;
    const inches = { '1/2': 0.5, '3/4': 0.75, '1': 1, '1-1/4': 1.25, '1-1/2': 1.5 } as Record<string, number>;
    for (const [size, { values }] of Object.entries(manifoldCapacity.rows)) {
      // Written out: 8 ft/s x (pi / 4) d^2 / 144 ft2 x 7.48052 gal/ft3 x 60 s/min, within the rounding of the print.
      const gpm = 8 * (Math.PI / 4) * (inches[size]! ** 2 / 144) * 7.48052 * 60;
      expect(Math.abs(values.metallic! - gpm), size).toBeLessThan(0.5);
    }
  });

  it('limits velocity to 8 ft/s, and hot water in copper to 5 ft/s', () => {
    for (const [material, { values }] of Object.entries(profile.velocityLimits.rows)) {
      expect(values, material).toEqual({ cold: 8, hot: material.startsWith('copper') ? 5 : 8 });
    }
  });
});

describe('limits', () => {
  const printed = (profile: Profile) =>
    Object.fromEntries(
      Object.entries(profile.limits).map(([name, { printed: value, unit }]) => [name, `${value} ${unit}`]),
    );
  const shared = {
    maximumStatic: '80 psi',
    minimumService: '0.75 in',
    homeRunLength: '60 ft',
    homeRunLeastSize: '0.375 in',
    homeRunUsualSize: '0.5 in',
    hotVolume: `${64 / 128} gal`,
    hotColdApart: '10 psi',
    scaldTemperature: '120 F',
    lawsApart: '0.1 one',
    lawsApartLeast: '1 psi',
  };

  it('of the IPC: 35 psi for the smaller home run, 50 ft of hot pipe', () => {
    expect(printed(profiles['ipc-2018'])).toEqual({
      ...shared,
      homeRunPressure: '35 psi',
      hotLength: '50 ft',
    });
  });

  it('of the IRC: 40 psi for the smaller home run, 100 ft of hot pipe', () => {
    expect(printed(profiles['irc-2021'])).toEqual({
      ...shared,
      minimumStatic: '40 psi',
      homeRunPressure: '40 psi',
      hotLength: '100 ft',
    });
  });
});

describe('the demand curves', () => {
  it('are one curve in both codes up to the 500 units where the IRC ends', () => {
    const [ipc, irc] = [profiles['ipc-2018'], profiles['irc-2021']];
    for (const column of ['demandTank', 'demandValve'] as const) {
      const upTo500 = ipc[column].points.filter(([units]) => units <= 500);
      expect(irc[column].points).toEqual(upTo500);
      expect(irc[column].points.at(-1)![0]).toBe(500);
    }
  });

  it('meet at 1000 units', () => {
    const { demandTank, demandValve } = profiles['ipc-2018'];
    const from1000 = ({ points }: typeof demandTank) => points.filter(([units]) => units >= 1000);
    expect(from1000(demandTank)).toEqual(from1000(demandValve));
    expect(from1000(demandTank)[0]).toEqual([1000, 208]);
  });
});
