import { describe, expect, it } from 'vitest';
import { fixture } from '../../jobs/written-job.ts';
import { at, closet, lavatory, lines, schemeOf, smallHouse } from './small-house.ts';

/* Heights as in the trunk's test. The cold manifold hangs 2 ft aside of the header and 1 ft higher: at 5 ft. */
describe('home runs', () => {
  it('have a line from the manifold to each inlet, bent, with one ell; one hot inlet needs no manifold', () => {
    expect(lines(schemeOf(smallHouse([closet, lavatory]), { kind: 'home-run' })).slice(3)).toEqual([
      "WH1 < M1: 3' 1 tee 1 ball valve then heater storage",
      // From the heater 4 ft 6 in up to the upper pipes, 7 + 3 along the walls, 2 ft 2 in up.
      `H-U1 < WH1: 16' 8" up 6' 8" 1 ell 1 stop to LAV hot`,
      "CM1 < M1: 3' up 1' 1 through tee 1 ell then manifold 3/4 2 ports valved",
      // 3 ft 6 in up, 12 along, 1 ft 2 in up; and 3 more and a foot higher.
      `C-U1 < CM1: 16' 8" up 4' 8" 1 ell 1 stop to WC cold`,
      `C-U2 < CM1: 20' 8" up 5' 8" 1 ell 1 stop to LAV cold`,
    ]);
  });

  it('have an ell at each corner where tube is not bent', () => {
    const straight = lines(
      schemeOf(smallHouse([closet, lavatory]), { kind: 'home-run', bendHomeRuns: false }),
    );
    // Up from the port, along, up; and across before that.
    expect(straight.at(-2)).toContain('2 ells');
    expect(straight.at(-1)).toContain('3 ells');
    const copper = schemeOf(smallHouse([closet, lavatory]), { kind: 'home-run', material: 'copper-l' });
    expect(copper.runs.at(-1)?.fittings).toContainEqual({ kind: 'ell', count: 3 });
  });

  it('go through the riser to levels beyond the next', () => {
    const house = smallHouse([
      { ...closet, level: 'top' },
      { ...lavatory, level: 'top', inlets: 'cold' },
    ]);
    const top = { id: 'top', name: 'Top', elevation: { typed: '18 ft', si: 18 * 0.3048 } };
    const scheme = schemeOf({ ...house, levels: [...house.levels, top] }, { kind: 'home-run' });
    // From (8, 10) at 5 ft: 3 up, 6 to the riser, 9 ft 6 in up to 17 ft 6 in, 6 along, 1 ft 2 in up.
    expect(lines(scheme).at(-2)).toBe(`C-T1 < CM1: 25' 8" up 13' 8" 1 ell 1 stop to WC cold`);
  });
});

describe('zones', () => {
  it('have a manifold a foot from the riser on each level', () => {
    expect(lines(schemeOf(smallHouse([closet, lavatory]), { kind: 'zones' })).slice(4)).toEqual([
      `H-U1 < WH1: 16' 8" up 6' 8" 1 ell 1 stop to LAV hot`,
      `C-U1 < M1: 9' 6" up 4' 6" 1 through tee 3 ells then manifold 3/4 2 ports valved`,
      `C-U2 < C-U1: 6' 2" up 1' 2" 1 ell 1 stop to WC cold`,
      `C-U3 < C-U1: 10' 2" up 2' 2" 1 ell 1 stop to LAV cold`,
    ]);
  });
});

describe('what a fixture asks at its inlet', () => {
  it('is an arrester a foot back and a foot up where its valve closes fast', () => {
    const washer = fixture('WASH', 'clothes-washer', { level: 'lower', ...at(14, 16), inlets: 'cold' });
    expect(lines(schemeOf(smallHouse([washer]), { kind: 'trunk' })).slice(2)).toEqual([
      // 7 up, 4 to the riser, 6 along, and 3 ft 6 in of the 4 ft 6 in down to the outlet box.
      `C-L1 < S2: 20' 6" up 3' 6" 3 ells`,
      "C-L2 < C-L1: 1' up 1' 1 tee 1 ell then arrester A",
      "C-L3 < C-L1: 1' down 1' 1 through tee 1 ball valve to WASH cold",
    ]);
  });
});
