import { describe, expect, it } from 'vitest';
import type { LedgerLine, Run } from '../../../engine/index.ts';
import { stairsOf } from '../../../views/parts/stairs.ts';

const length = { typed: '10 ft', si: 3.048 };
const run = (id: string, end?: Run['end']): Run => ({
  id,
  from: 'street',
  size: '1',
  material: 'pex',
  length,
  fittings: [],
  ...(end === undefined ? {} : { end }),
});

/** Lines whose losses are given, from 500 kPa down. */
function ledgerOf(losses: readonly (readonly [number, LedgerLine['what'], number])[]): LedgerLine[] {
  let pressure = 500_000;
  return losses.map(([position, what, loss]) => {
    const before = pressure;
    pressure -= loss;
    return { run: position, what, loss, before, after: pressure };
  });
}

describe('stairsOf', () => {
  it('joins pipe and fittings of a run, and keeps its device and its rise apart', () => {
    const runs = [run('SV', { device: 'meter', size: '3/4' }), run('T1')];
    const lines = ledgerOf([
      [0, 'pipe', 20_000],
      [0, 'fittings', 5_000],
      [0, 'elevation', 10_000],
      [0, 'device', 15_000],
      [1, 'pipe', 30_000],
      [1, 'elevation', -8_000],
    ]);
    const stairs = stairsOf(lines, runs);
    expect(stairs.map(({ label }) => label.join(' '))).toEqual([
      'SV pipe',
      'SV rise',
      'SV meter',
      'T1 pipe',
      'T1 drop',
    ]);
    expect(stairs.map(({ before, after }) => before - after)).toEqual([
      25_000, 10_000, 15_000, 30_000, -8_000,
    ]);
    expect(stairs.map((stair) => stair.lines)).toEqual([[0, 1], [2], [3], [4], [5]]);
  });

  it('leaves out what nobody could see', () => {
    expect(
      stairsOf(
        ledgerOf([
          [0, 'pipe', 20_000],
          [0, 'elevation', 10],
        ]),
        [run('A')],
      ),
    ).toHaveLength(1);
  });

  it('merges a long path until it can be read, and loses no pressure on the way', () => {
    const runs = Array.from({ length: 40 }, (_, at) => run(`R${at}`));
    const lines = ledgerOf(runs.map((_, at) => [at, 'pipe', 1000 + at] as const));
    const stairs = stairsOf(lines, runs);
    expect(stairs.length).toBe(14);
    expect(stairs[0]?.before).toBe(500_000);
    expect(stairs.at(-1)?.after).toBe(lines.at(-1)?.after);
    for (let at = 1; at < stairs.length; at++) expect(stairs[at]!.before).toBe(stairs[at - 1]!.after);
    expect(stairs.flatMap((stair) => stair.lines)).toEqual(lines.map((_, at) => at));
  });

  it('names what it merged', () => {
    const runs = Array.from({ length: 15 }, (_, at) => run(`R${at}`));
    const lines = ledgerOf(
      runs.map((_, at) => [at, at === 14 ? 'elevation' : 'pipe', at > 12 ? 500 : 5000] as const),
    );
    const labels = stairsOf(lines, runs).map(({ label }) => label.join(' '));
    expect(labels.at(-1)).toBe('R13–R14 pipe, rise');
    expect(labels[0]).toBe('R0 pipe');
  });
});
