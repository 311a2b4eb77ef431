import { describe, expect, it } from 'vitest';
import { demandTank, demandValve } from '../../../tables/ipc-2018/demand.ts';
import { fixtureUnits } from '../../../tables/ipc-2018/fixture-units.ts';
import { manifoldCapacity } from '../../../tables/ipc-2018/manifold-capacity.ts';
import { outlets } from '../../../tables/ipc-2018/outlets.ts';
import { supplySizes } from '../../../tables/ipc-2018/supply-sizes.ts';
import { nominalSizes } from '../../../tables/pipe/nominal-size.ts';
import type { GridRow } from '../../../tables/table.ts';
import { cell, readCsv } from '../second-reading/read-csv.ts';

describe('IPC 2018 against a second reading', () => {
  it.each([
    ['demand-tank.csv', demandTank, 24],
    ['demand-valve.csv', demandValve, 25],
  ] as const)('%s', (name, table, atLeast) => {
    const read = readCsv(name);
    expect(read.length).toBeGreaterThanOrEqual(atLeast);
    const printed = new Map(table.points.map(([units, flow]) => [units, flow]));
    for (const row of read) {
      expect(printed.get(cell(row, 'wsfu')!), row.wsfu).toBe(cell(row, 'gpm'));
    }
  });

  it('fixture units', () => {
    const names: Record<string, string> = {
      'bathroom group,private,flush tank': 'bathroom group, private, flush tank',
      'bathroom group,private,flushometer valve': 'bathroom group, private, flushometer valve',
      'bathtub,private,faucet': 'bathtub, private',
      'bathtub,public,faucet': 'bathtub, public',
      'bidet,private,faucet': 'bidet, private',
      'combination fixture,private,faucet': 'combination fixture, private',
      'dishwashing machine,private,automatic': 'dishwashing machine, private',
      'drinking fountain,offices,3/8 valve': 'drinking fountain, offices',
      'kitchen sink,private,faucet': 'kitchen sink, private',
      'kitchen sink,hotel/restaurant,faucet': 'kitchen sink, hotel or restaurant',
      'laundry trays 1-3,private,faucet': 'laundry trays (1 to 3), private',
      'lavatory,private,faucet': 'lavatory, private',
      'lavatory,public,faucet': 'lavatory, public',
      'service sink,offices,faucet': 'service sink, offices',
    };
    const rows: Record<string, GridRow<'cold' | 'hot' | 'total'>> = fixtureUnits.rows;
    const read = readCsv('ipc-fixture-units.csv');
    expect(read).toHaveLength(14);
    for (const row of read) {
      const name = names[`${row.fixture},${row.occupancy},${row.control}`]!;
      const { values, verified } = rows[name]!;
      for (const column of ['cold', 'hot', 'total'] as const) {
        expect(values[column], `${name}, ${column}`).toBe(cell(row, column));
      }
      expect(verified, 'a row that was read carries no weaker word').toBeUndefined();
    }
  });

  /** The second reading has these from memory as well. */
  it('fixture units below the service sink', () => {
    const { rows } = fixtureUnits;
    expect(rows['shower head, private'].values).toEqual({ cold: 1, hot: 1, total: 1.4 });
    expect(rows['shower head, public'].values).toEqual({ cold: 3, hot: 3, total: 4 });
    expect(rows['washing machine (8 lb), private'].values).toEqual({ cold: 1, hot: 1, total: 1.4 });
    const coldOnly = {
      'urinal, 1 in flushometer valve': 10,
      'urinal, 3/4 in flushometer valve': 5,
      'urinal, flush tank': 3,
      'water closet, private, flush tank': 2.2,
      'water closet, private, flushometer valve': 6,
      'water closet, public, flush tank': 5,
      'water closet, public, flushometer valve': 10,
    } as const;
    for (const [name, units] of Object.entries(coldOnly) as [keyof typeof coldOnly, number][]) {
      expect(rows[name].values, name).toEqual({ cold: units, total: units });
    }
  });

  it('supply sizes, against the adoption of the table by Chicago', () => {
    const read = readCsv('chicago-supply-sizes.csv').filter(
      (row) => row.fixture !== 'Washing machine automatic (W)',
    );
    const ours = Object.values(supplySizes.rows).map(({ values }) => values.size);
    expect(ours).toEqual(read.map((row) => nominalSizes[row.min_in!]));
  });

  it('outlets', () => {
    const read = readCsv('ipc-outlets.csv');
    const pairs = read.map((row) => [cell(row, 'gpm'), cell(row, 'psi')]);
    // The second reading leaves out the private lavatory with a mixing valve, the eighth row.
    const printed = Object.values(outlets.rows)
      .map(({ values }) => [values.flow, values.pressure])
      .toSpliced(7, 1);
    expect(pairs).toEqual(printed);
  });

  it('has one manifold capacity for plastic and metal', () => {
    for (const { values } of Object.values(manifoldCapacity.rows))
      expect(values.plastic).toBe(values.metallic);
  });

  it('has the rows that the tables print', () => {
    expect(Object.keys(fixtureUnits.rows)).toHaveLength(27);
    expect(Object.keys(outlets.rows)).toHaveLength(20);
    // One less than Chicago's adoption, which adds the washing machine.
    expect(Object.keys(supplySizes.rows)).toHaveLength(20);
    expect(demandTank.points).toHaveLength(52);
    expect(demandValve.points).toHaveLength(48);
  });
});
