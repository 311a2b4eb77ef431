import {
  type InletResult,
  type Report,
  runVelocities,
  supplyCurve,
  type UnitSystem,
} from '../../engine/index.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { gridStep } from '../../views/parts/grid-step.ts';
import type { PairedPath, Pictures } from '../../views/pictures.ts';
import { type OpenJob, pathOf } from '../workbench/workbench.tsx';
import { choosePair } from './choose-pair.ts';

/** Points of the supply curve. */
const about = 24;

/** What the pictures of an open job's chosen scheme are drawn from, with the two paths that were asked for. */
export function picturesOf({ id, job, report }: OpenJob, first: string, second: string): Pictures {
  const { pair, notice } = choosePair(report.inlets, first, second);
  const { network, solution } = report;
  return {
    id,
    job,
    report,
    pair: pair && [paired('A', report, pair[0]), paired('B', report, pair[1])],
    supply: supplyCurve(report, roundFlows(solution.flow[0]!, job.units)),
    velocities: runVelocities(network, solution),
    notice,
  };
}

function paired(letter: PairedPath['letter'], report: Report, inlet: InletResult): PairedPath {
  return {
    letter,
    path: pathOf(report, inlet),
    runs: report.network.runs,
    start: report.solution.supplyPressure,
  };
}

/** Round flows of the reader's unit from nothing to twice the demand, m3/s; to ten units where there is no demand. */
export function roundFlows(demand: number, system: UnitSystem): readonly number[] {
  const unit = toSI(1, displayUnits[system].flow.unit);
  const most = demand > 0 ? (2 * demand) / unit : 10;
  const step = gridStep(most, about);
  return Array.from({ length: Math.ceil(most / step) + 1 }, (_, at) => at * step * unit);
}
