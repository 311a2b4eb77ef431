import { describe, expect, it } from 'vitest';
import type { PlacedDrawing } from '../../../engine/drawing/placed.ts';
import { drawRiser } from '../../../engine/drawing/riser.ts';
import type { Report } from '../../../engine/network/report.ts';
import { drawingWords } from '../../../views/text/drawing-words.ts';
import { buildingJob } from '../../bench/building-job.ts';
import { exampleNames, openExample, reportOf as solved } from '../../examples/open-example.ts';
import { cold, fixture, ft, job, reportOf, run } from '../../jobs/written-job.ts';
import { clashes, outside } from './clashes.ts';
import { manyBathsJob } from './many-baths.ts';

const draw = (report: Report): PlacedDrawing => drawRiser(report, drawingWords(report));

describe('the riser of a small house', () => {
  // Service at the datum, a rise of 3 ft, a riser of 10 ft to a tap at 13 ft, a branch down 1 ft to one at 2 ft.
  const report = reportOf(
    job(
      [fixture('UP', 'lavatory', { inlets: 'cold' }), fixture('LOW', 'lavatory', { inlets: 'cold' })],
      [
        run('S', 'street', { rise: ft(3), size: '1' }),
        run('R', 'S', { rise: ft(10), size: '1/2', end: cold('UP') }),
        run('B', 'S', { rise: ft(-1), size: '1/2', end: cold('LOW') }),
      ],
      {
        levels: [
          { id: 'ground', name: 'Ground', elevation: ft(0) },
          { id: 'upper', name: 'Upper', elevation: ft(10) },
        ],
      },
    ),
  );
  const drawing = draw(report);
  const heightOf = (id: string): number => {
    const end = drawing.pipes.find(({ run: at }) => report.network.runs[at]!.id === id)!.way.at(-1)!;
    return (drawing.datum - end.y) / drawing.pointsPerMetre / 0.3048;
  };

  it('has every end at its true height, in feet', () => {
    expect(heightOf('S')).toBeCloseTo(3, 9);
    expect(heightOf('R')).toBeCloseTo(13, 9);
    expect(heightOf('B')).toBeCloseTo(2, 9);
  });

  it('has the floors at 0 ft and 10 ft', () => {
    const floors = drawing.sheetLines.filter(({ what }) => what === 'floor');
    const heights = new Set(
      floors.map(({ from }) => Math.round((drawing.datum - from.y) / drawing.pointsPerMetre / 0.3048)),
    );
    expect([...heights].sort((one, other) => one - other)).toEqual([0, 10]);
  });

  it('marks the path to the higher tap, and draws the larger pipe heavier', () => {
    const of = (id: string) => drawing.pipes.find(({ run: at }) => report.network.runs[at]!.id === id)!;
    expect(['S', 'R', 'B'].map((id) => of(id).worst)).toEqual([true, true, false]);
    expect(of('S').weight).toBeGreaterThan(of('R').weight);
  });

  it('has a dot where the pipe branches and nowhere else', () => {
    expect(drawing.joints.map(({ run: at }) => report.network.runs[at]!.id)).toEqual(['S']);
  });
});

describe('no text of a riser stands on another, on a symbol or on a pipe', () => {
  it.each(exampleNames)('in %s', async (name) => {
    const example = await openExample(name);
    for (const { id } of example.schemes) {
      const drawing = draw(solved({ ...example, chosen: id }));
      expect(clashes(drawing)).toEqual([]);
      expect(outside(drawing)).toEqual([]);
    }
  });

  it('in a generated house of many baths and in a tree of 150 runs', () => {
    for (const report of [manyBathsJob(), buildingJob(150)].map(solved)) {
      expect(report.network.size).toBeGreaterThanOrEqual(150);
      const drawing = draw(report);
      expect(clashes(drawing)).toEqual([]);
      expect(outside(drawing)).toEqual([]);
      expect(drawing.leftOut.length).toBeLessThan(report.network.size / 10);
    }
  });
});
