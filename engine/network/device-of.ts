import type { Device } from '../job/job.ts';
import type { Network } from './network.ts';

/** The device at the end of a run, or undefined; also for position -1, the street. */
export function deviceOf(network: Pick<Network, 'deviceAt' | 'devices'>, at: number): Device | undefined {
  const placed = at < 0 ? -1 : network.deviceAt[at]!;
  return placed < 0 ? undefined : network.devices[placed]!.device;
}

/** Whether a run leaves a port of a manifold. */
export function isOnManifold(network: Pick<Network, 'deviceAt' | 'devices' | 'parent'>, at: number): boolean {
  return deviceOf(network, network.parent[at]!)?.device === 'manifold';
}
