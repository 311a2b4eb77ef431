import type { Scheme } from '../job/job.ts';
import { buildNetwork } from './build-network.ts';
import type { Network } from './network.ts';

/**
 * The network of a scheme that differs from a built one in its pipes alone: sizes, materials, joints. That changes no
 * tree, so it cannot be broken.
 */
export function rebuild({ job }: Network, scheme: Scheme): Network {
  const built = buildNetwork(
    { ...job, schemes: job.schemes.map((one) => (one.id === scheme.id ? scheme : one)) },
    scheme.id,
  );
  if (!built.ok) throw new Error('a scheme with other pipes lost its tree');
  return built.network;
}
