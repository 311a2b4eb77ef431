import type { BusyKind } from '../../../engine/demand/busy-fixtures.ts';

/** Probability of every flow that fixtures can have together, by trying all the states they can be in; flow rising. */
export function countStates(kinds: readonly BusyKind[]): { flow: number; probability: number }[] {
  const fixtures = kinds.flatMap(({ count, ...fixture }) => Array.from({ length: count }, () => fixture));
  const chances = new Map<number, number>();
  for (let state = 0; state < 2 ** fixtures.length; state++) {
    let flow = 0;
    let probability = 1;
    fixtures.forEach((fixture, at) => {
      const runs = Math.floor(state / 2 ** at) % 2 === 1;
      probability *= runs ? fixture.busy : 1 - fixture.busy;
      if (runs) flow += fixture.flow;
    });
    chances.set(flow, (chances.get(flow) ?? 0) + probability);
  }
  return [...chances]
    .map(([flow, probability]) => ({ flow, probability }))
    .sort((one, other) => one.flow - other.flow);
}

/** The smallest flow that is reached with at least `level` of all the probability. */
export function percentileOf(
  states: readonly { readonly flow: number; readonly probability: number }[],
  level: number,
): number {
  const whole = states.reduce((sum, { probability }) => sum + probability, 0);
  let sum = 0;
  for (const { flow, probability } of states) {
    sum += probability;
    if (sum >= level * whole - 1e-12) return flow;
  }
  return 0;
}
