import { type Bin, binOf, costOf, type Pick, roomFor } from './cut-stock-bin.ts';
import type { Load, Room } from './cut-stock-load.ts';

/** A packing to start from: the cheapest of best fit decreasing onto each stock length. */
export function packGreedily(loads: readonly Load[], rooms: readonly Room[]): Bin[] {
  const picks = picksInOrder(loads, rooms);
  const tries = rooms.map((room) => bestFit(picks, rooms, room));
  return tries.reduce((best, bins) => (costOf(bins) < costOf(best) ? bins : best));
}

/** Each piece in the form that costs least if all stock were used up, the longest first. */
export function picksInOrder(loads: readonly Load[], rooms: readonly Room[]): Pick[] {
  const rate = Math.min(...rooms.map(({ cost, capacity }) => cost / capacity));
  const price = ({ wholeCost, weight }: Pick['form']): number => wholeCost + rate * weight;
  return loads
    .map((load): Pick => {
      return { load, form: load.forms.reduce((best, form) => (price(form) < price(best) ? form : best)) };
    })
    .sort((one, other) => other.form.weight - one.form.weight || one.load.piece - other.load.piece);
}

/** Each piece, the longest first, onto the stick that it leaves the least of; a new stick is one of `opened`. */
function bestFit(picks: readonly Pick[], rooms: readonly Room[], opened: Room): Bin[] {
  const open: { left: number; readonly picks: Pick[] }[] = [];
  for (const pick of picks) {
    const { weight } = pick.form;
    const fitting = open.reduce<(typeof open)[number] | undefined>(
      (best, bin) => (bin.left >= weight && (best === undefined || bin.left < best.left) ? bin : best),
      undefined,
    );
    if (fitting === undefined) {
      const room = opened.capacity >= weight ? opened : roomFor(rooms, weight)!;
      open.push({ left: room.capacity - weight, picks: [pick] });
      continue;
    }
    fitting.left -= weight;
    fitting.picks.push(pick);
  }
  return open.map((bin) => binOf(bin.picks, rooms));
}
