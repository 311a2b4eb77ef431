import fc from 'fast-check';
import { expect, it } from 'vitest';
import { drawPlan } from '../../../engine/drawing/plan.ts';
import { drawRiser } from '../../../engine/drawing/riser.ts';
import { buildNetwork, report } from '../../../engine/index.ts';
import { drawingWords } from '../../../views/text/drawing-words.ts';
import { arbitraryJob } from '../../arbitrary/job.ts';
import { clashes, outside } from './clashes.ts';

it.each([
  ['riser', drawRiser],
  ['plan', drawPlan],
] as const)('the %s of any job keeps its texts apart, on its paper, and draws every run', (_view, draw) => {
  let drawn = 0;
  fc.assert(
    fc.property(arbitraryJob, (job) => {
      const built = buildNetwork(job);
      if (!built.ok) return;
      drawn++;
      const solved = report(built.network);
      const drawing = draw(solved, drawingWords(solved));
      expect(drawing.pipes).toHaveLength(built.network.size);
      expect(clashes(drawing)).toEqual([]);
      expect(outside(drawing)).toEqual([]);
      expect([drawing.width, drawing.height].every(Number.isFinite)).toBe(true);
    }),
    { numRuns: 60 },
  );
  expect(drawn).toBeGreaterThan(20);
});
