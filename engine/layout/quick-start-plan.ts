import type { Room, RoomFixture } from './quick-start-rooms.ts';

/** A room's place on the plan, in feet; `turn` is -1 where its fixtures count towards the west or the front. */
export interface PlacedRoom {
  readonly level: number;
  readonly room: Room;
  readonly at: { readonly x: number; readonly y: number };
  readonly turn: { readonly x: 1 | -1; readonly y: 1 | -1 };
}

/** The rooms of one level. */
export interface LevelRooms {
  readonly baths: readonly Room[];
  readonly kitchen?: Room;
  readonly laundries: readonly Room[];
}

/** A rectangular plan in feet: its sides, where the pipes come in and rise, and its rooms. */
export interface Plan {
  readonly width: number;
  readonly depth: number;
  readonly riser: { readonly x: number; readonly y: number };
  readonly mechanicalRoom: { readonly x: number; readonly y: number };
  readonly serviceEntry: { readonly x: number; readonly y: number };
  readonly rooms: readonly PlacedRoom[];
}

const roomWidth = 9;
const margin = 3;
const leastWidth = 44;

/**
 * Lays rooms out around one riser in the middle of a rectangle. Baths stand around it in fours: to the east and the
 * west of it, behind it and in front, then one room further out. Laundries follow beyond the baths to the west, the
 * kitchen stands at the east end. The mechanical room is beside the riser, the service comes in through the front.
 */
export function planOf(levels: readonly LevelRooms[]): Plan {
  const columns = Math.max(...levels.map(({ baths }) => Math.ceil(baths.length / 4)));
  const west = Math.max(...levels.map(({ laundries }) => Math.ceil(laundries.length / 2))) * roomWidth;
  const half = Math.max(leastWidth / 2, margin + columns * roomWidth + Math.max(west, 12));
  const width = 2 * half;
  const depth = 28;
  const riser = { x: half, y: depth / 2 };
  const rooms = levels.flatMap(({ baths, kitchen, laundries }, level): PlacedRoom[] => [
    ...baths.map((room, index) => {
      const turn = quarter(index);
      return {
        level,
        room,
        turn,
        at: { x: riser.x + turn.x * (1 + Math.floor(index / 4) * roomWidth), y: riser.y + turn.y },
      };
    }),
    ...laundries.map((room, index): PlacedRoom => {
      const turn = { x: -1, y: index % 2 === 0 ? 1 : -1 } as const;
      const out = 1 + (columns + Math.floor(index / 2)) * roomWidth;
      return { level, room, turn, at: { x: riser.x - out, y: riser.y + turn.y } };
    }),
    ...(kitchen === undefined
      ? []
      : [{ level, room: kitchen, turn: { x: -1, y: 1 } as const, at: { x: width - 1, y: riser.y + 6 } }]),
  ]);
  const mechanicalRoom = { x: riser.x - 6, y: riser.y - 4 };
  return { width, depth, riser, mechanicalRoom, serviceEntry: { x: mechanicalRoom.x, y: 0 }, rooms };
}

/** East and behind, west and behind, east in front, west in front of the riser. */
function quarter(index: number): PlacedRoom['turn'] {
  return { x: index % 2 === 0 ? 1 : -1, y: index % 4 < 2 ? 1 : -1 };
}

/** A fixture's place on the plan, ft. */
export function placeIn({ at, turn }: PlacedRoom, { x, y }: RoomFixture): { x: number; y: number } {
  return { x: at.x + turn.x * x, y: at.y + turn.y * y };
}

/** The hose bibb of a number on the outer walls: rear, front, west and east in turn, each pair further along. */
export function hoseBibbAt(index: number, { width, depth }: Plan): { wall: string; x: number; y: number } {
  const along = (1 + Math.floor(index / 4)) / (2 + Math.floor(index / 4));
  const x = Math.round(width * along);
  const y = Math.round(depth * along);
  return [
    { wall: 'rear', x, y: depth },
    { wall: 'front', x, y: 0 },
    { wall: 'west', x: 0, y },
    { wall: 'east', x: width, y },
  ][index % 4]!;
}
