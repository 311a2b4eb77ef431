import { describe, expect, it } from 'vitest';
import { buildNetwork } from '../../engine/network/build-network.ts';
import { indexPrices } from '../../engine/takeoff/index-prices.ts';
import { priceTakeOff } from '../../engine/takeoff/price-take-off.ts';
import { takeOff } from '../../engine/takeoff/take-off-network.ts';
import { counted, short } from '../engine/takeoff/counted.ts';
import { exampleNames, openExample } from './open-example.ts';
import { shippedBook } from './shipped-book.ts';

async function takenOff(name: string, schemeId?: string) {
  const built = buildNetwork(await openExample(name), schemeId);
  if (!built.ok) throw new Error(JSON.stringify(built.defects));
  return takeOff(built.network);
}

const house = await takenOff('home-run-house.json');
const of = (...kinds: string[]) => counted(house, ({ article }) => kinds.includes(article.kind));

/** Every figure is counted by hand from examples/home-run-house.json. */
describe('the home-run house, counted by hand', () => {
  it('agrees with its drawing', () => {
    expect(house.questions).toEqual([]);
  });

  it('pipe', () => {
    expect(of('pipe')).toEqual({
      // C4 41, C5 44, C8 38, C12 30, C13 34, C14 1, C17 24 = 212; H3 41, H4 44, H6 38, H10 30, H14 24 = 177
      'pipe 3/8 pex': 389,
      // C1 40, C2 42, C3 36, C6 38, C7 36, C9 44, C10 1, C11 1, C15 1, C16 22, C18 16, C19 1, C20 1, C21 18 = 297;
      // H1 40, H2 42, H5 38, H7 44, H8 1, H9 1, H11 33, H12 1, H13 1, H15 16, H16 1, H17 1, H18 18 = 237
      'pipe 1/2 pex': 534,
      // G2 18, G3 30, X1 3
      'pipe 3/4 pex': 51,
      // G1 8, W1 4, M2 5
      'pipe 1 pex': 17,
      // S1 16, S2 40, S3 3, M1 4
      'pipe 1-1/4 pex': 63,
    });
    expect(
      counted(house, ({ article, service }) => article.kind === 'pipe' && service === 'outdoor'),
    ).toEqual({
      // G2, G3; G1: they feed hose bibbs alone.
      'pipe 3/4 pex': 48,
      'pipe 1 pex': 8,
    });
    // One for each line from a manifold.
    expect(house.pieces.filter(({ homeRun }) => homeRun)).toHaveLength(15 + 12);
    expect(house.pieces).toHaveLength(49);
  });

  it('tees, nipples and ells', () => {
    expect(of('tee', 'nipple', 'ell', 'reducer', 'adapter', 'coupling', 'cap')).toEqual({
      // Behind S2, on to S3 and aside to G1; behind S3, the second of two, on to M1 and aside to W1.
      'tee 1-1/4 x 1-1/4 x 1 pex': 2,
      // Behind S3, the first of two, aside to X1, and the nipple between.
      'tee 1-1/4 x 1-1/4 x 3/4 pex': 1,
      'nipple 1-1/4 pex': 1,
      // Behind G1, on to G3 and aside to G2.
      'tee 1 x 3/4 x 3/4 pex': 1,
      // Arresters behind C9, C18, H7, H11, H15.
      'tee 1/2 x 1/2 x 1/2 pex': 5,
      // The ice maker's, behind C13.
      'tee 3/8 x 3/8 x 1/2 pex': 1,
      // C4, C5, C8, C12, C13, C17; H3, H4, H6, H10, H14
      'ell 3/8 pex': 11,
      // C1 2, C2 2, C3 1, C6 1, C7 1, C9 2, C16 1, C18 2, C21 2 = 14; H1 2, H2 2, H5 1, H7 2, H11 1, H15 2, H18 2 = 12
      'ell 1/2 pex': 26,
      // G2 1, G3 2, X1 1
      'ell 3/4 pex': 4,
      // G1, M2
      'ell 1 pex': 2,
      // S2
      'ell 1-1/4 pex': 1,
    });
  });

  it('valves, stops and supplies', () => {
    expect(
      of('ball-valve', 'check-valve', 'corporation-stop', 'curb-stop', 'compression-stop', 'supply'),
    ).toEqual({
      // The washers' C10, C19, H8, H16
      'ball-valve 1/2 pex': 4,
      // G1, W1
      'ball-valve 1 pex': 2,
      'ball-valve 1-1/4 pex': 1,
      'check-valve 1-1/4 pex': 1,
      'corporation-stop 1-1/4 pex': 1,
      'curb-stop 1-1/4 pex': 1,
      // C4, C5, C8, C12, C14, C17; H3, H4, H6, H10, H14
      'compression-stop 3/8 pex': 11,
      'supply 3/8': 11,
      // C3, C7, C16, C21, H12, H18; supplies at the four washer valves as well
      'compression-stop 1/2 pex': 6,
      'supply 1/2': 10,
    });
  });

  it('manifolds by ports, devices and their connections', () => {
    expect(
      of('manifold', 'manifold-port', 'port-plug', 'meter', 'heater', 'expansion-tank', 'arrester'),
    ).toEqual({
      'manifold 1-1/4 valved 15 ports': 1,
      'manifold 1 valved 12 ports': 1,
      // C4, C5, C8, C12, C13, C17; H3, H4, H6, H10, H14
      'manifold-port 3/8 pex': 11,
      // The other 9 of 15 and 7 of 12; no port is left over.
      'manifold-port 1/2 pex': 16,
      'meter 1': 1,
      'heater storage': 1,
      'expansion-tank': 1,
      // C11, C15, C20; H9, H13, H17
      'arrester A': 6,
    });
    expect(of('meter-coupling', 'union', 'threaded-adapter')).toEqual({
      'meter-coupling 1-1/4 x 1 pex': 2,
      'union 1 pex': 2,
      // Rain shower and hand shower 2 inlets and 1 outlet each, bathtub with shower 2 and 2.
      'threaded-adapter 1/2 pex': 10,
      // Arresters.
      'threaded-adapter 1/2 x 1/2 pex': 6,
      // Expansion tank.
      'threaded-adapter 3/4 pex': 1,
      // Manifolds.
      'threaded-adapter 1 x 1 pex': 1,
      'threaded-adapter 1-1/4 x 1-1/4 pex': 1,
    });
  });

  it('ends at fixtures and test caps', () => {
    expect(of('stub-out', 'drop-ear-ell', 'test-cap', 'test-gauge', 'nail-plate')).toEqual({
      'stub-out 3/8 pex': 11,
      'stub-out 1/2 pex': 10,
      // Two showers 1 each, bathtub with shower 2.
      'drop-ear-ell 1/2 pex': 4,
      // Two hose bibbs.
      'drop-ear-ell 3/4 pex': 2,
      'test-cap 3/8': 11,
      'test-cap 1/2': 14,
      'test-cap 3/4': 2,
      'test-gauge': 1,
      // 15 cold and 12 hot inlets indoors, two each.
      'nail-plate': 54,
    });
  });

  it('rings', () => {
    expect(of('crimp-ring', 'expansion-ring', 'solder-joint')).toEqual({
      // Ells 22, stub-outs 11, ports 11, the ice maker's tee 2.
      'crimp-ring 3/8 pex': 46,
      // Ells 52, ball valves 8, tees 15 + 1, stub-outs 10, ports 16, adapters 10 + 6, drop-ear ells 4.
      'crimp-ring 1/2 pex': 122,
      // Ells 8, the hose bibbs' tee 2, the expansion tank's tee 1 and adapter 1, drop-ear ells 2.
      'crimp-ring 3/4 pex': 14,
      // Ells 4, ball valves 4, tees 1 + 1 + 1, unions 2, the hot manifold 1.
      'crimp-ring 1 pex': 14,
      // Ell 2, ball valve 2, check valve 2, three tees 2 each, meter couplings 2, the cold manifold 1.
      'crimp-ring 1-1/4 pex': 15,
    });
  });

  it('supports, insulation and sleeves', () => {
    expect(of('hanger', 'riser-support', 'guide', 'insulation', 'sleeve')).toEqual({
      // Every 32 in of the horizontal part, rounded up. Cold: C4 292 in 10, C5 328 in 11, C8 256 in 8, C12 274 in 9,
      // C13 312 in 10, C14 1, C17 202 in 7 = 56. Hot: H3 10, H4 11, H6 8, H10 9, H14 7 = 45.
      'hanger 3/8 pex': 101,
      // C1 252 in 8, C2 282 in 9, C3 244 in 8, C6 246 in 8, C7 8, C9 306 in 10, C16 190 in 6, C18 186 in 6,
      // C21 204 in 7, and one each for C10, C11, C15, C19, C20 = 75. H1 8, H2 9, H5 8, H7 10, H11 310 in 10, H15 6,
      // H18 7, and one each for H8, H9, H12, H13, H16, H17 = 64.
      'hanger 1/2 pex': 139,
      // G2 192 in 6, G3 270 in 9, X1 12 in 1
      'hanger 3/4 pex': 16,
      // G1 96 in 3, W1 48 in 2, M2 60 in 2
      'hanger 1 pex': 7,
      // Every 4 ft: S3, M1. S1 and S2 lie in the ground.
      'hanger 1-1/4 pex': 2,
      // Every 10 ft of rise. Two each: C4, C5, C8, H3, H4, H6; one each: C12, C13, C17, H10, H14.
      'riser-support 3/8 pex': 17,
      // Two each: C1, C2, C3, C6, C7, C9, H1, H2, H5, H7; one each: C16, C18, C21, H11, H15, H18.
      'riser-support 1/2 pex': 26,
      // G2, G3, X1
      'riser-support 3/4 pex': 3,
      // Halfway, where a rise is 5 ft or more over a support: two each over 15 ft, else one.
      'guide 3/8 pex': 17,
      // As the riser supports, without C18, C21, H15, H18, which go down 6 in and 1 ft.
      'guide 1/2 pex': 22,
      // G3 rises 7 ft 6 in; G2 and X1 2 ft.
      'guide 3/4 pex': 1,
      // The only hot pipe of 3/4 in or more: M2.
      'insulation 1 pex': 5,
      // Lines from 4 ft to the upper floor pass 9 ft 6 in and 19 ft, to the main floor one: as the riser supports.
      'sleeve 3/8': 17,
      'sleeve 1/2': 22,
      // G3
      'sleeve 3/4': 1,
      // Where S2 comes in.
      'sleeve 1-1/4': 1,
    });
  });
});

describe('every example', () => {
  it.each(exampleNames)('is taken off and priced whole by the book that ships: %s', async (name) => {
    const prices = indexPrices(await shippedBook());
    for (const { id } of (await openExample(name)).schemes) {
      const taken = await takenOff(name, id);
      const { missing, total, lines } = priceTakeOff(taken, prices);
      expect(missing.map(short), id).toEqual([]);
      expect(total?.greaterThan(0)).toBe(true);
      expect(lines).toHaveLength(taken.lines.length);
    }
  });
});
