import { describe, expect, it } from 'vitest';
import type { LayoutOptions } from '../../../engine/layout/options.ts';
import { fixture } from '../../jobs/written-job.ts';
import { at, closet, lavatory, schemeOf, smallHouse } from './small-house.ts';

/*
 * PEX SDR-9 at 8 ft/s: 3/8 in (0.35 in) carries 2.40 gpm, 1/2 in (0.475 in) 4.42, 3/4 in (0.671 in) 8.82, 1 in
 * (0.863 in) 14.6: gpm = 2.448 x (bore in inches)^2 x 8.
 */
function sizes(
  fixtures: Parameters<typeof smallHouse>[0],
  options: LayoutOptions = { kind: 'trunk' },
): Record<string, string> {
  return Object.fromEntries(schemeOf(smallHouse(fixtures), options).runs.map(({ id, size }) => [id, size]));
}

describe('first sizes', () => {
  it("are the code's least for a fixture, or the least in which its own flow is not too fast", () => {
    // A lavatory's 0.8 gpm may run in 3/8 in; a closet's 3 gpm is too fast there, though the code would let it.
    expect(sizes([closet, { ...lavatory, inlets: 'cold' }])).toMatchObject({ 'C-U2': '1/2', 'C-U3': '3/8' });
    // The code asks for 1/2 in to a shower, whose 2 gpm could run in 3/8 in.
    const shower = fixture('SH', 'shower', {
      level: 'upper',
      ...at(20, 10),
      inlets: 'cold',
      flow: { typed: '2 gpm', si: 2 * 6.30901964e-5 },
    });
    expect(sizes([shower, { ...lavatory, inlets: 'cold' }])['C-U2']).toBe('1/2');
  });

  it('never narrow towards the street, and give a heater 3/4 in and the service what the code asks for', () => {
    const found = sizes([closet, lavatory]);
    expect(found).toMatchObject({ WH1: '3/4', S1: '3/4', 'H-U1': '3/8' });
  });

  it('give several fixtures 1/2 in at least', () => {
    const two = [
      { ...lavatory, inlets: 'cold' as const },
      { ...lavatory, id: 'LAV2', ...at(20, 16), inlets: 'cold' as const },
    ];
    expect(sizes(two)['C-U1']).toBe('1/2');
  });

  it('keep what is fixed, and pass no fixed main', () => {
    const many = Array.from({ length: 12 }, (_, index) => ({
      ...closet,
      id: `WC${index}`,
      level: index % 2 === 0 ? 'lower' : 'upper',
      ...at(15 + index, 20),
      group: `none-${index}`,
    })).map(({ group: _group, ...rest }) => rest);
    const free = sizes(many);
    const held = sizes(many, { kind: 'trunk', mainSize: '3/4', service: { size: '1-1/2' } });
    // 12 closets at 2.2 units ask for 22.0 gpm (26.4 units, between 25 at 21.5 and 30 at 23.3); 1-1/4 in carries 21.8.
    expect(free.CM1).toBe('1-1/2');
    expect(held).toMatchObject({ S1: '1-1/2', S2: '1-1/2', CM1: '3/4' });
    expect(new Set(Object.values(held))).toEqual(new Set(['1/2', '3/4', '1-1/2']));
  });
});
