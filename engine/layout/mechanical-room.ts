import type { Device, InletSide } from '../job/job.ts';
import { onSide } from './clusters.ts';
import { comb, mainAxis } from './comb.ts';
import type { Stretch } from './drawing.ts';
import type { Point } from './grid.ts';
import type { PlacedFixture, Site } from './site.ts';
import { spine } from './spine.ts';
import type { Part, System } from './system.ts';

/** What hangs on the service where it ends in the mechanical room. */
export interface Room {
  readonly site: Site;
  readonly system: System;
  readonly bent: boolean;
  /** One, or the two halves. */
  readonly parts: readonly Part[];
  readonly heater: Device;
  /** One heater for the house, or one for each part. */
  readonly heaters: 'one' | 'each';
  readonly outdoor: readonly PlacedFixture[];
  /** Whether an expansion tank has to stand behind the service. */
  readonly tank: boolean;
  /** Whether the service has no valve that closes it. */
  readonly shutOff: boolean;
}

/**
 * The header in the mechanical room, straight up from the end of the service: the main shut-off where the service has
 * none; after 1 ft the expansion tank; after 2 ft the outdoor group with its own valve; after 3 ft the heater, 3 ft
 * aside behind a valve, and the cold main. In two halves each has its own main behind a valve, 3 ft to each side, and
 * the heater there, or after one heater for both.
 */
export function drawRoom(start: Point, room: Room): Stretch[] {
  const feet = room.site.grid.feet;
  const up = (count: number): Point => ({ ...start, z: start.z + feet(count) });
  const [whole, ...others] = room.parts;
  const stops = [
    { at: up(1).z, behind: room.tank ? [expansionTank(up(1), feet)] : [] },
    { at: up(2).z, behind: outdoorGroup(up(2), room) },
    { at: up(3).z, behind: others.length === 0 && whole ? onePart(up(3), whole, room) : split(up(3), room) },
  ];
  const header = spine(start, 'z', stops, { name: 'M' });
  if (!room.shutOff) return header;
  return header.map((first) => ({ ...first, fittings: ['ball-valve'] }));
}

function expansionTank(from: Point, feet: (count: number) => number): Stretch {
  const corners = [{ ...from, y: from.y + feet(2) }];
  return { name: 'X', corners, end: { device: 'expansion-tank' }, note: 'Expansion tank', behind: [] };
}

/** A foot aside and up to where pipes leave the room; from there as on a level, each outlet for itself. */
function outdoorGroup(from: Point, { site, outdoor }: Room): Stretch[] {
  if (outdoor.length === 0) return [];
  const { grid } = site;
  const aside = { ...from, x: from.x - grid.feet(1) };
  const hub = { ...aside, z: site.travel };
  const clusters = outdoor.map((placed) => ({ name: placed.fixture.name, members: [placed] }));
  const behind = comb(hub, clusters, 'cold', { grid, name: 'G', axis: mainAxis(hub, outdoor) });
  return [{ name: 'G', corners: [aside, hub], fittings: ['ball-valve'], note: 'Outdoor group', behind }];
}

function onePart(from: Point, part: Part, room: Room): Stretch[] {
  return [...heated(from, [part], room), ...system(from, part, 'cold', room)];
}

/** Two mains; each with a heater of its own, or both cold and both hot behind one. */
function split(from: Point, room: Room): Stretch[] {
  const main = ({ tag, name }: Part, at: Point): Pick<Stretch, 'name' | 'note' | 'corners' | 'fittings'> => ({
    name: `${tag}M`,
    note: `${name}, main`,
    corners: [at],
    fittings: ['ball-valve'],
  });
  const placed = room.parts.map((part, index) => ({ part, at: aside(from, index, room.site) }));
  if (room.heaters === 'each') {
    return placed.map(({ part, at }) => ({ ...main(part, at), behind: onePart(at, part, room) }));
  }
  const cold = placed.map(({ part, at }) => ({ ...main(part, at), behind: system(at, part, 'cold', room) }));
  return [...heated(from, room.parts, room), ...cold];
}

/** A heater with a valve before it, and the hot pipes of the parts that it serves. */
function heated(from: Point, parts: readonly Part[], room: Room): Stretch[] {
  const { site, heater } = room;
  const served = parts.filter(({ clusters }) => onSide(clusters, 'hot').length > 0);
  if (served.length === 0) return [];
  const at = { ...from, x: from.x + site.grid.feet(3) };
  const behind = served.flatMap((part): Stretch[] => {
    if (parts.length === 1) return system(at, part, 'hot', room);
    const start = aside(at, parts.indexOf(part), site);
    return [{ name: `${part.tag}HM`, corners: [start], behind: system(start, part, 'hot', room) }];
  });
  const tag = parts.length === 1 ? parts[0]!.tag : '';
  const note = parts.length === 1 && tag !== '' ? `${parts[0]!.name}, water heater` : 'Water heater';
  return [{ name: `${tag}WH`, corners: [at], fittings: ['ball-valve'], end: heater, note, behind }];
}

function system(start: Point, part: Part, side: InletSide, { site, bent, system: draw }: Room): Stretch[] {
  return draw(start, part, side, { site, bent });
}

function aside(from: Point, index: number, { grid }: Site): Point {
  return { ...from, y: from.y + grid.feet(index === 0 ? 3 : -3) };
}
