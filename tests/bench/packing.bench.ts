import { packPieces } from '../../engine/takeoff/cut-stock.ts';
import type { StockLength } from '../../engine/takeoff/cut-stock-model.ts';
import { toCutUnits, unitsPerMetre } from '../../engine/takeoff/cut-stock-unit.ts';
import { drawFrom } from '../engine/takeoff/cut-stock-programme.ts';
import { figure, median } from './figure.ts';

const foot = 0.3048 * unitsPerMetre;
const sixteenth = toCutUnits(0.0254 / 16);

/** Lists of 500 pieces with lengths to a sixteenth of an inch: feet of stock, shortest and longest piece in feet. */
const kinds = [
  { stock: [20], from: 1, to: 20 },
  { stock: [10, 20], from: 1, to: 30 },
  { stock: [20], from: 4, to: 10 },
  { stock: [100, 300, 500], from: 15, to: 90 },
] as const;

/** Bought length over the lower bound, for long random lists; each answer's own gap says the same. */
export function benchPacking(short: boolean): void {
  const ratios: number[] = [];
  const times: number[] = [];
  for (let list = 0; list < (short ? 4 : 40); list++) {
    const { stock, from, to } = kinds[list % kinds.length]!;
    const draw = drawFrom(9000 + list);
    const steps = Math.round(((to - from) * foot) / sixteenth);
    const pieces = Array.from({ length: 500 }, (_, at) => ({
      id: `R${at}`,
      length: Math.round(from * foot) + draw(steps + 1) * sixteenth,
      spliceable: true,
    }));
    const lengths = stock.map((feet): StockLength => ({ length: Math.round(feet * foot), form: 'stick' }));
    const start = performance.now();
    const packing = packPieces(pieces, lengths);
    times.push(performance.now() - start);
    if (!packing.ok || packing.cost < packing.bound)
      throw new Error(`list ${list} is packed below its bound`);
    ratios.push(packing.totals.bought / packing.bound);
  }
  figure(
    'packing_vs_bound',
    ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length,
    'mean_ratio_500_pieces',
  );
  figure('packing_vs_bound_most', Math.max(...ratios), 'ratio_500_pieces');
  figure('packing_500_pieces_ms', median(times), 'ms');
}
