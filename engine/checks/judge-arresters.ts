import { arresterSizes } from '../../tables/devices/arresters.ts';
import { type FixtureKind, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { lookUp } from '../../tables/look-up.ts';
import { rules } from '../../tables/rules.ts';
import { toSI } from '../../tables/units/definitions.ts';
import type { Network } from '../network/network.ts';
import type { Solution } from '../network/solution.ts';
import type { Finding } from './finding.ts';

/** How far along the pipe an arrester reaches; the branch length of the arrester table's rule. */
const reach = toSI(20, 'ft');

/** Quick-closing fixtures with no arrester near, and arresters too small for the units of the run they stand on. */
export function judgeArresters(network: Network, solution: Solution): Finding[] {
  const { parent, runs } = network;
  const findings: Finding[] = [];
  const arrestedAt = new Set<number>();
  const sizes = Object.keys(arresterSizes.rows);
  for (const { device, run: at } of network.devices) {
    if (device.device !== 'arrester') continue;
    const on = parent[at]!;
    arrestedAt.add(on);
    const units = on < 0 ? 0 : solution.units[on]!;
    const limit = lookUp(arresterSizes, device.size, 'unitsUpTo');
    if (units <= limit.value) continue;
    const least = sizes.find((size) => lookUp(arresterSizes, size, 'unitsUpTo').value >= units);
    findings.push({
      code: 'arrester-small',
      severity: 'warning',
      source: limit,
      run: runs[at]!.id,
      size: device.size,
      least: least ?? sizes.at(-1)!,
      units,
      ...(least === undefined ? {} : { mend: { do: 'add-arrester', run: runs[at]!.id, size: least } }),
    });
  }
  for (const { fixture, run } of network.inlets) {
    const kind: FixtureKind = fixtureKinds[fixture.kind];
    if (!kind.quickClosing) continue;
    let at = run;
    let distance = network.length[at]!;
    let near = false;
    for (at = parent[at]!; at >= 0 && distance <= reach && !near; at = parent[at]!) {
      near = arrestedAt.has(at);
      distance += network.length[at]!;
    }
    if (near) continue;
    const id = runs[run]!.id;
    findings.push({
      code: 'arrester-missing',
      severity: 'warning',
      source: rules.waterHammer,
      run: id,
      fixture: fixture.id,
      mend: { do: 'add-arrester', run: id },
    });
  }
  return findings;
}
