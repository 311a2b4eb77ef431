import { profiles } from '../../tables/profiles.ts';
import { deviceOf } from '../network/device-of.ts';
import type { Network } from '../network/network.ts';
import { feeds, pathTo } from '../network/path.ts';
import type { Finding } from './finding.ts';

/** Whether water that expands cannot pass back through this run: a check valve, a reducing valve, a backflow assembly. */
function closes(network: Network, at: number): boolean {
  const device = deviceOf(network, at)?.device;
  if (device === 'reducing-valve' || device === 'backflow') return true;
  return network.runs[at]!.fittings.some(({ kind, count }) => kind === 'check-valve' && count > 0);
}

/**
 * Storage heaters whose cold supply is closed by a check valve, reducing valve or backflow assembly, with no
 * expansion tank on the cold pipe between that and the heater.
 */
export function judgeExpansion(network: Network): Finding[] {
  // On the cold side only: a valve at the heater's outlet must not cut the tank off.
  const tanks = network.devices.filter(
    ({ device, run }) => device.device === 'expansion-tank' && network.hot[run] === 0,
  );
  const findings: Finding[] = [];
  for (const { device, run: at } of network.devices) {
    if (device.device !== 'heater' || device.type !== 'storage') continue;
    const path = pathTo(network, at);
    const closed = path.findLast((run) => closes(network, run));
    if (closed === undefined) continue;
    const relieved = tanks.some(({ run: tank }) => {
      const way = pathTo(network, tank).filter((run) => run !== closed && feeds(network, closed, run));
      return feeds(network, closed, tank) && !way.some((run) => closes(network, run));
    });
    if (relieved) continue;
    findings.push({
      code: 'expansion-uncontrolled',
      severity: 'error',
      source: profiles[network.basis.profile].rules.thermalExpansion,
      run: network.runs[closed]!.id,
      heater: network.runs[at]!.id,
      mend: { do: 'add-expansion-tank' },
    });
  }
  return findings;
}
