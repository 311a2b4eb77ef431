import { expect, it } from 'vitest';
import { between, columnOf, walk } from './by-hand.ts';
import { openExample, reportOf } from './open-example.ts';

// PEX, C = 150; water at 60 F has 999.15 kg/m3, at 120 F 988.68 kg/m3 (steam tables).
const cold = { c: 150, psiPerFt: columnOf(999.15) };
const hot = { c: 150, psiPerFt: columnOf(988.68) };

// Units by IRC Table P2903.6. Top-floor bath: group 3.6, second lavatory 0.7, hand shower 1.4; hall bath 3.6; upper
// washer 1.4; kitchen group 2.5; ice maker 0.7 as a lavatory; powder room 2.6; laundry group 2.5.
const house = 3.6 + 0.7 + 1.4 + 3.6 + 1.4 + 2.5 + 0.7 + 2.6 + 2.5;
const hoseBibbs = 2 * 2.5;
// Hot: top-floor bath 1.5 + 0.5 + 1.0, hall bath 1.5, upper washer 1.0, kitchen 1.9, powder room 0.5 (its lavatory),
// laundry 1.8.
const hotUnits = 1.5 + 0.5 + 1.0 + 1.5 + 1.0 + 1.9 + 0.5 + 1.8;

it('street to the hot side of the rain shower at the end of its home run, by hand', async () => {
  const result = reportOf(await openExample('home-run-house.json'));
  // Table P2903.6(1), flush tanks: 20 WSFU 19.6 gpm, 25 WSFU 21.5 gpm; 19 WSFU 19.2 gpm; 9 and 10 WSFU 13.7, 14.6 gpm.
  const service = between(house + hoseBibbs, [20, 19.6], [25, 21.5]);
  const hotFlow = between(hotUnits, [9, 13.7], [10, 14.6]);

  // 1 in. meter: 2.2 psi at 20 gpm, 2.8 psi at 22 gpm.
  const meter = between(service, [20, 2.2], [22, 2.8]);
  // Storage heater: 1 psi at 10 gpm, 2 psi at 20 gpm.
  const heater = between(hotFlow, [10, 1], [20, 2]);
  // 1 in. manifold, Cv = 25.1: 1 psi at 25.1 gpm, and with the square of the flow.
  const manifold = (hotFlow / 25.1) ** 2;

  const left = walk(result, 64, [
    {
      run: 'S1',
      water: cold,
      units: house + hoseBibbs,
      gpm: service,
      boreIn: 1.054,
      lengthFt: 16,
      fittingsFt: 9 + 7, // corporation stop, curb stop
      riseFt: 1,
      device: (before) => before - meter,
    },
    {
      run: 'S2',
      water: cold,
      units: house + hoseBibbs,
      gpm: service,
      boreIn: 1.054,
      lengthFt: 40,
      fittingsFt: 11 + 5.5 + 0.5, // ell, check valve, ball valve
      riseFt: -1,
    },
    {
      run: 'S3',
      water: cold,
      units: house,
      gpm: 19.2, // 19 WSFU
      boreIn: 1.054,
      lengthFt: 3,
      fittingsFt: 2, // straight through the tee of the hose bibbs
    },
    {
      run: 'W1',
      water: cold,
      units: hotUnits,
      gpm: hotFlow,
      boreIn: 0.863,
      lengthFt: 4,
      fittingsFt: 11 + 0.5, // side of the tee, ball valve
      device: (before) => before - heater,
    },
    {
      run: 'M2',
      water: hot,
      units: hotUnits,
      gpm: hotFlow,
      boreIn: 0.863,
      lengthFt: 5,
      fittingsFt: 10, // ell
      device: (before) => before - manifold,
    },
    {
      run: 'H1',
      water: hot,
      units: 1,
      gpm: 9.5 / 3.785411784, // one fixture: its maker asks for 9.5 L/min
      boreIn: 0.475,
      lengthFt: 40,
      fittingsFt: 2 * 9.4, // two ells
      portPsi: (9.5 / 3.785411784 / 3.0) ** 2, // the manifold's 1/2 in. port, Cv 3.0
      riseFt: 19,
    },
  ]);

  // The maker asks for 2.2 bar, and a psi is 0.06894757 bar.
  const inlet = result.inlets.find((one) => one.inlet.fixture.id === 'RAIN' && one.inlet.side === 'hot')!;
  expect(inlet.margin / 6894.757).toBeCloseTo(left - 2.2 / 0.06894757, 2);
  expect(result.worst).toBe(inlet);
});
