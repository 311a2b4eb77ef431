import { meterLimits } from '../../tables/devices/meters.ts';
import { lookUp } from '../../tables/look-up.ts';
import { rules } from '../../tables/rules.ts';
import { beyondTable } from '../demand/demand-cites.ts';
import type { Curve } from '../hydraulics/curve.ts';
import type { Device } from '../job/job.ts';
import type { Network } from '../network/network.ts';
import type { Solution } from '../network/solution.ts';
import type { Finding } from './finding.ts';
import { isOver } from './over.ts';

/** Whether a loss is known by points, printed or typed, which end somewhere; a flow coefficient holds at any flow. */
function hasEnd(device: Device, { from }: Curve): boolean {
  return typeof from === 'object' ? 'points' in from : 'curve' in device && device.curve !== undefined;
}

/** Meters beyond their safe maximum, and other devices beyond the last point of their curve. */
export function judgeDevices(network: Network, solution: Solution): Finding[] {
  const findings: Finding[] = [];
  for (const { device, run: at, curve } of network.devices) {
    const run = network.runs[at]!.id;
    const flow = solution.flow[at]!;
    if (device.device === 'meter') {
      const limit = lookUp(meterLimits, device.size, 'safeMaximum');
      if (isOver(flow, limit.value)) {
        findings.push({
          code: 'meter-over-maximum',
          severity: 'error',
          source: limit,
          run,
          size: device.size,
          flow,
          limit: limit.value,
        });
        continue;
      }
    }
    const last = curve.flow.at(-1);
    if (last === undefined || !hasEnd(device, curve) || !isOver(flow, last)) continue;
    findings.push({
      code: 'curve-exceeded',
      severity: 'warning',
      source: rules.curveRange,
      run,
      flow,
      limit: last,
    });
  }
  return findings;
}

/** A service that asks more than the well pump gives, more than the street was tested at, or more units than the demand table lists. */
export function judgeSource(network: Network, solution: Solution): Finding[] {
  const findings: Finding[] = [];
  const { supply, demand } = network;
  const run = network.runs[0]!.id;
  const flow = solution.flow[0]!;
  if (supply.kind === 'well' && supply.pumpFlow !== undefined && isOver(flow, supply.pumpFlow.si)) {
    const limit = supply.pumpFlow.si;
    findings.push({ code: 'pump-short', severity: 'warning', source: rules.pumpFlow, run, flow, limit });
  }
  if (supply.kind === 'flow-test' && isOver(flow, supply.flow.si)) {
    const limit = supply.flow.si;
    findings.push({
      code: 'street-beyond-test',
      severity: 'warning',
      source: rules.testRange,
      run,
      flow,
      limit,
    });
  }
  const beyond = beyondTable(demand);
  if (beyond !== undefined) {
    const { source, at, verified } = beyond.curve;
    findings.push({
      code: 'demand-beyond-table',
      severity: 'warning',
      source: { source, at, verified },
      run,
      unit: demand.from.unit,
      units: beyond.units,
      limit: beyond.limit,
    });
  }
  return findings;
}
