import { arresterSizes } from '../../tables/devices/arresters.ts';
import { type FixtureKind, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { lookUp } from '../../tables/look-up.ts';
import { profiles } from '../../tables/profiles.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { lowestCommonRun } from '../network/lowest-common-run.ts';
import type { Network } from '../network/network.ts';
import type { Solution } from '../network/solution.ts';
import type { Finding } from './finding.ts';
import { isOver } from './over.ts';

/** How far along the pipe an arrester reaches: the length of branch that the arrester table gives one for. */
const reach = toSI(20, 'ft');

/** Arresters too small for the units of the run they stand on. */
function judgeArresterSizes(network: Network, solution: Solution): Finding[] {
  const findings: Finding[] = [];
  const sizes = Object.keys(arresterSizes.rows);
  for (const { device, run: at } of network.devices) {
    if (device.device !== 'arrester') continue;
    const on = network.parent[at]!;
    const units = on < 0 ? 0 : solution.units[on]!;
    const limit = lookUp(arresterSizes, device.size, 'unitsUpTo');
    if (units <= limit.value) continue;
    const run = network.runs[at]!.id;
    const least = sizes.find((size) => lookUp(arresterSizes, size, 'unitsUpTo').value >= units);
    findings.push({
      code: 'arrester-small',
      severity: 'warning',
      source: limit,
      run,
      size: device.size,
      ...(least === undefined ? {} : { least }),
      units,
    });
  }
  return findings;
}

/** Quick-closing fixtures with no arrester near along the pipe. */
function judgeArresterReach(network: Network): Finding[] {
  const { parent, subtreeEnd, runs, inlets } = network;
  const quick = inlets.filter(({ fixture }) => {
    const kind: FixtureKind = fixtureKinds[fixture.kind];
    return kind.quickClosing;
  });
  const arresters = network.devices
    .filter(({ device }) => device.device === 'arrester')
    .map(({ run }) => run);
  const along = new Float64Array(network.size);
  for (let at = 0; at < network.size; at++) {
    along[at] = network.length[at]! + (at === 0 ? 0 : along[parent[at]!]!);
  }
  const meet = lowestCommonRun(parent, subtreeEnd);
  const distance = (one: number, other: number): number =>
    along[one]! + along[other]! - 2 * along[meet(one, other)]!;
  return quick
    .filter(({ run }) => !arresters.some((arrester) => !isOver(distance(run, arrester), reach)))
    .map(({ fixture, run }): Finding => {
      // Nothing can branch off a run that ends at a fixture, so the arrester's run leaves the one before it.
      const before = runs[parent[run]!]?.id;
      return {
        code: 'arrester-missing',
        severity: 'warning',
        source: profiles[network.basis.profile].rules.waterHammer,
        run: runs[run]!.id,
        fixture: fixture.id,
        ...(before === undefined ? {} : { mend: { do: 'add-arrester', run: before } }),
      };
    });
}

/** Quick-closing fixtures with no arrester near, and arresters too small. */
export function judgeArresters(network: Network, solution: Solution): Finding[] {
  return [...judgeArresterSizes(network, solution), ...judgeArresterReach(network)];
}
