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
import { beforeTrial, type PairedPath, type Pictures } from '../../views/pictures.ts';
import { pathKey } from '../../views/workbench.ts';
import { type OpenJob, pathOf } from '../workbench/workbench.tsx';
import { choosePair } from './choose-pair.ts';

/** Points of the supply curve. */
const about = 24;

/**
 * What the pictures of an open job's chosen scheme are drawn from, with the two paths that were asked for; of a trial
 * where nothing is asked, its worst path before and as tried.
 */
export function picturesOf({ id, job, report, beside }: OpenJob, first: string, second: string): Pictures {
  const base = beside?.kind === 'trial' ? beside.base.report : undefined;
  const asksBefore = first === beforeTrial || (first === '' && second === '');
  const { pair, notice } = choosePair(report.inlets, base && asksBefore ? '' : first, second);
  const tried = base && asksBefore ? beforeAndAfter(base, report, second) : undefined;
  const { network, solution } = report;
  return {
    id,
    job,
    report,
    tried: base !== undefined,
    pair: tried ?? (pair && [paired('A', report, pair[0]), paired('B', report, pair[1])]),
    supply: supplyCurve(report, roundFlows(solution.flow[0]!, job.units)),
    velocities: runVelocities(network, solution),
    notice,
  };
}

/** One path before a trial and as tried: the one asked for, else the worst; undefined where either has no such path. */
function beforeAndAfter(base: Report, report: Report, asked: string): Pictures['pair'] {
  const keyOf = ({ inlet }: InletResult) => pathKey(inlet.fixture.id, inlet.side);
  const after = report.inlets.find((one) => keyOf(one) === asked) ?? report.worst;
  const before = after && base.inlets.find((one) => keyOf(one) === keyOf(after));
  if (after === undefined || before === undefined) return undefined;
  return [
    { ...paired('A', base, before), when: 'before' },
    { ...paired('B', report, after), when: 'as tried' },
  ];
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
