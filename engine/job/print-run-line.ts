import { parseQuantity } from '../units/parse-quantity.ts';
import type { Device, FittingCount, Quantity, Run, RunEnd } from './job.ts';
import {
  arresterSizePattern,
  backflowWords,
  deviceWords,
  fittingWords,
  heaterWords,
  idPattern,
  inletWords,
  jointWords,
  materialWords,
  sizePattern,
} from './words.ts';

/** What the shorthand says of a run: all but its id, the run it comes from, and its note. */
export type RunFields = Omit<Run, 'id' | 'from' | 'note'>;

/**
 * A run in trade words, such as `3/4 PEX 18' up 9' 2 ells to RAIN hot`. A loss curve typed at a device is not
 * written: {@link lineIsComplete} tells.
 */
export function printRunLine(run: RunFields): string {
  const words = [run.size, materialWords[run.material][0]];
  if (run.joint !== undefined) words.push(jointWords[run.joint][0]);
  words.push(run.length.typed);
  if (run.rise !== undefined) words.push(printRise(run.rise));
  if (run.fittings.length > 0) words.push(printFittings(run.fittings));
  if (run.end !== undefined) words.push(printEnd(run.end));
  return words.join(' ');
}

/** Whether the line says everything: read again, it gives the same run, its id, parent and note aside. */
export function lineIsComplete(run: RunFields): boolean {
  const { end } = run;
  if (!sizePattern.test(run.size)) return false;
  if (end === undefined) return true;
  if (!('device' in end)) return idPattern.test(end.fixture);
  if (end.device === 'other' || ('curve' in end && end.curve !== undefined)) return false;
  if (end.device === 'arrester') return arresterSizePattern.test(end.size);
  if (!('size' in end) || end.size === undefined) return true;
  if (!sizePattern.test(end.size)) return false;
  // `2 1/2 psi` would be read back as a pressure of two and a half.
  return end.device !== 'reducing-valve' || !parseQuantity(`${end.size} ${end.set.typed}`, 'pressure').ok;
}

/** `up` and `down` as people say it; a sign that `down` would not give back is kept behind `rise`. */
function printRise({ typed }: Quantity): string {
  if (/^-[\d.¼½¾⅛⅜⅝⅞]/.test(typed)) return `down ${typed.slice(1)}`;
  return /^[\d.¼½¾⅛⅜⅝⅞]/.test(typed) ? `up ${typed}` : `rise ${typed}`;
}

/** Fittings with their counts: `2 ells 1 tee`. */
export function printFittings(fittings: readonly FittingCount[]): string {
  return fittings
    .map(({ kind, count }) => `${count} ${fittingWords[kind][0]}${count === 1 ? '' : 's'}`)
    .join(' ');
}

/** Where a run ends: `to RAIN hot`, `then meter 3/4`. */
export function printEnd(end: RunEnd): string {
  return 'device' in end ? `then ${printDevice(end)}` : `to ${end.fixture} ${inletWords[end.inlet][0]}`;
}

function printDevice(end: Device): string {
  const word = deviceWords[end.device][0];
  switch (end.device) {
    case 'meter':
    case 'arrester':
      return `${word} ${end.size}`;
    case 'reducing-valve':
      return `${word} ${end.size === undefined ? '' : `${end.size} `}${end.set.typed}`;
    case 'backflow':
      return `${word} ${backflowWords[end.type][0]}${end.size === undefined ? '' : ` ${end.size}`}`;
    case 'heater':
      return `${word} ${heaterWords[end.type][0]}`;
    case 'manifold':
      return `${word} ${end.size} ${end.ports} ${end.ports === 1 ? 'port' : 'ports'}${end.valved ? ' valved' : ''}`;
    case 'mixing-valve':
      return end.cv === undefined ? word : `${word} cv ${end.cv}`;
    case 'softener':
    case 'filter':
    case 'expansion-tank':
      return word;
    case 'other':
      return `${word} ${JSON.stringify(end.name)}`;
  }
}
