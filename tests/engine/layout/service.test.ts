import { describe, expect, it } from 'vitest';
import type { Job } from '../../../engine/job/job.ts';
import { cold, ft, psi, run } from '../../jobs/written-job.ts';
import { closet, lavatory, lines, schemeOf, smallHouse } from './small-house.ts';

const bath = [closet, { ...lavatory, inlets: 'cold' as const }];

function withScheme(runs: Job['schemes'][number]['runs'], high = 60): Job {
  return { ...smallHouse(bath, high), schemes: [{ id: 'old', name: 'Old', runs }], chosen: 'old' };
}

const street = run('IN', 'street', {
  size: '1-1/2',
  rise: ft(2),
  length: ft(44),
  end: { device: 'meter', size: '3/4' },
});
const valve = run('V', 'IN', {
  size: '1-1/2',
  fittings: { 'ball-valve': 1 },
  end: { device: 'backflow', type: 'double-check' },
});
const plain = run('P', 'V', { rise: ft(9) });
const ends = [run('A', 'P', { end: cold('WC') }), run('B', 'P', { end: cold('LAV') })];

describe('the service of a new scheme', () => {
  it('is that of the chosen scheme, with sizes and devices, up to its last device or valve', () => {
    const scheme = schemeOf(withScheme([street, valve, plain, ...ends]), { kind: 'trunk' });
    expect(scheme.runs.slice(0, 2)).toEqual([
      { ...street, id: 'S1' },
      { ...valve, id: 'S2', from: 'S1' },
    ]);
    // It ends at -4 + 2 ft; from there the pipe rises to the closet's inlet at 9 ft 8 in.
    const risen = scheme.runs
      .filter(({ id }) => ['S1', 'S2', 'C-U1', 'C-U2'].includes(id))
      .reduce((sum, { rise }) => sum + (rise?.si ?? 0), -4 * 0.3048);
    expect(risen).toBeCloseTo((9 + 8 / 12) * 0.3048, 9);
  });

  it('gets a reducing valve of its own where its end is taken, and an expansion tank for its check valves', () => {
    const hot = { ...withScheme([street, valve, plain, ...ends], 95), fixtures: [closet, lavatory] };
    const drawn = lines(schemeOf(hot, { kind: 'trunk' }));
    expect(drawn[2]).toBe("S3 < S2: 1' up 1' then prv 75 psi");
    expect(drawn.some((line) => line.endsWith('then expansion tank'))).toBe(true);
  });

  it('has a main shut-off on the header where it has none itself', () => {
    const open = { ...valve, fittings: [] };
    const scheme = schemeOf(withScheme([street, open, plain, ...ends]), { kind: 'trunk' });
    expect(scheme.runs[2]?.fittings).toContainEqual({ kind: 'ball-valve', count: 1 });
  });

  it('is new where that is asked for, or where the scheme begins with a fixture', () => {
    const house = withScheme([street, valve, plain, ...ends]);
    expect(lines(schemeOf(house, { kind: 'trunk', service: { new: true } }))[0]).toMatch(
      /^S1 < street: 60' up 5'/,
    );
    const bare = {
      ...house,
      schemes: [{ id: 'old', name: 'Old', runs: [run('A', 'street', { end: cold('WC') })] }],
    };
    expect(lines(schemeOf(bare, { kind: 'trunk' }))[0]).toMatch(/^S1 < street: 60' up 5'/);
  });

  it('comes from a well without a meter or stops of the city, 10 ft long where nobody says', () => {
    const well = { kind: 'well', elevation: ft(0), cutIn: psi(40), cutOut: psi(60) } as const;
    expect(lines(schemeOf({ ...smallHouse(bath), supply: well }, { kind: 'trunk' })).slice(0, 2)).toEqual([
      "S1 < street: 10' up 1'",
      "S2 < S1: 10' 1 ball valve",
    ]);
  });

  it('is as long as is said, but never shorter than the height between', () => {
    const first = (length: number) =>
      lines(schemeOf(smallHouse(bath), { kind: 'trunk', service: { length: ft(length) } }))[0];
    expect(first(33)).toMatch(/^S1 < street: 33' up 5'/);
    expect(first(2)).toMatch(/^S1 < street: 5' up 5'/);
  });
});
