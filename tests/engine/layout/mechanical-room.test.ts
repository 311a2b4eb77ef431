import { describe, expect, it } from 'vitest';
import { fixture, psi } from '../../jobs/written-job.ts';
import { at, closet, lavatory, lines, schemeOf, smallHouse } from './small-house.ts';

const bibb = fixture('HB', 'hose-bibb', { level: 'lower', ...at(0, 14) });

describe('the header', () => {
  it('carries the expansion tank, the outdoor group, the heater and the main, each a foot above the one before', () => {
    // 95 psi at the street asks for a reducing valve, which closes the system.
    const scheme = schemeOf(smallHouse([closet, lavatory, bibb], 95), { kind: 'trunk' });
    expect(lines(scheme).slice(1, 8)).toEqual([
      "S2 < S1: 10' 1 ball valve then prv 75 psi",
      "M1 < S2: 1' up 1'",
      "X1 < M1: 2' 1 tee then expansion tank",
      "M2 < M1: 1' up 1' 1 through tee",
      // A foot aside, 5 up to 8 ft, 9 + 4 along the walls, 6 down to 2 ft: a turn before each but the first.
      "G1 < M2: 25' down 1' 1 tee 4 ells 1 ball valve to HB cold",
      "M3 < M2: 1' up 1' 1 through tee",
      "WH1 < M3: 3' 1 tee 1 ball valve then heater storage",
    ]);
  });

  it('has no tank where a tankless heater stores no water', () => {
    const { runs } = schemeOf(smallHouse([closet, lavatory], 95), {
      kind: 'trunk',
      heater: { device: 'heater', type: 'tankless' },
    });
    expect(
      runs.some(({ end }) => end !== undefined && 'device' in end && end.device === 'expansion-tank'),
    ).toBe(false);
  });

  it('has no heater where nothing is hot, nor a tank', () => {
    const { runs } = schemeOf(smallHouse([closet, bibb], 95), { kind: 'zones' });
    const devices = runs.flatMap(({ end }) => (end !== undefined && 'device' in end ? [end.device] : []));
    expect(devices).toEqual(['meter', 'reducing-valve']);
  });
});

describe('a reducing valve', () => {
  it('is set a step under what the lowest inlet allows: 80 psi less what is gained in going down, in steps of 5', () => {
    const set = (high: number) => {
      const ends = schemeOf(smallHouse([closet], high), { kind: 'trunk' }).runs.map(({ end }) => end);
      return ends.flatMap((end) =>
        end !== undefined && 'device' in end && end.device === 'reducing-valve' ? [end.set.typed] : [],
      );
    };
    // The closet is 13 ft 8 in over the street: 85 psi are 79.1 psi there.
    expect(set(85)).toEqual([]);
    expect(set(87)).toEqual(['75 psi']);
    // A bibb 4 ft under the end of the service gains 1.7 psi: a step under 78.3 psi is 70 psi.
    const low = fixture('HB', 'hose-bibb', {
      level: 'lower',
      ...at(0, 14),
      height: { typed: '-3 ft', si: -3 * 0.3048 },
    });
    const { runs } = schemeOf(smallHouse([closet, low], 95), { kind: 'trunk' });
    expect(runs[1]?.end).toMatchObject({ device: 'reducing-valve', set: psi(70) });
  });
});

describe('two halves', () => {
  // 2.2 + 0.7 units in the west, 2.2 + 0.7 in the east; every level holds a half of each.
  const four = [
    { ...closet, id: 'WC1', ...at(2, 10), group: 'bath', level: 'lower' },
    { ...lavatory, id: 'LAV1', ...at(4, 10), group: 'bath', level: 'lower' },
    { ...closet, id: 'WC2', ...at(22, 10), group: 'other' },
    { ...lavatory, id: 'LAV2', ...at(24, 10), group: 'other' },
  ];
  const house = smallHouse(four);
  const split = {
    ...house,
    groups: [...house.groups, { id: 'other', name: 'Other', kind: 'half-bath' as const }],
  };

  it('have a main behind a valve each, and a heater each', () => {
    const drawn = lines(schemeOf(split, { kind: 'home-run', halves: true }));
    expect(drawn.filter((line) => line.includes('heater'))).toEqual([
      "WWH1 < WM1: 3' 1 tee 1 ball valve then heater storage",
      "EWH1 < EM1: 3' 1 tee 1 ball valve then heater storage",
    ]);
    expect(drawn).toContain("WM1 < M1: 3' 1 tee 1 ball valve");
    expect(drawn).toContain("EM1 < M1: 3' 1 through tee 1 ell 1 ball valve");
  });

  it('have both cold and both hot mains behind one heater where one is asked for', () => {
    const drawn = lines(schemeOf(split, { kind: 'home-run', halves: true, heaters: 'one' }));
    expect(drawn.filter((line) => line.includes('heater'))).toEqual([
      "WH1 < M1: 3' 1 tee 1 ball valve then heater storage",
    ]);
    // Each hot half has one inlet, so that its line goes on from the heater: nothing is between.
    expect(drawn.filter((line) => / < WH1:/.test(line)).map((line) => line.slice(0, 4))).toEqual([
      'WH-L',
      'EH-U',
    ]);
  });

  it('are no halves of a house that is one group', () => {
    expect(() => schemeOf(smallHouse([closet, lavatory]), { kind: 'trunk', halves: true })).toThrow('halves');
  });
});
