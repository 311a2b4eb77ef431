import { z } from 'zod';
import { layoutKinds } from '../../engine/index.ts';
import { materials } from '../../tables/pipe/names.ts';
import { choice, optionalChoice, optionalText, tick } from './fields.ts';

const materialIds = Object.keys(materials) as readonly (keyof typeof materials)[];

/** How a layout is to be drawn up. */
export const drawUpForm = z.object({
  kind: choice('a kind of layout', layoutKinds),
  name: optionalText(),
  halves: tick,
  heaters: optionalChoice('how many heaters', ['one', 'each']),
  material: optionalChoice('a material', materialIds),
  least: tick,
});

/** Where a least-cost sizing goes: into the scheme itself, or into a copy of it. */
export const sizeAsForm = z.object({ as: choice('where the sizes go', ['replace', 'copy']) });
