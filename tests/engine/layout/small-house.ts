import type { Fixture, Job, Scheme } from '../../../engine/job/job.ts';
import { printRunLine } from '../../../engine/job/print-run-line.ts';
import { layOut } from '../../../engine/layout/lay-out.ts';
import type { LayoutOptions } from '../../../engine/layout/options.ts';
import { fixture, ft, job, psi } from '../../jobs/written-job.ts';

export const at = (x: number, y: number) => ({ x: ft(x), y: ft(y) });

export const closet = fixture('WC', 'water-closet-tank', { level: 'upper', ...at(20, 10), group: 'bath' });
export const lavatory = fixture('LAV', 'lavatory', { level: 'upper', ...at(20, 13), group: 'bath' });

/**
 * Two levels, 9 ft apart; the service comes in 10 ft before the mechanical room, the riser is 4 ft beside it. Street
 * main 4 ft under the lower floor.
 */
export function smallHouse(fixtures: readonly Fixture[], high = 60): Job {
  const written = job(fixtures, [], {
    levels: [
      { id: 'lower', name: 'Lower', elevation: ft(0) },
      { id: 'upper', name: 'Upper', elevation: ft(9) },
    ],
    groups: [{ id: 'bath', name: 'Bath', kind: 'half-bath' }],
    supply: { kind: 'static', elevation: ft(-4), low: psi(60), high: psi(high) },
  });
  return {
    ...written,
    places: {
      serviceEntry: { level: 'lower', ...at(10, 0) },
      mechanicalRoom: { level: 'lower', ...at(10, 10) },
      risers: [{ id: 'R', ...at(14, 10) }],
    },
    schemes: [],
  };
}

export function schemeOf(house: Job, options: LayoutOptions): Scheme {
  const laid = layOut(house, options);
  if (!laid.ok) throw new Error(JSON.stringify(laid.missing));
  return laid.scheme;
}

/** Runs without their sizes, `C1 < S1: 3' 1 ell to F cold`. */
export function lines({ runs }: Scheme): string[] {
  return runs.map((run) => `${run.id} < ${run.from}: ${printRunLine(run).replace(/^\S+ (PEX|PE) /, '')}`);
}
