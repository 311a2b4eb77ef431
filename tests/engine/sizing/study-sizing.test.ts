import { describe, expect, it } from 'vitest';
import { sizeScheme } from '../../../engine/sizing/size-scheme.ts';
import { studySizing } from '../../../engine/sizing/study-sizing.ts';
import { nominalSizes } from '../../../tables/pipe/nominal-size.ts';
import { toSI } from '../../../tables/units/definitions.ts';
import { openExample, reportOf } from '../../examples/open-example.ts';
import { cold, fixture, ft, gpm, job, psi, run, reportOf as solved } from '../../jobs/written-job.ts';
import { shippedPrices } from './shipped-prices.ts';

const prices = await shippedPrices();
const rules = { prices, keep: new Set<string>() };

describe('a sizing studied', () => {
  it('counts on how many runs a hand method is larger and smaller', async () => {
    const drawn = reportOf(await openExample('home-run-house.json'));
    const { least, methods } = studySizing(drawn, rules, [drawn.solution.supplyPressure]);
    const inches = (scheme: { runs: readonly { id: string; size: string }[] }, id: string): number =>
      nominalSizes[scheme.runs.find((one) => one.id === id)!.size]!;
    expect(methods.map(({ method }) => method)).toEqual([
      'velocity',
      'uniform-friction',
      'segment-free-table',
    ]);
    for (const { scheme, larger, smaller, report, runs } of methods) {
      const ids = drawn.network.runs.map(({ id }) => id);
      expect(larger).toBe(ids.filter((id) => inches(scheme, id) > inches(least!.scheme, id)).length);
      expect(smaller).toBe(ids.filter((id) => inches(scheme, id) < inches(least!.scheme, id)).length);
      // What holds every limit and leaves enough cannot cost less than the least.
      if (report.worst!.margin >= 0) expect(runs!.cost).toBeGreaterThanOrEqual(least!.runs!.cost);
    }
  });

  it('gives the least cost at each pressure as if the street gave that', async () => {
    const drawn = reportOf(await openExample('three-level-house.json'));
    const { supplyPressure } = drawn.solution;
    const streets = [0.5, 0.8, 1, 1.2].map((share) => share * supplyPressure);
    const { curve } = studySizing(drawn, rules, streets);
    expect(curve.map(({ street }) => street)).toEqual(streets);
    curve.forEach(({ street, cost }) => {
      const alone = sizeScheme(drawn.network, rules, { least: street, most: street });
      expect(alone.curve?.pick(street)?.cost).toBe(cost);
    });
    const known = curve.flatMap(({ cost }) => cost ?? []);
    expect(known.length).toBeGreaterThan(1);
    expect(known).toEqual([...known].sort((one, other) => other - one));
  });

  it('tells what would make it fit: the pressure, and the one change that is enough', () => {
    const house = (meter: string, low: number) =>
      solved(
        job(
          [fixture('shower', 'shower', { inlets: 'cold', flow: gpm(15), pressure: psi(20) })],
          [
            run('S', 'street', { end: { device: 'meter', size: meter } }),
            run('C', 'S', { length: ft(40), end: cold('shower') }),
          ],
          { supply: { kind: 'static', elevation: ft(0), low: psi(low), high: psi(60) } },
        ),
      );
    const study = (meter: string, low: number) => studySizing(house(meter, low), rules, [toSI(low, 'psi')]);
    const { least, remedy, result } = study('5/8', 21);
    expect(least).toBeUndefined();
    if (result.ok || result.unsized.why !== 'short') throw new Error('it was sized');
    const [change] = remedy!.changes;
    expect(change!.change).toMatchObject({ do: 'larger-meter', run: 'S', from: '5/8', to: '3/4' });
    expect(study('3/4', 21).least !== undefined).toBe(change!.gain >= result.unsized.by);
    const street = remedy!.street!.need / toSI(1, 'psi');
    expect(study('5/8', street + 0.01).least?.runs?.cost).toBe(remedy!.street!.cost);
    expect(study('5/8', street - 0.01).least).toBeUndefined();
  });

  it('names what has no price and gives the drawn sizes none', () => {
    const drawn = solved(
      job([fixture('closet', 'water-closet-tank')], [run('C', 'street', { end: cold('closet') })]),
    );
    const lacking = { ...prices, pipe: new Map([...prices.pipe].filter(([key]) => key !== 'pex 1')) };
    const { missing, drawn: before, least } = studySizing(drawn, { ...rules, prices: lacking }, [1e5]);
    expect(missing).toEqual([{ item: 'pipe', material: 'pex', size: '1' }]);
    expect(before.runs).toBeUndefined();
    expect(least!.scheme.runs[0]!.size).not.toBe('1');
  });
});
