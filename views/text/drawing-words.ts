import type { DrawingWords } from '../../engine/drawing/placed.ts';
import type { Device } from '../../engine/job/job.ts';
import type { Report } from '../../engine/network/report.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { gridStep } from '../parts/grid-step.ts';
import { figure, figureWithUnit, unitSymbol } from './figure.ts';
import { endWords } from './loss-step.ts';
import { shortSizeText } from './size-text.ts';

/** A longer name is cut in a drawing; the table beside it has it whole. */
const longestName = 26;

/** What a drawing of a solved scheme says at its runs, ends, devices and floors, in the reader's units. */
export function drawingWords({ network, solution, worst }: Report): DrawingWords {
  const { runs, job } = network;
  const system = job.units;
  const inletAt = new Map(network.inlets.map((inlet) => [inlet.run, inlet]));
  const left = (at: number) => figureWithUnit(solution.residual[at]!, 'pressure', system);
  return {
    run: (at) => {
      const run = runs[at]!;
      const flow = figureWithUnit(solution.flow[at]!, 'flow', system);
      return [
        `${short(run.id)} ${shortSizeText(run.size)} ${flow}`,
        `${short(run.id)} ${shortSizeText(run.size)}`,
        short(run.id),
      ];
    },
    end: (at) => {
      const run = runs[at]!;
      const inlet = inletAt.get(at);
      const last = network.subtreeEnd[at] === at + 1;
      const named = `${short(run.id)} ${shortSizeText(run.size)}`;
      if (inlet === undefined)
        return last ? [[short(endWords(run)), named], [short(run.id)]] : [[short(endWords(run))]];
      const { fixture, side } = inlet;
      const count = fixture.count > 1 ? ` ×${fixture.count}` : '';
      const mark = worst?.inlet.run === at ? 'WORST: ' : '';
      const marked = `${mark}${short(fixture.name)}${count}, ${side}`;
      const [first, second] = inTwo(`${mark}${fixture.name}${count}, ${side}`);
      const bare = figure(solution.residual[at]!, 'pressure', system);
      return [
        [marked, `${named}, ${left(at)}`],
        [short(first), ...(second === '' ? [] : [short(second)]), `${named}, ${left(at)}`],
        [marked, `${short(run.id)}, ${bare}`],
        [`${short(run.id)} ${short(fixture.id)} ${side}`],
        [short(run.id)],
      ];
    },
    symbol: (at) => {
      const { end } = runs[at]!;
      return end !== undefined && 'device' in end ? deviceLetters(end) : '';
    },
    street: `${sourceWord(job.supply.kind)} ${figureWithUnit(solution.supplyPressure, 'pressure', system)}`,
    floor: (level) => {
      const { name, elevation } = job.levels[level]!;
      return `${short(name)}, ${elevation.typed}`;
    },
    markStep: (longest) => {
      const metre = toSI(1, displayUnits[system].length.unit);
      return gridStep(longest / metre, 8) * metre;
    },
    mark: (length) =>
      `${figure(length, 'length', system).replace(/\.0+$/, '')} ${unitSymbol('length', system)}`,
    key: {
      cold: `cold; the heavier the line, the larger the bore; ${unitSymbol('pressure', system)} at a fixture is what is left there`,
      hot: 'hot',
      worst: worst === undefined ? '' : `path to the worst fixture, ${short(worst.inlet.fixture.name)}`,
    },
  };
}

function short(text: string): string {
  const letters = [...text];
  return letters.length <= longestName
    ? text
    : `${letters
        .slice(0, longestName - 1)
        .join('')
        .trimEnd()}…`;
}

/** A text in two lines, broken at the space that makes them most alike; a short one stays in one. */
function inTwo(text: string): readonly [first: string, second: string] {
  const spaces = [...text.matchAll(/ /g)].map(({ index }) => index);
  if (text.length <= 18 || spaces.length === 0) return [text, ''];
  const longest = (at: number) => Math.max(at, text.length - at);
  const at = spaces.reduce((best, next) => (longest(next) < longest(best) ? next : best));
  return [text.slice(0, at), text.slice(at + 1)];
}

function sourceWord(kind: Report['network']['supply']['kind']): string {
  return kind === 'well' ? 'Well' : 'Street';
}

/** The letters in the symbol of a device; the key of the drawing says them in full. */
export function deviceLetters(device: Device): string {
  switch (device.device) {
    case 'meter':
      return 'M';
    case 'reducing-valve':
      return 'PRV';
    case 'backflow':
      return 'BF';
    case 'softener':
      return 'SOFT';
    case 'filter':
      return 'FLT';
    case 'heater':
      return device.type === 'tankless' ? 'TWH' : 'WH';
    case 'mixing-valve':
      return 'MX';
    case 'expansion-tank':
      return 'ET';
    case 'arrester':
      return device.size;
    case 'manifold':
    case 'other':
      return '';
  }
}
