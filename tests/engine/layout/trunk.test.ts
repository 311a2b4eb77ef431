import { describe, expect, it } from 'vitest';
import { fixture, ft } from '../../jobs/written-job.ts';
import { at, closet, lavatory, lines, schemeOf, smallHouse } from './small-house.ts';

/*
 * Pipes hang at 8 ft on the lower level and lie at 8 ft 6 in under the upper floor; the header goes from 1 ft to 4 ft
 * over the lower floor. A closet's inlet is 8 in over its floor, a lavatory's 20 in: 9 ft 8 in and 10 ft 8 in.
 */
describe('trunk', () => {
  it('goes from the street by the room and the riser along the main to the bath, and out to each fixture', () => {
    expect(lines(schemeOf(smallHouse([closet, lavatory]), { kind: 'trunk' }))).toEqual([
      "S1 < street: 60' up 5' 1 corp stop 1 curb stop then meter 5/8",
      "S2 < S1: 10' 1 ball valve",
      "M1 < S2: 3' up 3'",
      "WH1 < M1: 3' 1 tee 1 ball valve then heater storage",
      // 4 up + 1 to the riser + 6 in up + 6 along + 3 across + 2 ft 2 in up, a turn before each.
      `H-U1 < WH1: 16' 8" up 6' 8" 6 ells 1 stop to LAV hot`,
      // 4 up, straight through the tee, + 4 + 6 in up + 6.
      `C-U1 < M1: 14' 6" up 4' 6" 1 through tee 3 ells`,
      `C-U2 < C-U1: 1' 2" up 1' 2" 1 tee 1 stop to WC cold`,
      `C-U3 < C-U1: 5' 2" up 2' 2" 1 through tee 2 ells 1 stop to LAV cold`,
    ]);
  });

  it('tees off each level on the way up the riser, and sends a branch main both ways', () => {
    const west = fixture('WEST', 'lavatory', { level: 'upper', ...at(4, 10), inlets: 'cold' });
    const low = fixture('LOW', 'lavatory', { level: 'lower', ...at(14, 20), inlets: 'cold' });
    const upper = { ...lavatory, ...at(24, 10), inlets: 'cold' } as const;
    expect(lines(schemeOf(smallHouse([upper, west, low]), { kind: 'trunk' })).slice(2)).toEqual([
      // With no heater to feed, the header is the main: 3 + 4 up, 4 to the riser.
      "CM1 < S2: 11' up 7' 1 ell",
      // 10 along the walls and 6 ft 4 in down from 8 ft to 20 in.
      `C-L1 < CM1: 16' 4" down 6' 4" 1 tee 1 ell 1 stop to LOW cold`,
      `CM2 < CM1: 6" up 6" 1 through tee 1 ell`,
      `C-U1 < CM2: 12' 2" up 2' 2" 1 tee 1 ell 1 stop to LAV cold`,
      `C-U2 < CM2: 12' 2" up 2' 2" 1 through tee 2 ells 1 stop to WEST cold`,
    ]);
  });

  it('lays the main of a level along the axis that passes closest to its fixtures', () => {
    const deep = { ...lavatory, ...at(15, 30), inlets: 'cold' } as const;
    const other = { ...closet, ...at(13, 25) };
    const [main] = lines(schemeOf(smallHouse([deep, other]), { kind: 'trunk' })).slice(2);
    // The group stands on both sides of a main along y: 11 + 6 in to the riser's upper tee, 15 to the nearer member.
    expect(main).toBe(`C-U1 < S2: 26' 6" up 7' 6" 3 ells`);
  });

  it('takes the length that the schedule gives where the plan does not say', () => {
    const { x: _x, y: _y, ...somewhere } = lavatory;
    const scheme = schemeOf(smallHouse([closet, { ...somewhere, inlets: 'cold', distance: ft(18) }]), {
      kind: 'trunk',
    });
    expect(lines(scheme).at(-2)).toBe(`C-U1 < CM1: 18' up 2' 2" 1 tee 2 ells 1 stop to LAV cold`);
  });

  it('never makes that length less than the height between', () => {
    const { x: _x, y: _y, ...somewhere } = lavatory;
    const scheme = schemeOf(smallHouse([closet, { ...somewhere, inlets: 'cold', distance: ft(1) }]), {
      kind: 'trunk',
    });
    expect(lines(scheme).at(-2)).toContain(`2' 2" up 2' 2"`);
  });

  it('gives a cluster to the riser that its members stand nearest to', () => {
    const house = smallHouse([closet, lavatory]);
    const places = { ...house.places!, risers: [...house.places!.risers, { id: 'E', ...at(20, 14) }] };
    // Closet and lavatory: 6 + 9 ft from the first riser, 4 + 1 from the second. 4 up, 10 + 4 to it, 6 in up, then
    // back along y: 1 to the lavatory's place.
    expect(lines(schemeOf({ ...house, places }, { kind: 'trunk' }))).toContain(
      `C-U1 < M1: 19' 6" up 4' 6" 1 through tee 4 ells`,
    );
  });
});
