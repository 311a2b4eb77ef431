import type { FixtureKindId } from '../../tables/fixtures/kinds.ts';
import type { FixtureGroup, GroupKind } from '../job/job.ts';

/** A fixture of a room: its place from the room's corner nearest to the riser, in feet, away from the riser first. */
export interface RoomFixture {
  readonly tag: string;
  readonly name: string;
  readonly kind: FixtureKindId;
  readonly x: number;
  readonly y: number;
  /** Stands in the room without counting among its group. */
  readonly alone?: true;
}

/** A room that a quick start lays out. */
export interface Room {
  readonly name: string;
  readonly group: FixtureGroup['kind'];
  readonly fixtures: readonly RoomFixture[];
}

const closet = { tag: 'WC', name: 'Water closet', kind: 'water-closet-tank', x: 2, y: 1 } as const;
const lavatory = { tag: 'LAV', name: 'Lavatory', kind: 'lavatory', x: 5, y: 1 } as const;

/** Rooms of 8 by 6 ft with their fixtures along the walls; invented, to be corrected. */
export function bathRoom(kind: Extract<GroupKind, 'full-bath' | 'half-bath'>, rain: boolean): Room {
  if (kind === 'half-bath') return { name: 'Powder room', group: kind, fixtures: [closet, lavatory] };
  const bathing: readonly RoomFixture[] = rain
    ? [
        { tag: 'RAIN', name: 'Rain shower', kind: 'shower', x: 6, y: 5 },
        { tag: 'HAND', name: 'Hand shower', kind: 'hand-shower', x: 7, y: 5 },
      ]
    : [{ tag: 'TUB', name: 'Bathtub with shower', kind: 'bathtub-shower', x: 7, y: 5 }];
  return { name: 'Bath', group: kind, fixtures: [...bathing, closet, lavatory] };
}

export function kitchen(iceMaker: boolean): Room {
  const ice: readonly RoomFixture[] = iceMaker
    ? [{ tag: 'ICE', name: 'Ice maker', kind: 'ice-maker', x: 9, y: 1, alone: true }]
    : [];
  return {
    name: 'Kitchen',
    group: 'kitchen',
    fixtures: [
      { tag: 'SINK', name: 'Kitchen sink', kind: 'kitchen-sink', x: 4, y: 1 },
      { tag: 'DISH', name: 'Dishwasher', kind: 'dishwasher', x: 6, y: 1 },
      ...ice,
    ],
  };
}

export const laundry: Room = {
  name: 'Laundry',
  group: 'laundry',
  fixtures: [
    { tag: 'WASH', name: 'Clothes washer', kind: 'clothes-washer', x: 2, y: 1 },
    { tag: 'TRAY', name: 'Laundry tray', kind: 'laundry-tray', x: 5, y: 1 },
  ],
};
