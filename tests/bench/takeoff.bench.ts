import { buildNetwork } from '../../engine/index.ts';
import { takeOff } from '../../engine/takeoff/take-off-network.ts';
import { buildingJob } from './building-job.ts';
import { figure, median } from './figure.ts';

/** Taking a scheme of a thousand runs off its drawing: parts, joints, supports, and the lines they add up to. */
export function benchTakeOff(short: boolean): void {
  const built = buildNetwork(buildingJob(1000));
  if (!built.ok) throw new Error(JSON.stringify(built.defects.slice(0, 3)));
  const { network } = built;
  const times: number[] = [];
  let lines = takeOff(network).lines.length;
  for (let round = 0; round < (short ? 5 : 31); round++) {
    const start = performance.now();
    lines = takeOff(network).lines.length;
    times.push(performance.now() - start);
  }
  if (lines === 0) throw new Error('the bench took nothing off');
  figure('takeoff_1000_runs_ms', median(times), 'ms');
}
