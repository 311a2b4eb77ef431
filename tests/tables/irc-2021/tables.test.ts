import { describe, expect, it } from 'vitest';
import { fixtureUnits as ipcFixtureUnits } from '../../../tables/ipc-2018/fixture-units.ts';
import { outlets as ipcOutlets } from '../../../tables/ipc-2018/outlets.ts';
import { supplySizes as ipcSupplySizes } from '../../../tables/ipc-2018/supply-sizes.ts';
import { fixtureUnits } from '../../../tables/irc-2021/fixture-units.ts';
import { outlets } from '../../../tables/irc-2021/outlets.ts';
import { supplySizes } from '../../../tables/irc-2021/supply-sizes.ts';
import type { GridRow } from '../../../tables/table.ts';
import { readCsv } from '../second-reading/read-csv.ts';

describe('IRC 2021', () => {
  it('has the 13 rows of fixture units that are recalled, and two of the IPC', () => {
    const names = Object.keys(fixtureUnits.rows);
    expect(names.filter((name) => !name.includes('IPC'))).toHaveLength(13);
    expect(names).toHaveLength(15);
  });

  it('keeps hot and cold in their own columns: the code prints hot first', () => {
    expect(fixtureUnits.rows.dishwasher.values).toEqual({ hot: 1.4, total: 1.4 });
    expect(fixtureUnits.rows['water closet (tank type)'].values).toEqual({ cold: 2.2, total: 2.2 });
    expect(fixtureUnits.rows['hose bibb'].values).toEqual({ cold: 2.5, total: 2.5 });
    // A group's hot side is the sum of what it holds: lavatory and bathtub, lavatory.
    expect(fixtureUnits.rows['full-bath group'].values.hot).toBe(0.5 + 1);
    expect(fixtureUnits.rows['half-bath group'].values.hot).toBe(0.5);
  });

  it('has "corroborated" only where a row of the IPC that was read says the same', () => {
    const same: Record<string, string> = {
      bathtub: 'bathtub, private',
      dishwasher: 'dishwashing machine, private',
      'full-bath group': 'bathroom group, private, flush tank',
      'kitchen sink': 'kitchen sink, private',
      'laundry tub': 'laundry trays (1 to 3), private',
      lavatory: 'lavatory, private',
    };
    const ours: Record<string, GridRow<'cold' | 'hot' | 'total'>> = fixtureUnits.rows;
    const ipc: Record<string, GridRow<'cold' | 'hot' | 'total'>> = ipcFixtureUnits.rows;
    const claimed = Object.entries(ours).filter(([, row]) => row.verified === 'corroborated');
    expect(claimed.map(([name]) => name)).toEqual(Object.keys(same));
    for (const [name, { values }] of claimed) {
      expect(values, name).toEqual(ipc[same[name]!]!.values);
      expect(ipc[same[name]!]!.verified, name).toBeUndefined();
    }
  });

  it('counts a group for less than its fixtures: 2.5 for 2.8, 2.5 for 2.8, 2.6 for 2.9', () => {
    const total = (name: keyof typeof fixtureUnits.rows) => fixtureUnits.rows[name].values.total;
    const cases = [
      ['kitchen group', 2.5, total('kitchen sink') + total('dishwasher'), 2.8],
      ['laundry group', 2.5, total('clothes washer') + total('laundry tub'), 2.8],
      ['half-bath group', 2.6, total('water closet (tank type)') + total('lavatory'), 2.9],
    ] as const;
    for (const [group, printed, sum, apart] of cases) {
      expect(total(group), group).toBe(printed);
      expect(sum, group).toBeCloseTo(apart, 9);
    }
  });

  /** The second reading: the IRC agrees with IPC Table 604.3 on the residential rows. */
  it('agrees with the IPC on the outlets that both list', () => {
    expect(readCsv('ipc-outlets.csv').length).toBeGreaterThan(0);
    const same: Record<string, string> = {
      dishwasher: 'dishwasher, residential',
      lavatory: 'lavatory, private',
      sink: 'sink, residential',
      'water closet, tank, one-piece': 'water closet, tank, one piece',
      'water closet, siphonic, flushometer valve (IPC 2018)': 'water closet, siphonic, flushometer valve',
      'urinal, valve (IPC 2018)': 'urinal, valve',
    };
    const ipc: Record<string, GridRow<'flow' | 'pressure'>> = ipcOutlets.rows;
    const names = Object.entries(outlets.rows);
    expect(names).toHaveLength(13);
    for (const [name, { values }] of names) expect(values, name).toEqual(ipc[same[name] ?? name]?.values);
  });

  it('borrows the supply sizes and says whose they are', () => {
    expect(supplySizes.rows).toBe(ipcSupplySizes.rows);
    expect(supplySizes.source.id).toBe('ipc-2018');
    expect(supplySizes.note).toMatch(/^Not the IRC/);
  });

  it('has manifold capacities of 12 ft/s in plastic through the area of the nominal size', async () => {
    const { manifoldCapacity } = await import('../../../tables/irc-2021/manifold-capacity.ts');
    const inches = { '3/4': 0.75, '1': 1, '1-1/4': 1.25, '1-1/2': 1.5 };
    for (const size of ['3/4', '1', '1-1/4', '1-1/2'] as const) {
      const gpm = 12 * (Math.PI / 4) * (inches[size] ** 2 / 144) * 7.48052 * 60;
      expect(Math.abs(manifoldCapacity.rows[size].values.plastic - gpm), size).toBeLessThan(0.5);
    }
  });
});
