import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sidesOf } from '../../../engine/demand/fixture-needs.ts';
import type { Fixture, Job, Scheme } from '../../../engine/job/job.ts';
import { layOut } from '../../../engine/layout/lay-out.ts';
import { type LayoutKind, type LayoutOptions, layoutKinds } from '../../../engine/layout/options.ts';
import { buildNetwork } from '../../../engine/network/build-network.ts';
import type { Network } from '../../../engine/network/network.ts';
import { pathTo } from '../../../engine/network/path.ts';
import { report } from '../../../engine/report.ts';
import { type FixtureKind, fixtureKinds } from '../../../tables/fixtures/kinds.ts';
import { placedHouse } from '../../arbitrary/placed-house.ts';
import { ft } from '../../jobs/written-job.ts';
import { at, closet, smallHouse } from './small-house.ts';

const foot = 0.3048;

function isOutdoor(kind: Fixture['kind']): boolean {
  const traits: FixtureKind = fixtureKinds[kind];
  return traits.outdoor === true;
}

function schemeOf(house: Job, options: LayoutOptions): Scheme {
  const laid = layOut(house, options);
  if (!laid.ok) throw new Error(JSON.stringify(laid.missing));
  return laid.scheme;
}

function networkOf(house: Job, scheme: Scheme): Network {
  const built = buildNetwork({ ...house, schemes: [scheme], chosen: scheme.id });
  if (!built.ok) throw new Error(JSON.stringify(built.defects));
  return built.network;
}

/** Developed length from the street to every inlet, m, by fixture and side. */
function reaches(network: Network): Map<string, number> {
  return new Map(
    network.inlets.map(({ fixture, side, run }) => [
      `${fixture.id} ${side}`,
      pathTo(network, run).reduce((sum, at) => sum + network.length[at]!, 0),
    ]),
  );
}

const options: fc.Arbitrary<LayoutOptions> = fc.record({
  kind: fc.constantFrom<LayoutKind>(...layoutKinds),
  halves: fc.boolean(),
  heaters: fc.constantFrom('one' as const, 'each' as const),
  material: fc.constantFrom('pex' as const, 'copper-l' as const, 'cpvc' as const),
  bendHomeRuns: fc.boolean(),
});

/** Findings that a drawing decides, whatever the sizes. */
const drawn = new Set([
  'height-mismatch',
  'shut-off-missing',
  'expansion-uncontrolled',
  'arrester-missing',
  'arrester-small',
  'manifold-ports-short',
  'dead-end',
  'static-high',
  'service-small',
  'fixture-supply-small',
]);

describe('layOut, over random placed houses', () => {
  it('serves every inlet once, in a tree, with nothing that its own drawing could have got wrong', () => {
    fc.assert(
      fc.property(placedHouse, options, (house, chosen) => {
        const laid = layOut(house, chosen);
        if (!laid.ok) {
          expect(laid.missing).toEqual([{ code: 'halves' }]);
          expect(chosen.halves).toBe(true);
          return;
        }
        const network = networkOf(house, laid.scheme);
        const served = network.inlets.map(({ fixture, side }) => `${fixture.id} ${side}`).sort();
        const piped = house.fixtures.flatMap((each) => sidesOf(each).map((side) => `${each.id} ${side}`));
        expect(served).toEqual(piped.sort());
        // Where all of a house is outdoors, its main is the outdoor pipe, whose valve is the main's.
        const indoors = house.fixtures.some(({ kind }) => !isOutdoor(kind));
        const wrong = report(network).findings.filter(
          ({ code }) => drawn.has(code) && (indoors || code !== 'shut-off-missing'),
        );
        expect(wrong).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it('lays no pipe shorter than the way along the walls', () => {
    fc.assert(
      fc.property(placedHouse, options, (house, { halves: _halves, ...chosen }) => {
        const scheme = schemeOf(house, chosen);
        const total = scheme.runs.reduce((sum, { length }) => sum + length.si, 0);
        const room = house.places!.mechanicalRoom;
        const reached = reaches(networkOf(house, scheme));
        for (const fixture of house.fixtures) {
          const { x, y } = fixture;
          if (x === undefined || y === undefined) continue;
          const straight = Math.abs(x.si - room.x.si) + Math.abs(y.si - room.y.si);
          // A centimetre for each of the coordinates that a metric grid rounds.
          expect(total).toBeGreaterThan(straight - 0.04);
          for (const side of sidesOf(fixture)) {
            expect(reached.get(`${fixture.id} ${side}`)).toBeGreaterThan(straight - 0.04);
          }
        }
      }),
      { numRuns: 150 },
    );
  });

  it('reaches a fixture by just as much more pipe as it moves away, and never by less', () => {
    const oneRiser = placedHouse.filter(({ places }) => places!.risers.length === 1);
    const moves = fc.record({ at: fc.nat({ max: 100 }), by: fc.integer({ min: 1, max: 20 }) });
    fc.assert(
      fc.property(oneRiser, fc.constantFrom(...layoutKinds), moves, (house, kind, { at, by }) => {
        const index = at % house.fixtures.length;
        const fixture = house.fixtures[index]!;
        fc.pre(fixture.x !== undefined);
        const { mechanicalRoom, risers } = house.places!;
        // Away from all that its pipe may come from: the riser, and the room with what stands a few feet around it.
        const room = mechanicalRoom.x.si;
        const riser = risers[0]!.x.si;
        const east = fixture.x!.si >= Math.max(room + 5 * foot, riser + foot);
        const west = fixture.x!.si <= Math.min(room - 3 * foot, riser - foot);
        fc.pre(east || west);
        const moved: Fixture = { ...fixture, x: ft(fixture.x!.si / foot + (east ? by : -by)) };
        const after = { ...house, fixtures: house.fixtures.with(index, moved) };
        const before = reaches(networkOf(house, schemeOf(house, { kind })));
        const later = reaches(networkOf(after, schemeOf(after, { kind })));
        for (const side of sidesOf(fixture)) {
          const key = `${fixture.id} ${side}`;
          // Metric drawings stand on whole centimetres.
          expect(Math.abs(later.get(key)! - before.get(key)! - by * foot)).toBeLessThan(0.011);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('gives the same scheme for the same job', () => {
    fc.assert(
      fc.property(placedHouse, options, (house, chosen) => {
        expect(layOut(structuredClone(house), chosen)).toEqual(layOut(house, chosen));
      }),
      { numRuns: 50 },
    );
  });

  it('keeps the service of the chosen scheme, so that drawing up again changes nothing', () => {
    fc.assert(
      fc.property(placedHouse, fc.constantFrom(...layoutKinds), (house, kind) => {
        // Where all of a house is outdoors, its outdoor pipe goes on from the service and is taken for it.
        fc.pre(house.fixtures.some((fixture) => !isOutdoor(fixture.kind)));
        const scheme = schemeOf(house, { kind });
        expect(schemeOf({ ...house, schemes: [scheme], chosen: scheme.id }, { kind })).toEqual(scheme);
      }),
      { numRuns: 150 },
    );
  });
});

describe('layOut', () => {
  it('says what keeps any layout of the job from working', () => {
    const twice = [closet, { ...closet, ...at(3, 3) }];
    expect(layOut(smallHouse(twice), { kind: 'zones' })).toEqual({
      ok: false,
      missing: [
        { code: 'sound-job', defects: expect.arrayContaining([{ code: 'fixture-twice', fixture: 'WC' }]) },
      ],
    });
  });
});
