import type { Device } from '../job/job.ts';
import { textSize } from './place-texts.ts';
import type { Box, SymbolShape } from './placed.ts';
import { textWidth } from './text-width.ts';

const height = 14;

/** The plain outline that stands for a device. */
const shapes: { readonly [device in Device['device']]: SymbolShape } = {
  meter: 'circle',
  'reducing-valve': 'box',
  backflow: 'box',
  softener: 'tank',
  filter: 'box',
  heater: 'tank',
  manifold: 'bar',
  'mixing-valve': 'circle',
  'expansion-tank': 'circle',
  arrester: 'circle',
  other: 'box',
};

export function shapeOf({ device }: Device): SymbolShape {
  return shapes[device];
}

/** Box of a symbol with its letters, about the end of its run at (0, 0). */
export function symbolBox(shape: SymbolShape, letters: string): Box {
  const half = Math.max(height, textWidth(letters, textSize, true) + (shape === 'circle' ? 8 : 6)) / 2;
  return { left: -half, right: half, top: -height / 2, bottom: height / 2 };
}

/** A manifold's bar from its own end to the last pipe that leaves it. */
export function barBox(reach: number): Box {
  return { left: -7, right: reach + 7, top: -5, bottom: 5 };
}

export function moved(box: Box, x: number, y: number): Box {
  return { left: box.left + x, right: box.right + x, top: box.top + y, bottom: box.bottom + y };
}

/** The mark of the street, about the point where its pressure is known. */
export const streetBox: Box = { left: -9, right: 0, top: -7, bottom: 7 };
