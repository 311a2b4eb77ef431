import { describe, expect, it } from 'vitest';
import { explainAll } from '../../../engine/explain/explain.ts';
import type { Report } from '../../../engine/network/report.ts';
import { cold, fixture, hot, job, reportOf, run } from '../../jobs/written-job.ts';

/** Terms that name a step with another value than its own, or none: two steps went by one name. */
function mistaken(report: Report): string[] {
  const steps = explainAll(report);
  const wrong: string[] = [];
  for (const { id, terms } of steps.values()) {
    for (const term of Object.values(terms)) {
      if (term.from !== 'step') continue;
      const named = steps.get(term.step);
      const apart = named === undefined ? Number.NaN : Math.abs(named.value - term.value);
      if (!(apart <= 1e-9 * Math.abs(term.value))) wrong.push(`${id} takes ${term.step}`);
    }
  }
  return wrong;
}

describe('explainAll gives every step a name of its own', () => {
  it('where a run names one kind of fitting twice', () => {
    const fittings = [
      { kind: 'ell', count: 2 },
      { kind: 'tee-branch', count: 1 },
      { kind: 'ell', count: 3 },
      { kind: 'ball-valve', count: 1 },
      { kind: 'ball-valve', count: 2 },
    ] as const;
    const only = { ...run('only', 'street', { end: cold('basin') }), fittings };
    expect(mistaken(reportOf(job([fixture('basin', 'lavatory', { inlets: 'cold' })], [only])))).toEqual([]);
  });

  it('where an id reads like that of a figure of another fixture or of a group', () => {
    const basins = ['A', 'A-all', 'G-total'].map((id) => fixture(id, 'lavatory', { count: 2 }));
    const bath = [
      fixture('closet', 'water-closet-tank', { group: 'G' }),
      fixture('basin', 'lavatory', { group: 'G' }),
      fixture('bath', 'bathtub', { group: 'G' }),
    ];
    const runs = [
      run('service', 'street'),
      run('heater', 'service', { end: { device: 'heater', type: 'storage' } }),
      run('closet-cold', 'service', { end: cold('closet') }),
      ...[...basins, ...bath.slice(1)].flatMap(({ id }) => [
        run(`${id}-cold`, 'service', { end: cold(id) }),
        run(`${id}-hot`, 'heater', { end: hot(id) }),
      ]),
    ];
    const groups = [{ id: 'G', name: 'Bath', kind: 'full-bath' as const }];
    expect(mistaken(reportOf(job([...basins, ...bath], runs, { groups })))).toEqual([]);
  });
});
