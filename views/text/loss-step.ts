import type { Run } from '../../engine/job/job.ts';
import { type MaterialId, materials } from '../../tables/pipe/names.ts';
import { sizeText } from './size-text.ts';

/** What stands at the end of a run, in a few words; empty where it is only pipe. */
export function endWords(run: Run): string {
  const { end } = run;
  if (end === undefined) return '';
  if ('fixture' in end) return `${end.fixture} ${end.inlet}`;
  switch (end.device) {
    case 'meter':
      return `${sizeText(end.size)} meter`;
    case 'reducing-valve':
      return 'reducing valve';
    case 'backflow':
      return `${end.type} backflow`;
    case 'heater':
      return `${end.type} heater`;
    case 'manifold':
      return `${sizeText(end.size)} manifold`;
    case 'mixing-valve':
      return 'mixing valve';
    case 'expansion-tank':
      return 'expansion tank';
    case 'other':
      return end.name;
    case 'softener':
    case 'filter':
    case 'arrester':
      return end.device;
  }
}

/** The same in a word that fits under a step. */
export function endWord({ end }: Run): string {
  if (end === undefined) return '';
  if ('fixture' in end) return end.fixture;
  switch (end.device) {
    case 'reducing-valve':
      return 'reducer';
    case 'mixing-valve':
      return 'mixer';
    case 'expansion-tank':
      return 'tank';
    case 'other':
      return end.name;
    case 'meter':
    case 'backflow':
    case 'heater':
    case 'manifold':
    case 'softener':
    case 'filter':
    case 'arrester':
      return end.device;
  }
}

/** Size and material of a run, as read. */
export function pipeWords(run: Run): string {
  const material: MaterialId = run.material;
  return `${sizeText(run.size)} ${materials[material]}`;
}

/** What one line of the ledger takes pressure for. */
export function lossWords(
  run: Run,
  what: 'pipe' | 'fittings' | 'device' | 'elevation',
  loss: number,
): string {
  switch (what) {
    case 'pipe':
      return `${pipeWords(run)}, ${run.length.typed}`;
    case 'fittings':
      return 'fittings';
    case 'device':
      return endWords(run);
    case 'elevation':
      return loss < 0 ? 'height given back' : 'rise';
  }
}
