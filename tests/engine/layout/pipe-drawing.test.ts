import { describe, expect, it } from 'vitest';
import { printRunLine } from '../../../engine/job/print-run-line.ts';
import type { Stretch } from '../../../engine/layout/drawing.ts';
import { gridOf } from '../../../engine/layout/grid.ts';
import { pipeDrawing } from '../../../engine/layout/pipe-drawing.ts';

/** In feet. */
const to = (x: number, y: number, z = 0) => ({ x: 12 * x, y: 12 * y, z: 12 * z });
const tap = (id: string, ...corners: Stretch['corners']): Stretch => ({
  name: 'C',
  corners,
  end: { fixture: id, inlet: 'cold' },
  behind: [],
});

/** The runs as a person writes them, `C1 < S1: 3' 1 ell to F cold`. */
function lines(...drawing: readonly Stretch[]): string[] {
  const piping = { material: 'pex' as const };
  return pipeDrawing(drawing, { run: 'S1', at: to(0, 0) }, { grid: gridOf('us'), piping }).map((run) => {
    const line = printRunLine({ size: '1', ...run }).replace('1 PEX ', '');
    return `${run.id} < ${run.from}: ${line}`;
  });
}

describe('pipeDrawing', () => {
  it('measures along the corners and puts an ell at each: 10 + 4 + 2, two turns', () => {
    expect(lines(tap('F', to(10, 0), to(10, 4), to(10, 4, -2)))).toEqual([
      "C1 < S1: 16' down 2' 2 ells to F cold",
    ]);
  });

  it('counts no ell where a corner goes straight on', () => {
    expect(lines(tap('F', to(10, 0), to(12, 0), to(12, 5)))).toEqual(["C1 < S1: 17' 1 ell to F cold"]);
  });

  it('lets what goes on along the line through the tee, and the other leave by its side with no ell', () => {
    const main: Stretch = {
      name: 'M',
      corners: [to(10, 0)],
      behind: [tap('A', to(10, 3)), tap('B', to(18, 0))],
    };
    expect(lines(main)).toEqual([
      "M1 < S1: 10'",
      "C1 < M1: 3' 1 tee to A cold",
      "C2 < M1: 8' 1 through tee to B cold",
    ]);
  });

  it('turns behind the tee where nothing goes straight on', () => {
    const main: Stretch = {
      name: 'M',
      corners: [to(10, 0)],
      behind: [tap('A', to(10, 3)), tap('B', to(10, -3))],
    };
    expect(lines(main).slice(1)).toEqual([
      "C1 < M1: 3' 1 tee to A cold",
      "C2 < M1: 3' 1 through tee 1 ell to B cold",
    ]);
  });

  it('gives an ell to a side that has to go on along the line', () => {
    const both = [tap('A', to(14, 0), to(14, 2)), tap('B', to(18, 0))];
    const main: Stretch = { name: 'M', corners: [to(10, 0)], behind: both };
    expect(lines(main).slice(1)).toEqual([
      "C1 < M1: 6' 1 tee 2 ells to A cold",
      "C2 < M1: 8' 1 through tee to B cold",
    ]);
  });

  it('takes three off one place by two tees, back to back', () => {
    const main: Stretch = {
      name: 'M',
      corners: [to(10, 0)],
      behind: [tap('A', to(10, 3)), tap('B', to(10, -3)), tap('D', to(11, 0))],
    };
    expect(lines(main).slice(1)).toEqual([
      "C1 < M1: 3' 1 tee to A cold",
      "M2 < M1: 0' 1 through tee",
      "C2 < M2: 3' 1 tee to B cold",
      "C3 < M2: 1' 1 through tee to D cold",
    ]);
  });

  it('needs no tee at a manifold, and one ell in a bent line', () => {
    const bent = { ...tap('B', to(1, 0), to(1, 9), to(5, 9)), bent: true };
    const main: Stretch = {
      name: 'M',
      corners: [to(1, 0)],
      end: { device: 'manifold', size: '1', ports: 2, valved: true },
      behind: [tap('A', to(1, 4), to(3, 4)), bent],
    };
    expect(lines(main)).toEqual([
      "M1 < S1: 1' then manifold 1 2 ports valved",
      "C1 < M1: 6' 1 ell to A cold",
      "C2 < M1: 13' 1 ell to B cold",
    ]);
  });

  it('takes two turns with a length that is given, and writes the valves behind the fittings', () => {
    const given: Stretch = { ...tap('F', to(0, 0, 3)), length: 240, fittings: ['compression-stop'] };
    expect(lines(given)).toEqual(["C1 < S1: 20' up 3' 2 ells 1 stop to F cold"]);
  });
});
