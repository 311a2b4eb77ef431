import { describe, expect, it } from 'vitest';
import { drawPlan } from '../../../engine/drawing/plan.ts';
import { drawingWords } from '../../../views/text/drawing-words.ts';
import { buildingJob } from '../../bench/building-job.ts';
import { exampleNames, openExample, reportOf as solved } from '../../examples/open-example.ts';
import { cold, fixture, ft, job, reportOf, run } from '../../jobs/written-job.ts';
import { clashes, outside } from './clashes.ts';
import { manyBathsJob } from './many-baths.ts';

describe('the tree of a small house laid flat', () => {
  // From the street 40 ft, then 30 ft to one tap; to another 10 ft and 20 ft: both 70 ft from the street.
  const report = reportOf(
    job(
      [fixture('A', 'lavatory', { inlets: 'cold' }), fixture('B', 'lavatory', { inlets: 'cold' })],
      [
        run('S', 'street', { length: ft(40), size: '1' }),
        run('A1', 'S', { length: ft(30), size: '1/2', end: cold('A') }),
        run('B1', 'S', { length: ft(10), size: '1/2' }),
        run('B2', 'B1', { length: ft(20), size: '1/2', end: cold('B') }),
      ],
    ),
  );
  const drawing = drawPlan(report, drawingWords(report));
  const end = (id: string) =>
    drawing.pipes.find(({ run: at }) => report.network.runs[at]!.id === id)!.way.at(-1)!;

  it('has ends that are as far along the pipe above one another, and lengths to scale where none is short', () => {
    expect(end('A1').x).toBeCloseTo(end('B2').x, 9);
    const along = (id: string) => (end(id).x - drawing.datum) / drawing.pointsPerMetre / 0.3048;
    expect(along('S')).toBeCloseTo(40, 6);
    expect(along('B1')).toBeCloseTo(50, 6);
    expect(along('A1')).toBeCloseTo(70, 6);
  });

  it('has a row for each end, and the first run of a branch in the row of what feeds it', () => {
    expect(end('A1').y).toBe(end('S').y);
    expect(end('B2').y).toBe(end('B1').y);
    expect(end('B1').y).toBeGreaterThan(end('S').y + 10);
  });

  it('marks the lengths in the units of the reader', () => {
    const marks = drawing.texts.filter(({ role }) => role === 'mark').map(({ text }) => text);
    expect(marks).toEqual(['0 ft', '10 ft', '20 ft', '30 ft', '40 ft', '50 ft', '60 ft', '70 ft']);
  });
});

describe('no text of a flat tree stands on another, on a symbol or on a pipe', () => {
  it.each(exampleNames)('in %s', async (name) => {
    const report = solved(await openExample(name));
    const drawing = drawPlan(report, drawingWords(report));
    expect(clashes(drawing)).toEqual([]);
    expect(outside(drawing)).toEqual([]);
  });

  it('in a generated house of many baths and in a tree of 150 runs', () => {
    for (const report of [manyBathsJob(), buildingJob(150)].map(solved)) {
      const drawing = drawPlan(report, drawingWords(report));
      expect(clashes(drawing)).toEqual([]);
      expect(outside(drawing)).toEqual([]);
      expect(drawing.leftOut.length).toBeLessThan(report.network.size / 10);
    }
  });
});
