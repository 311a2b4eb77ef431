import { expect, it } from 'vitest';
import { between, columnOf, walk } from './by-hand.ts';
import { openExample, reportOf } from './open-example.ts';

// PEX, C = 150; water at 60 F has 999.15 kg/m3, at 120 F 988.68 kg/m3 (steam tables).
const cold = { c: 150, psiPerFt: columnOf(999.15) };
const hot = { c: 150, psiPerFt: columnOf(988.68) };

// Average bores of PEX SDR-9, in.
const oneAndAQuarter = 1.054;
const one = 0.863;
const threeQuarters = 0.671;
const half = 0.475;

// Units by IRC Table P2903.6. Top-floor bath: group 3.6, second lavatory 0.7, hand shower 1.4 as a shower stall.
const topBath = 3.6 + 0.7 + 1.4;
// East half: with the hall bath as a group and the clothes washer of the upper laundry.
const east = topBath + 3.6 + 1.4;
// West half: kitchen group, ice maker as a lavatory, powder room, lower bath and laundry as groups.
const west = 2.5 + 0.7 + 2.6 + 3.6 + 2.5;
const hoseBibbs = 3 * 2.5;
// Hot only. Top-floor bath: group 1.5, second lavatory 0.5, hand shower 1.0; hall bath 1.5; washer 1.0.
const topBathHot = 1.5 + 0.5 + 1.0;
const eastHot = topBathHot + 1.5 + 1.0;

it('street to the hot side of the rain shower, by hand', async () => {
  const result = reportOf(await openExample('three-level-house.json'));
  // Table P2903.6(1), flush tanks: 30 WSFU 23.3 gpm, 35 WSFU 24.9 gpm; 20 and 25 WSFU 19.6 and 21.5 gpm.
  const service = between(hoseBibbs + east + west, [30, 23.3], [35, 24.9]);
  const house = between(east + west, [20, 19.6], [25, 21.5]);
  const eastFlow = between(east, [10, 14.6], [11, 15.4]);
  const eastHotFlow = between(eastHot, [5, 9.4], [6, 10.7]);

  // 1 in. meter: 2.8 psi at 22 gpm, 3.4 psi at 24 gpm.
  const meter = between(service, [22, 2.8], [24, 3.4]);
  // Reducing valve, set to 75 psi: falls off 7.3 psi at 21.8 gpm and 11.4 psi at 34 gpm.
  const fallOff = between(service, [21.8, 7.3], [34, 11.4]);
  // Storage heater: 1 psi at 10 gpm, 2 psi at 20 gpm.
  const heater = between(eastHotFlow, [10, 1], [20, 2]);

  const left = walk(result, 82, [
    {
      run: 'S1',
      water: cold,
      units: hoseBibbs + east + west,
      gpm: service,
      boreIn: oneAndAQuarter,
      lengthFt: 18,
      fittingsFt: 9 + 7, // corporation stop, curb stop
      riseFt: 1,
      device: (before) => before - meter,
    },
    {
      run: 'S2',
      water: cold,
      units: hoseBibbs + east + west,
      gpm: service,
      boreIn: oneAndAQuarter,
      lengthFt: 52,
      fittingsFt: 11 + 0.5, // ell, ball valve
      riseFt: -1,
      device: (before) => Math.min(before, 75) - fallOff,
    },
    {
      run: 'S3',
      water: cold,
      units: hoseBibbs + east + west,
      gpm: service,
      boreIn: oneAndAQuarter,
      lengthFt: 3,
      fittingsFt: 0,
    },
    {
      run: 'S4',
      water: cold,
      units: east + west,
      gpm: house,
      boreIn: oneAndAQuarter,
      lengthFt: 2,
      fittingsFt: 2, // straight through the tee of the hose bibbs
    },
    {
      run: 'E1',
      water: cold,
      units: east,
      gpm: eastFlow,
      boreIn: one,
      lengthFt: 7,
      fittingsFt: 11 + 0.5, // side of the tee, ball valve
    },
    {
      run: 'EH0',
      water: cold,
      units: eastHot,
      gpm: eastHotFlow,
      boreIn: one,
      lengthFt: 4,
      fittingsFt: 11 + 0.5, // side of the tee, ball valve
      device: (before) => before - heater,
    },
    {
      run: 'EH',
      water: hot,
      units: eastHot,
      gpm: eastHotFlow,
      boreIn: one,
      lengthFt: 6,
      fittingsFt: 10, // ell
      riseFt: 4.5,
    },
    {
      run: 'EHR',
      water: hot,
      units: topBathHot,
      gpm: 6.5, // 3 WSFU
      boreIn: threeQuarters,
      lengthFt: 17,
      fittingsFt: 1.9 + 9.4, // straight through a tee, ell
      riseFt: 10.5,
    },
    {
      run: 'TH1',
      water: hot,
      units: 1 + 1,
      gpm: 5, // 2 WSFU
      boreIn: threeQuarters,
      lengthFt: 5,
      fittingsFt: 1.9, // straight through a tee
    },
    {
      run: 'TH2',
      water: hot,
      units: 1,
      gpm: 2.5, // one fixture: what its maker asks for
      boreIn: half,
      lengthFt: 5,
      fittingsFt: 10.4, // side of the tee
      riseFt: 4,
    },
  ]);

  // The maker asks for 40 psi ahead of the valve.
  const inlet = result.inlets.find((one) => one.inlet.fixture.id === 'RAIN' && one.inlet.side === 'hot')!;
  expect(inlet.margin / 6894.757).toBeCloseTo(left - 40, 2);
  expect(result.worst).toBe(inlet);
});
