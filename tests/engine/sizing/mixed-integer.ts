import { createRequire } from 'node:module';
import { lossAt } from '../../../engine/hydraulics/curve.ts';
import { pathTo } from '../../../engine/index.ts';
import type { SizingTask } from '../../../engine/sizing/least-cost.ts';

interface Highs {
  solve(
    model: string,
    options: Readonly<Record<string, number | string | boolean>>,
  ): { readonly Status: string; readonly ObjectiveValue: number };
}

const load = createRequire(import.meta.url)('highs') as () => Promise<Highs>;
let loading: Promise<Highs> | undefined;

/**
 * The same task as a mixed-integer programme, solved to zero gap by an independent optimiser.
 *
 * @returns least cost in cents, or undefined where the optimiser proves that there is none
 */
export async function mixedInteger(task: SizingTask, available: number): Promise<number | undefined> {
  return optimise(programme(task, available));
}

/** Solves a programme of {@link programme}. */
export async function optimise(model: string): Promise<number | undefined> {
  loading ??= load();
  const optimiser = await loading;
  const result = optimiser.solve(model, { mip_rel_gap: 0, mip_abs_gap: 0, output_flag: false });
  if (result.Status === 'Infeasible') return undefined;
  if (result.Status !== 'Optimal') throw new Error(`the optimiser ended with ${result.Status}`);
  return Math.round(result.ObjectiveValue);
}

/** Pascals are scaled so that the optimiser's absolute tolerance is far below a thousandth of one. */
const scale = 1e-3;

/**
 * The programme as text: one binary for each choice, one row for each fixture (its losses may not eat more than the
 * street has over its need), and for each reducing valve on its path a row from the valve's set pressure on.
 */
export function programme({ network, flow, choices, ties }: SizingTask, available: number): string {
  const name = (at: number, index: number): string => `x${at}_${index}`;
  const lines = ['Minimize', ' cost:'];
  choices.forEach((list, at) => {
    lines.push(list.map(({ cost }, index) => ` + ${cost} ${name(at, index)}`).join(''));
  });
  lines.push('Subject To');
  choices.forEach((list, at) => {
    lines.push(` one${at}: ${list.map((_, index) => name(at, index)).join(' + ')} = 1`);
  });
  ties?.forEach((tie, at) => {
    const above = network.parent[at]!;
    if (above < 0 || tie === 'free') return;
    if (tie === 'not-larger') {
      const sizes = (run: number, sign: string): string =>
        choices[run]!.map(({ inches }, index) => ` ${sign} ${inches} ${name(run, index)}`).join('');
      lines.push(` tie${at}:${sizes(at, '+')}${sizes(above, '-')} <= 0`);
      return;
    }
    choices[at]!.forEach(({ pipe }, index) => {
      const same = choices[above]!.findIndex((choice) => choice.pipe === pipe);
      lines.push(` tie${at}_${index}: ${name(at, index)}${same === -1 ? '' : ` - ${name(above, same)}`} = 0`);
    });
  });
  network.inlets.forEach(({ run, requiredPressure }, inlet) => {
    const path = pathTo(network, run);
    let budget = available;
    let from = 0;
    const row = (to: string): void => {
      lines.push(` p${inlet}_${from}_${to}:`);
      let fixed = 0;
      path.slice(from).forEach((at) => {
        fixed += network.elevationLoss[at]!;
        const placed = network.deviceAt[at]!;
        if (placed >= 0) fixed += lossAt(network.devices[placed]!.curve, flow[at]!);
        lines.push(
          choices[at]!.map(
            ({ loss }, index) => ` + ${(loss * scale).toPrecision(17)} ${name(at, index)}`,
          ).join(''),
        );
      });
      lines.push(` <= ${((budget - requiredPressure - fixed) * scale).toPrecision(17)}`);
    };
    row('street');
    path.forEach((at, index) => {
      const placed = network.deviceAt[at]!;
      const device = placed < 0 ? undefined : network.devices[placed]!;
      if (device?.setPressure === undefined) return;
      // From behind the valve: it gives its set pressure less its fall-off, and that run's own losses lie before it.
      budget = device.setPressure - lossAt(device.curve, flow[at]!);
      from = index + 1;
      row('valve');
    });
  });
  lines.push('Binary');
  choices.forEach((list, at) => {
    lines.push(list.map((_, index) => ` ${name(at, index)}`).join(''));
  });
  lines.push('End');
  return lines.join('\n');
}
