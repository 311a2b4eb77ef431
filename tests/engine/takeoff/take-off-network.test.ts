import { describe, expect, it } from 'vitest';
import { takeOff } from '../../../engine/takeoff/take-off-network.ts';
import { networkOf } from '../../jobs/written-job.ts';
import { bathroom } from './bathroom.ts';
import { counted, isGathered } from './counted.ts';

const network = networkOf(bathroom);
const taken = takeOff(network);

/** Every figure is counted by hand from the drawing in bathroom.ts. */
describe('a bathroom group, counted by hand', () => {
  it('agrees with its drawing', () => {
    expect(taken.questions).toEqual([]);
  });

  it('item by item', () => {
    expect(counted(taken)).toEqual({
      'pipe 3/4 pex': 30,
      // 4 + 3 + 12 + 3 + 14 of M1, W1, C1, C3, H1
      'pipe 3/4 copper-l': 36,
      // 6 + 5 + 6 of C2, C4, C5; 4 + 6 of H2, H3
      'pipe 1/2 copper-l': 27,

      // Behind M1, to the heater.
      'tee 3/4 x 3/4 x 3/4 copper-l': 1,
      // Behind C1, to the closet.
      'tee 3/4 x 3/4 x 1/2 copper-l': 1,
      // Behind C3 and behind H1: on to the shower, to the lavatory by the side.
      'tee 3/4 x 1/2 x 1/2 copper-l': 2,
      // M1 1, C1 1, H1 2
      'ell 3/4 copper-l': 4,
      // C2 1, C5 2, H3 2
      'ell 1/2 copper-l': 5,
      // Where M1 goes on from the service.
      'adapter 3/4 x 3/4 pex to copper-l': 1,

      'ball-valve 3/4 pex': 1,
      'ball-valve 3/4 copper-l': 1,
      'corporation-stop 3/4 pex': 1,
      // Closet, lavatory cold and hot.
      'compression-stop 1/2 copper-l': 3,
      'supply 1/2': 3,
      'stub-out 1/2 copper-l': 3,

      // Into the heater and out of it.
      'union 3/4 copper-l': 2,
      'heater storage': 1,
      // At the shower's valve: cold, hot and to the head.
      'threaded-adapter 1/2 copper-l': 3,
      'drop-ear-ell 1/2 copper-l': 1,

      // Ball valve 2, adapter 1.
      'crimp-ring 3/4 pex': 3,
      // Tees 3 + 2 + 1 + 1, ells 4 x 2, ball valve 2, unions 2, adapter 1.
      'solder-joint 3/4 copper-l': 20,
      // Tees 0 + 1 + 2 + 2, ells 5 x 2, stub-outs 3, threaded adapters 3, drop-ear ell 1.
      'solder-joint 1/2 copper-l': 22,

      // 6 ft apart. Horizontal: M1 2 ft, W1 3, C1 12, C3 3, H1 14 make 1 + 1 + 2 + 1 + 3.
      'hanger 3/4 copper-l': 8,
      // C2 5 ft 4 in, C4 3 ft 4 in, C5 2 ft, H2 2 ft 4 in, H3 2 ft: one each.
      'hanger 1/2 copper-l': 5,
      // M1 rises 2 ft.
      'riser-support 3/4 copper-l': 1,
      // C2, C4, C5, H2, H3 rise, none over 10 ft.
      'riser-support 1/2 copper-l': 5,
      // Hot and 3/4 in or larger: H1.
      'insulation 3/4 copper-l': 14,

      // S1 through the wall; M1 from 1 ft below the floor to 1 ft above it.
      'sleeve 3/4': 2,
      // Closet 1 inlet, lavatory 2, shower 2; two each.
      'nail-plate': 10,
      // Three stub-outs and the shower's drop-ear ell.
      'test-cap 1/2': 4,
      'test-gauge': 1,
    });
  });

  it('by service', () => {
    const pipe = (service: string) =>
      counted(taken, (line) => line.article.kind === 'pipe' && line.service === service);
    expect(pipe('cold')).toEqual({ 'pipe 3/4 pex': 30, 'pipe 3/4 copper-l': 22, 'pipe 1/2 copper-l': 17 });
    expect(pipe('hot')).toEqual({ 'pipe 3/4 copper-l': 14, 'pipe 1/2 copper-l': 10 });
    expect(pipe('outdoor')).toEqual({});
  });

  it('by phase and area', () => {
    expect(counted(taken, ({ phase }) => phase === 'trim')).toEqual({
      'compression-stop 1/2 copper-l': 3,
      'supply 1/2': 3,
    });
    // The service up to its ball valve; the adapter belongs to M1.
    expect(counted(taken, ({ phase }) => phase === 'underground')).toEqual({
      'pipe 3/4 pex': 30,
      'ball-valve 3/4 pex': 1,
      'corporation-stop 3/4 pex': 1,
      'crimp-ring 3/4 pex': 2,
      'sleeve 3/4': 1,
    });
    const outdoors = taken.lines.filter(({ area }) => area.area === 'outdoors');
    expect(outdoors.every(({ phase }) => phase === 'underground')).toBe(true);
    const inside = taken.lines.filter(({ area }) => area.area === 'level' && area.level === 'floor');
    expect(outdoors.length + inside.length + 1).toBe(taken.lines.length);
  });

  it('says where each part comes from', () => {
    const from = (kind: string, size: string) =>
      taken.lines
        .filter(({ article }) => article.kind === kind && article.sizes.at(-1) === size)
        .flatMap((line) => line.from.map(({ runs, quantity }) => `${runs.join('+')} ${quantity}`));
    expect(from('tee', '3/4')).toEqual(['M1+C1+W1 1']);
    expect(from('tee', '1/2')).toEqual(['C3+C5+C4 1', 'H1+H3+H2 1', 'C1+C3+C2 1']);
    expect(from('ell', '1/2')).toEqual(['C2 1', 'C5 2', 'H3 2']);
    for (const line of taken.lines) {
      const sum = line.from.reduce((total, { quantity }) => quantity.plus(total), line.quantity.times(0));
      expect(sum.equals(line.quantity)).toBe(true);
    }
  });

  it('cites the tables that it used', () => {
    expect(taken.cited.map(({ table, row, verified }) => `${table.id} ${row ?? ''} ${verified}`)).toEqual([
      'support-spacing copper-small seen',
      'support-spacing copper-small seen',
      'sleeves-per-floor  common-practice',
      'nail-plates-per-inlet  common-practice',
      'hot-insulation-2018  seen-secondary',
    ]);
    expect(isGathered(taken)).toBe(true);
  });
});

describe('options of a take-off', () => {
  it('insulates all hot pipe, or none', () => {
    const insulated = (insulation: 'all-hot' | 'none') =>
      counted(takeOff(network, { insulation }), ({ article }) => article.kind === 'insulation');
    expect(insulated('all-hot')).toEqual({ 'insulation 3/4 copper-l': 14, 'insulation 1/2 copper-l': 10 });
    expect(insulated('none')).toEqual({});
  });

  it('takes another number of nail plates, and no longer cites the rule of thumb', () => {
    const own = takeOff(network, { nailPlatesPerInlet: 3 });
    expect(counted(own)['nail-plate']).toBe(15);
    expect(own.cited.map(({ table }) => table.id)).not.toContain('nail-plates-per-inlet');
    expect(counted(takeOff(network, { nailPlatesPerInlet: 0 }))['nail-plate']).toBeUndefined();
  });

  it('puts the named runs underground: no hangers there', () => {
    const buried = takeOff(network, { underground: ['S1', 'M1', 'C1'] });
    expect(
      counted(buried, ({ phase, article }) => phase === 'underground' && article.kind === 'pipe'),
    ).toEqual({
      'pipe 3/4 pex': 30,
      'pipe 3/4 copper-l': 16,
    });
    // Less M1's one and C1's two.
    expect(counted(buried)['hanger 3/4 copper-l']).toBe(5);
    // None underground: the service needs hangers, 30 ft at 32 in: 11.25, so 12.
    expect(counted(takeOff(network, { underground: [] }))['hanger 3/4 pex']).toBe(12);
  });
});
