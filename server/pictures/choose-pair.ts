import type { InletResult } from '../../engine/index.ts';
import { pathKey } from '../../views/workbench.ts';

/** Two inlets to set side by side; a sentence where one that was asked for is not there. */
export interface ChosenPair {
  readonly pair: readonly [InletResult, InletResult] | undefined;
  readonly notice: string;
}

/**
 * The two inlets that were asked for by their path's key. Where nothing is asked: cold and hot of the worst fixture
 * that has both, else the two worst. Where one is asked: its fixture's other side, else the worst.
 *
 * @param inlets the worst first
 */
export function choosePair(inlets: readonly InletResult[], first: string, second: string): ChosenPair {
  const named = (key: string) => inlets.find(({ inlet }) => pathKey(inlet.fixture.id, inlet.side) === key);
  const lost = [first, second].filter((key) => key !== '' && named(key) === undefined);
  const notice =
    lost.length === 0
      ? ''
      : `No run of this scheme ends at ${lost.join(' or ')}; another path is shown instead.`;
  const asked = [named(first), named(second)] as const;
  const one = asked[0] ?? (asked[1] && otherSide(inlets, asked[1])) ?? usual(inlets);
  if (one === undefined) return { pair: undefined, notice };
  const other = asked[1] ?? otherSide(inlets, one) ?? inlets.find((inlet) => inlet !== one) ?? one;
  return { pair: [one, other], notice };
}

/** The cold side of the worst fixture that has both, else the worst inlet. */
function usual(inlets: readonly InletResult[]): InletResult | undefined {
  const worst = inlets.find((one) => otherSide(inlets, one) !== undefined);
  if (worst === undefined) return inlets[0];
  return worst.inlet.side === 'cold' ? worst : otherSide(inlets, worst);
}

function otherSide(inlets: readonly InletResult[], { inlet }: InletResult): InletResult | undefined {
  return inlets.find((one) => one.inlet.fixture.id === inlet.fixture.id && one.inlet.side !== inlet.side);
}
