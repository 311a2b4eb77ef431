import { segmentFree, segmentFreeLengths } from '../../tables/ipc-2018/segment-free.ts';
import { lookUp } from '../../tables/look-up.ts';
import { fromSI, toSI } from '../../tables/units/definitions.ts';
import { nominalInches } from '../hydraulics/nominal-inches.ts';
import type { Inlet, Network } from '../network/network.ts';
import { pathTo } from '../network/path.ts';
import type { Solution } from '../network/solution.ts';
import type { PipeOption } from './pipe-options.ts';

/** What a sizer decides over: a solved network, and the options of each run, smallest first. */
export interface HandTask {
  readonly network: Network;
  readonly solution: Solution;
  readonly options: readonly (readonly PipeOption[])[];
}

/** A way to size a scheme by hand: one option for each run, by position. It promises no pressure at the tap. */
export type Sizer = (task: HandTask) => readonly PipeOption[];

/** The smallest pipe of each run that holds its velocity and least size. Common practice, no source. */
export const byVelocity: Sizer = ({ options }) => options.map((list) => list[0]!);

/** Share of the developed length that stands for the fittings. Common practice, no source. */
const fittingShare = 0.5;

/**
 * One friction gradient for the whole building: what the street gives over the highest need and losses of the inlet
 * that is farthest along the pipe, spread over its developed length and a half more for fittings; each run takes the
 * smallest pipe that loses no more. The rule of UPC 2018 appendix A, section A 104, for its average pressure loss.
 */
export const byUniformFriction: Sizer = ({ network, solution, options }) => {
  const along = developedLengths(network);
  const farthest = network.inlets.reduce((one, other) => (along[other.run]! > along[one.run]! ? other : one));
  const available =
    solution.supplyPressure - lossesBesidesPipe(network, solution, farthest) - farthest.requiredPressure;
  const gradient = available / (along[farthest.run]! * (1 + fittingShare));
  return options.map((list) => list.find((option) => option.gradient <= gradient) ?? list.at(-1)!);
};

/** Least pressure drop per height of the table's procedure. */
const tableElevation = toSI(0.5, 'psi/ft');
/** The need that the table has in it; what a fixture asks beyond comes off the pressure. */
const tableNeed = toSI(8, 'psi');
/** Developed length counts a fifth more for fittings. */
const tableLength = 1.2;

/**
 * The segment-free table of IPC 2018 appendix E, Table E201.1, by its procedure (both from memory): pressure at the
 * street less half a psi per foot, device losses and needs over 8 psi picks the range; developed length to the
 * farthest outlet and a fifth more picks the column; each run takes the smallest pipe whose row holds its units. A run
 * whose units the column does not reach takes its largest option.
 */
export const bySegmentFreeTable: Sizer = ({ network, solution, options }) => {
  const along = developedLengths(network);
  const highest = Math.max(...network.inlets.map(({ run }) => network.elevation[run]!));
  const need = Math.max(...network.inlets.map(({ requiredPressure }) => requiredPressure));
  const farthest = network.inlets.reduce((one, other) => (along[other.run]! > along[one.run]! ? other : one));
  const pressure =
    solution.supplyPressure -
    tableElevation * (highest - network.supply.elevation.si) -
    deviceLosses(network, solution, farthest) -
    Math.max(0, need - tableNeed);
  const { table } = segmentFree.findLast(({ from }) => fromSI(pressure, 'psi') >= from) ?? segmentFree[0]!;
  const feet = fromSI(Math.max(...along) * tableLength, 'ft');
  const column = `${segmentFreeLengths.find((length) => length >= feet) ?? segmentFreeLengths.at(-1)!} ft`;
  const most = new Map<number, number>();
  for (const row of Object.keys(table.rows)) {
    const inches = nominalInches(row.split(' / ')[1]!);
    most.set(inches, Math.max(most.get(inches) ?? 0, lookUp(table, row, column).printed));
  }
  return options.map(
    (list, at) => list.find(({ inches }) => (most.get(inches) ?? 0) >= solution.units[at]!) ?? list.at(-1)!,
  );
};

/** The hand methods by name, in the order in which they are shown. */
export const handMethods = {
  velocity: byVelocity,
  'uniform-friction': byUniformFriction,
  'segment-free-table': bySegmentFreeTable,
} as const satisfies Record<string, Sizer>;

export type HandMethodId = keyof typeof handMethods;

/** Developed length from the street to the end of each run, m. */
function developedLengths({ size, parent, length }: Network): Float64Array {
  const along = new Float64Array(size);
  for (let at = 0; at < size; at++) along[at] = length[at]! + (at === 0 ? 0 : along[parent[at]!]!);
  return along;
}

function deviceLosses(network: Network, solution: Solution, { run }: Inlet): number {
  return pathTo(network, run).reduce((sum, at) => sum + solution.deviceLoss[at]!, 0);
}

function lossesBesidesPipe(network: Network, solution: Solution, inlet: Inlet): number {
  const height = pathTo(network, inlet.run).reduce((sum, at) => sum + solution.elevationLoss[at]!, 0);
  return height + deviceLosses(network, solution, inlet);
}
