import { sources } from '../../tables/sources.ts';
import { flowTestExponent } from '../../tables/supply/flow-test.ts';
import type { Formula } from '../explain/formula.ts';
import type { Supply } from '../job/job.ts';

/**
 * Pressure left at the street under a flow, from a two-point test: the drop grows with the 1.85th power of the flow,
 * as friction in the mains does.
 */
export const flowTestCurve = {
  id: 'flow-test',
  title: 'Street pressure under flow',
  printed: 'p = p_low - (p_s - p_r) · (Q / Q_t)^n',
  source: {
    source: sources['nfpa-291'],
    at: { section: 'flow test', checkedOn: '2026-11-25' },
    verified: 'memory',
  },
  symbols: {
    p_low: { unit: 'psi', meaning: 'static pressure, daily low' },
    p_s: { unit: 'psi', meaning: 'static pressure of the test' },
    p_r: { unit: 'psi', meaning: 'residual pressure of the test' },
    Q: { unit: 'gpm', meaning: 'design flow of the service' },
    Q_t: { unit: 'gpm', meaning: 'flow of the test' },
    n: { unit: 'one', meaning: 'power of the flow' },
  },
  result: { unit: 'psi', meaning: 'pressure at the street under flow' },
  compute: ({ p_low, p_s, p_r, Q, Q_t, n }) => p_low - (p_s - p_r) * (Q / Q_t) ** n,
} as const satisfies Formula<'p_low' | 'p_s' | 'p_r' | 'Q' | 'Q_t' | 'n'>;

/** Pressure at the supply point while the service carries `flow` (m3/s), Pa: the daily low, less a test's droop. */
export function supplyPressure(supply: Supply, flow: number): number {
  switch (supply.kind) {
    case 'static':
      return supply.low.si;
    case 'well':
      return supply.cutIn.si;
    case 'flow-test': {
      // The powers cancel the units, so SI goes in as it is.
      return flowTestCurve.compute({
        p_low: (supply.low ?? supply.static).si,
        p_s: supply.static.si,
        p_r: supply.residual.si,
        Q: flow,
        Q_t: supply.flow.si,
        n: flowTestExponent.printed,
      });
    }
  }
}

/** Pressure at the supply point while nothing flows, at its daily high, Pa. */
export function supplyStatic(supply: Supply): number {
  switch (supply.kind) {
    case 'static':
      return supply.high.si;
    case 'well':
      return supply.cutOut.si;
    case 'flow-test':
      return Math.max(supply.static.si, supply.high?.si ?? 0);
  }
}
