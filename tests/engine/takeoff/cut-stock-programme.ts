import type { Piece, StockLength } from '../../../engine/takeoff/cut-stock-model.ts';

export interface CutList {
  readonly pieces: readonly Piece[];
  readonly stock: readonly StockLength[];
  readonly perCut: number;
}

/** Whole numbers below a limit, the same for the same seed (the generator of Park and Miller, 1988). */
export function drawFrom(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state * 48_271) % 2_147_483_647;
    return state % below;
  };
}

/**
 * A made-up cut list in inches: 4 to `most` pieces, one to three stock lengths, with and without a saw cut, with and
 * without prices, up to two pieces longer than any stock.
 */
export function randomCutList(seed: number, most: number): CutList {
  const draw = drawFrom(seed * 7919 + 13);
  for (let skip = 0; skip < 5; skip++) draw(10);
  const lengths = [84, 96, 120, 144, 180, 240];
  const stockCount = 1 + draw(3);
  while (lengths.length > stockCount) lengths.splice(draw(lengths.length), 1);
  const longest = Math.max(...lengths);
  const priced = draw(3) === 0;
  const perCut = draw(3) === 0 ? 1 : 0;
  const stock = lengths.map((length): StockLength => {
    const plain = { length, form: 'stick' } as const;
    // Longer stock is cheaper by the foot, or dearer.
    return priced ? { ...plain, price: Math.round(length * (0.8 + draw(50) / 100)) } : plain;
  });
  const count = 4 + draw(most - 3);
  const pieces = Array.from({ length: count }, (_, at): Piece => {
    // More than two of these, or in more parts, cost the optimiser minutes.
    const long = draw(5) === 0 && at < 2;
    const length = long ? longest + 1 + draw(longest - 1) : 8 + draw(longest - 7);
    return { id: `R${at}`, length, spliceable: long || draw(2) === 0 };
  });
  return { pieces, stock, perCut };
}

/**
 * Least cost of a cut list as a mixed-integer programme. It knows nothing of whole lengths and remainders: a piece
 * that is longer than any stock is spread over sticks in parts of any length, as many parts as it needs at least.
 */
export function cutProgramme({ pieces, stock, perCut }: CutList): string {
  const longest = Math.max(...stock.map(({ length }) => length));
  const parts = pieces.map(({ length }) => Math.ceil(length / longest));
  const sticks = Array.from({ length: parts.reduce((sum, count) => sum + count, 0) }, (_, at) => at);
  const terms = (list: readonly string[]): string => list.join(' ');
  const bought = (stick: number, factor: (one: StockLength) => number, sign: string): string =>
    terms(stock.map((one, at) => `${sign} ${factor(one)} z${stick}_${at}`));
  const lines = [
    'Minimize',
    ` cost: ${terms(sticks.map((stick) => bought(stick, ({ price, length }) => price ?? length, '+')))}`,
  ];
  lines.push('Subject To');
  for (const stick of sticks) {
    lines.push(` one${stick}: ${terms(stock.map((_, at) => `+ z${stick}_${at}`))} <= 1`);
    const cut = pieces.map(({ length }, piece) =>
      parts[piece] === 1
        ? `+ ${length + perCut} u${piece}_${stick}`
        : `+ f${piece}_${stick} + ${perCut} u${piece}_${stick}`,
    );
    lines.push(` full${stick}: ${terms(cut)} ${bought(stick, ({ length }) => length + perCut, '-')} <= 0`);
    // Sticks are alike: the longer ones first.
    if (stick > 0)
      lines.push(
        ` order${stick}: ${bought(stick, ({ length }) => length, '+')} ${bought(stick - 1, ({ length }) => length, '-')} <= 0`,
      );
  }
  pieces.forEach(({ length }, piece) => {
    lines.push(` parts${piece}: ${terms(sticks.map((stick) => `+ u${piece}_${stick}`))} = ${parts[piece]}`);
    if (parts[piece] === 1) return;
    lines.push(` whole${piece}: ${terms(sticks.map((stick) => `+ f${piece}_${stick}`))} = ${length}`);
    for (const stick of sticks)
      lines.push(` part${piece}_${stick}: + f${piece}_${stick} - ${longest} u${piece}_${stick} <= 0`);
  });
  lines.push('Binary');
  for (const stick of sticks) {
    lines.push(` ${terms(stock.map((_, at) => `z${stick}_${at}`))}`);
    lines.push(` ${terms(pieces.map((_, piece) => `u${piece}_${stick}`))}`);
  }
  lines.push('End');
  return lines.join('\n');
}
