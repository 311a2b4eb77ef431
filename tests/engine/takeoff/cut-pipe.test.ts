import { describe, expect, it } from 'vitest';
import { cutPipe, mostCutPieces, type PipeCuts } from '../../../engine/takeoff/cut-pipe.ts';
import type { Packing } from '../../../engine/takeoff/cut-stock-model.ts';
import { fromCutUnits } from '../../../engine/takeoff/cut-stock-unit.ts';
import { Exact, nothing } from '../../../engine/takeoff/money.ts';
import type { PipePiece } from '../../../engine/takeoff/pipe-pieces.ts';
import type { TakeOffLine } from '../../../engine/takeoff/take-off.ts';

function piece(run: string, feet: string, more: Partial<PipePiece> = {}): PipePiece {
  return {
    run,
    material: 'pex',
    size: '1/2',
    service: 'cold',
    homeRun: false,
    ...more,
    feet: new Exact(feet),
  };
}

function buried(...runs: readonly string[]): TakeOffLine {
  return {
    article: { kind: 'pipe', material: 'copper-k', sizes: ['1'] },
    unit: 'ft',
    quantity: nothing,
    phase: 'underground',
    area: { area: 'outdoors' },
    service: 'cold',
    from: [{ runs, quantity: nothing }],
  };
}

function packingOf({ cut }: PipeCuts): Packing {
  if (cut.is !== 'packed') throw new Error('not cut');
  return cut.packing;
}

const feet = (cutUnits: number): number => Number((fromCutUnits(cutUnits) / 0.3048).toFixed(3));

describe('the pipe of a take-off in sticks and coils', () => {
  it('is by material and size, and counts each service', () => {
    const pieces = [
      piece('A', '4', { size: '3/4', service: 'hot' }),
      piece('B', '3', { material: 'cpvc' }),
      piece('C', '5', { service: 'hot' }),
      piece('D', '6'),
      piece('E', '2.5', { service: 'hot' }),
    ];
    const cuts = cutPipe({ pieces, lines: [] });
    expect(cuts.map(({ material, size }) => `${size} ${material}`)).toEqual([
      '1/2 pex',
      '3/4 pex',
      '1/2 cpvc',
    ]);
    expect(cuts[0]!.lengths.map(({ service }) => service)).toEqual(['cold', 'hot']);
    expect(cuts[0]!.lengths.map(({ metres }) => metres / 0.3048)).toEqual([
      expect.closeTo(6, 9),
      expect.closeTo(7.5, 9),
    ]);
    // 5 + 6 + 2.5 ft: one stick of 20, or two of 10, which is no less.
    expect(feet(packingOf(cuts[0]!).totals.bought)).toBe(20);
  });

  it('never splices a home run, and another piece only where no length is as long', () => {
    const whole = cutPipe({ pieces: [piece('A', '90', { homeRun: true }), piece('B', '30')], lines: [] });
    const { sticks, totals } = packingOf(whole[0]!);
    expect(totals.couplings).toBe(0);
    expect(sticks.flatMap(({ cuts }) => cuts.map(({ parts }) => parts))).toEqual([1, 1]);
    const long = cutPipe({ pieces: [piece('A', '30', { material: 'cpvc' })], lines: [] });
    // 30 ft of what comes in sticks of 10 and 20: two lengths, one coupling.
    expect(packingOf(long[0]!).totals.couplings).toBe(1);
    const home = cutPipe({ pieces: [piece('A', '30', { material: 'cpvc', homeRun: true })], lines: [] });
    const { cut } = home[0]!;
    expect(cut.is === 'too long' && cut.tooLong.map(({ id }) => id)).toEqual(['A']);
  });

  it('takes copper in the ground off coils and all other copper from sticks', () => {
    const copper = { material: 'copper-k', size: '1' } as const;
    const pieces = [piece('A', '38', copper), piece('B', '11', copper)];
    const cuts = cutPipe({ pieces, lines: [buried('A')] });
    expect(
      cuts.map((one) => [
        one.buried,
        packingOf(one).sticks.map(({ stock }) => `${stock.form} ${feet(stock.length)}`),
      ]),
    ).toEqual([
      [false, ['stick 12']],
      [true, ['coil 40']],
    ]);
  });

  it('measures what has no stock length, and what is too much to cut at once', () => {
    const none = cutPipe({ pieces: [piece('A', '5', { size: '6' })], lines: [] });
    expect(none[0]!.cut).toEqual({ is: 'no stock' });
    const many = Array.from({ length: mostCutPieces + 1 }, (_, at) => piece(`R${at}`, '5'));
    expect(cutPipe({ pieces: many, lines: [] })[0]!.cut).toEqual({ is: 'too many' });
    expect(cutPipe({ pieces: many.slice(1), lines: [] })[0]!.cut.is).toBe('packed');
  });

  it('couples off-cuts where the plan says so, and never a home run', () => {
    const pieces = ['A', 'B', 'C'].map((run) => piece(run, '6', { material: 'cpvc' }));
    const bought = (list: readonly PipePiece[], plan: 'whole' | 'coupled') =>
      packingOf(cutPipe({ pieces: list, lines: [] }, { plan })[0]!).totals;
    // Three pieces of 6 ft: 18 ft fit a stick of 20 whole. Five: 30 ft are three sticks of 10, one piece coupled.
    expect(feet(bought(pieces, 'whole').bought)).toBe(20);
    const five = [...pieces, piece('D', '6', { material: 'cpvc' }), piece('E', '6', { material: 'cpvc' })];
    expect(feet(bought(five, 'whole').bought)).toBe(40);
    expect(feet(bought(five, 'coupled').bought)).toBe(30);
    expect(bought(five, 'coupled').couplings).toBeGreaterThan(0);
    const home = five.map((one) => ({ ...one, homeRun: true }));
    expect(bought(home, 'coupled')).toEqual(bought(home, 'whole'));
    // 25 ft in one length take a coil of 100, whatever is allowed of other pieces.
    const coil = cutPipe({ pieces: [piece('A', '25', { homeRun: true })], lines: [] }, { plan: 'coupled' });
    expect(packingOf(coil[0]!)).toMatchObject({ gap: 0, provedLeast: true });
  });

  it('allows so many percent for waste instead', () => {
    const { cut } = cutPipe(
      { pieces: [piece('A', '95')], lines: [] },
      { plan: 'allowance', percent: 10 },
    )[0]!;
    if (cut.is !== 'allowed') throw new Error('not allowed');
    // 95 x 1.1 = 104.5 ft: a coil of 100 and a stick of 10.
    expect(feet(cut.allowance.allowed)).toBe(104.5);
    expect(feet(cut.allowance.bought)).toBe(110);
  });
});
