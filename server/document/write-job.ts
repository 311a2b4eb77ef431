import type { Basis, DemandChoice, Fixture, Job, Place, Places, Supply } from '../../engine/job/job.ts';
import type { JsonObject } from './json-layout.ts';
import { block, inline, rowsOf } from './json-layout.ts';
import { typed, writeRun } from './write-run.ts';

/**
 * A job as the text of its file: JSON that a person can read and compare, fields always in one order, each level,
 * group, fixture and run on a line of its own, quantities as they were typed. A run is written in the shorthand
 * where that says all of it, otherwise by its fields. `readJob` gives the same job back.
 */
export function writeJob(job: Job): string {
  const { format, version, name, note, units, basis, supply, levels, places } = job;
  const { groups, fixtures, schemes, chosen } = job;
  const head = { format, version, name, note, units, basis: writeBasis(basis), supply: writeSupply(supply) };
  const lines = Object.entries(head)
    .filter(([, value]) => value !== undefined)
    .map(([field, value]) => `  "${field}": ${block(value, '  ')}`);
  const storeys = levels.map((level) => ({
    id: level.id,
    name: level.name,
    elevation: typed(level.elevation),
  }));
  lines.push(`  "levels": ${rowsOf(storeys, '  ')}`);
  if (places !== undefined) lines.push(`  "places": ${writePlaces(places)}`);
  const lists = {
    groups: groups.map((group) => ({ id: group.id, name: group.name, kind: group.kind })),
    fixtures: fixtures.map(writeFixture),
  };
  for (const [field, rows] of Object.entries(lists)) lines.push(`  "${field}": ${rowsOf(rows, '  ')}`);
  const written = schemes.map((scheme) => {
    const runs = rowsOf(scheme.runs.map(writeRun), '      ');
    return `    {\n      "id": ${inline(scheme.id)},\n      "name": ${inline(scheme.name)},\n      "runs": ${runs}\n    }`;
  });
  lines.push(`  "schemes": ${written.length === 0 ? '[]' : `[\n${written.join(',\n')}\n  ]`}`);
  lines.push(`  "chosen": ${inline(chosen)}`);
  return `{\n${lines.join(',\n')}\n}\n`;
}

/** A line for each place and each riser. */
function writePlaces({ serviceEntry, mechanicalRoom, risers }: Places): string {
  const rows = risers.map(({ id, x, y }) => ({ id, x: typed(x), y: typed(y) }));
  const lines = [
    `    "serviceEntry": ${inline(writePlace(serviceEntry))}`,
    `    "mechanicalRoom": ${inline(writePlace(mechanicalRoom))}`,
    `    "risers": ${rowsOf(rows, '    ')}`,
  ];
  return `{\n${lines.join(',\n')}\n  }`;
}

function writePlace({ level, x, y }: Place): JsonObject {
  return { level, x: typed(x), y: typed(y) };
}

function writeBasis(basis: Basis): JsonObject {
  return {
    profile: basis.profile,
    demand: writeDemand(basis.demand),
    between: basis.between,
    friction: basis.friction,
    coldTemperature: typed(basis.coldTemperature),
    hotTemperature: typed(basis.hotTemperature),
    elevationFactor: typed(basis.elevationFactor),
    fittings: basis.fittings,
    fittingAllowancePercent: basis.fittingAllowancePercent,
    velocityCold: typed(basis.velocityCold),
    velocityHot: typed(basis.velocityHot),
  };
}

function writeDemand(demand: DemandChoice | undefined): JsonObject | undefined {
  if (demand?.method !== 'own-table') return demand;
  const { method, name, points } = demand;
  return { method, name, points: points.map(({ units, flow }) => ({ units, flow: typed(flow) })) };
}

function writeSupply(supply: Supply): JsonObject {
  const place = { kind: supply.kind, elevation: typed(supply.elevation) };
  switch (supply.kind) {
    case 'static':
      return { ...place, low: typed(supply.low), high: typed(supply.high) };
    case 'flow-test':
      return {
        ...place,
        static: typed(supply.static),
        residual: typed(supply.residual),
        flow: typed(supply.flow),
        low: typed(supply.low),
        high: typed(supply.high),
      };
    case 'well':
      return {
        ...place,
        cutIn: typed(supply.cutIn),
        cutOut: typed(supply.cutOut),
        pumpFlow: typed(supply.pumpFlow),
      };
  }
}

function writeFixture(fixture: Fixture): JsonObject {
  const { id, name, kind, level, room, use, count, inlets, group, continuous } = fixture;
  const { height, x, y, distance, flow, pressure } = fixture;
  const stands = { height: typed(height), x: typed(x), y: typed(y), distance: typed(distance) };
  const asked = { flow: typed(flow), pressure: typed(pressure) };
  return { id, name, kind, level, room, use, count, inlets, ...stands, ...asked, group, continuous };
}
