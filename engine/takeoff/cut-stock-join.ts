import { cheapestCover } from './cut-stock-cover.ts';
import type { Room } from './cut-stock-load.ts';
import type { Piece } from './cut-stock-model.ts';
import type { RawStick } from './cut-stock-sticks.ts';

/** How often more stock is taken when pieces do not fit what there is. */
const mostTries = 40;

export interface Joining {
  readonly perCut: number;
  readonly shortestPart: number;
  /** Only what costs less is of use. */
  readonly below: number;
}

/**
 * Uses up off-cuts with couplings: takes the cheapest stock that is long enough in all, lays what may not be spliced
 * on it, then the rest, whole where it fits and else in parts; takes more stock until everything fits. It does not
 * promise the fewest couplings.
 *
 * @returns undefined where nothing below the given cost was found
 */
export function joinOffCuts(
  pieces: readonly Piece[],
  rooms: readonly Room[],
  { perCut, shortestPart, below }: Joining,
): RawStick[] | undefined {
  let need = pieces.reduce((sum, { length }) => sum + length + perCut, 0);
  for (let tries = 0; tries < mostTries; tries++) {
    const { counts, cost } = cheapestCover(need, rooms, 'enough');
    if (cost >= below) return undefined;
    const sticks = rooms
      .flatMap((room, at) => Array.from({ length: counts[at]! }, () => room))
      .sort((one, other) => other.capacity - one.capacity)
      .map(({ stock, capacity }): OpenStick => ({ stock, left: capacity, cuts: [] }));
    const without = fill(sticks, pieces, perCut, shortestPart);
    if (without === 0) return sticks.filter(({ cuts }) => cuts.length > 0);
    const capacity = rooms.reduce((sum, room, at) => sum + room.capacity * counts[at]!, 0);
    need = Math.max(need + without, capacity + 1);
  }
  return undefined;
}

interface OpenStick {
  readonly stock: number;
  left: number;
  readonly cuts: { readonly piece: number; readonly length: number }[];
}

/** Lays the pieces on the sticks and returns the length, with cuts, that found no place. */
function fill(
  sticks: readonly OpenStick[],
  pieces: readonly Piece[],
  perCut: number,
  shortestPart: number,
): number {
  const order = pieces
    .map((piece, at) => ({ ...piece, at }))
    .sort(
      (one, other) =>
        Number(one.spliceable) - Number(other.spliceable) || other.length - one.length || one.at - other.at,
    );
  let without = 0;
  for (const { at, length, spliceable } of order) {
    let left = length;
    while (left > 0) {
      const whole = sticks
        .filter((stick) => stick.left >= left + perCut)
        .reduce<OpenStick | undefined>(
          (best, stick) => (best && best.left <= stick.left ? best : stick),
          undefined,
        );
      const stick =
        whole ?? sticks.reduce((best, other) => (other.left > best.left ? other : best), sticks[0]!);
      // A part leaves enough for the next one.
      const part = whole ? left : Math.min(stick.left - perCut, left - shortestPart);
      if (whole === undefined && (!spliceable || part < shortestPart)) {
        without += left + perCut;
        break;
      }
      stick.cuts.push({ piece: at, length: part });
      stick.left -= part + perCut;
      left -= part;
    }
  }
  return without;
}
