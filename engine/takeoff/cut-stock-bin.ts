import type { Form, Load, Room } from './cut-stock-load.ts';

export interface Pick {
  readonly load: Load;
  readonly form: Form;
}

/** A stick in the making: what is cut from it. Whole lengths of spliced pieces are sticks of their own beside it. */
export interface Bin {
  readonly picks: readonly Pick[];
  readonly weight: number;
  /** Of the stick and of the whole lengths beside it. */
  readonly cost: number;
  readonly room: Room;
}

/** The cheapest stock that holds a weight; undefined if none does. */
export function roomFor(rooms: readonly Room[], weight: number): Room | undefined {
  return rooms.find(({ capacity }) => capacity >= weight);
}

/** @throws RangeError if no stock holds it all */
export function binOf(picks: readonly Pick[], rooms: readonly Room[]): Bin {
  const weight = picks.reduce((sum, { form }) => sum + form.weight, 0);
  const room = roomFor(rooms, weight);
  if (room === undefined) throw new RangeError(`no stock holds ${weight}`);
  return {
    picks,
    weight,
    room,
    cost: picks.reduce((sum, { form }) => sum + form.wholeCost, room.cost),
  };
}

export function costOf(bins: readonly Bin[]): number {
  return bins.reduce((sum, { cost }) => sum + cost, 0);
}
