import { describe, expect, it } from 'vitest';
import type { LedgerLine, Run } from '../../../engine/index.ts';
import { type PathLines, pairLines } from '../../../views/parts/pair-lines.ts';

const length = { typed: '10 ft', si: 3.048 };

/** A path by its losses in Pa, from 500 kPa down: run, kind, loss. */
function pathOf(...losses: readonly (readonly [string, LedgerLine['what'], number])[]): PathLines {
  const runs = losses.map(
    ([id]): Run => ({ id, from: 'street', size: '1', material: 'pex', length, fittings: [] }),
  );
  let pressure = 500_000;
  const lines = losses.map(([, what, loss], run): LedgerLine => {
    const before = pressure;
    pressure -= loss;
    return { run, what, loss, before, after: pressure };
  });
  return { lines, runs };
}

const told = (first: PathLines, second: PathLines) =>
  pairLines(first, second).map((line) => [line.run, line.what, line.first, line.second, line.difference]);

describe('pairLines', () => {
  it('puts what both pass on one line, and what one passes alone on its own', () => {
    const cold = pathOf(['S', 'pipe', 20_000], ['S', 'elevation', 9_000], ['C', 'pipe', 30_000]);
    const hot = pathOf(
      ['S', 'pipe', 20_000],
      ['S', 'elevation', 9_000],
      ['W', 'device', 4_000],
      ['H', 'pipe', 33_000],
    );
    // Cold ends at 500 - 59 = 441 kPa, hot at 500 - 66 = 434: 7 kPa apart, and -30 + 4 + 33 = 7.
    expect(told(cold, hot)).toEqual([
      ['S', 'pipe', 0, 0, 0],
      ['S', 'elevation', 1, 1, 0],
      ['C', 'pipe', 2, -1, -30_000],
      ['W', 'device', -1, 2, 4_000],
      ['H', 'pipe', -1, 3, 33_000],
    ]);
  });

  it('tells a step that came and one that went between two states of one path, in the order of water', () => {
    const before = pathOf(['S', 'pipe', 20_000], ['S', 'fittings', 5_000], ['T', 'pipe', 8_000]);
    const after = pathOf(['S', 'pipe', 12_000], ['S', 'device', 3_000], ['T', 'pipe', 8_000]);
    expect(told(before, after)).toEqual([
      ['S', 'pipe', 0, 0, -8_000],
      ['S', 'fittings', 1, -1, -5_000],
      ['S', 'device', -1, 1, 3_000],
      ['T', 'pipe', 2, 2, 0],
    ]);
  });

  it('tells runs that two layouts pass in another order once for each, and loses nothing', () => {
    const one = pathOf(['P', 'pipe', 1_000], ['Q', 'pipe', 2_000], ['R', 'pipe', 4_000]);
    const other = pathOf(['Q', 'pipe', 2_500], ['P', 'pipe', 1_000], ['R', 'pipe', 4_000]);
    expect(told(one, other)).toEqual([
      ['Q', 'pipe', -1, 0, 2_500],
      ['P', 'pipe', 0, 1, 0],
      ['Q', 'pipe', 1, -1, -2_000],
      ['R', 'pipe', 2, 2, 0],
    ]);
    const nothing = pathOf();
    expect(told(nothing, nothing)).toEqual([]);
    expect(told(nothing, one).map(([run]) => run)).toEqual(['P', 'Q', 'R']);
  });
});
