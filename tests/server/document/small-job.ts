/** An invented job as it stands in a file, for tests to spoil. */
export const smallJob = {
  format: 'hightap-job',
  version: 2,
  name: 'Cabin by the lake (invented)',
  units: 'us',
  basis: {
    profile: 'ipc-2018',
    between: 'interpolate',
    friction: 'hazen-williams',
    coldTemperature: '60 F',
    hotTemperature: '140 F',
  },
  supply: { kind: 'static', elevation: '0 ft', low: '50 psi', high: '70 psi' },
  levels: [{ id: 'L1', name: 'Ground floor', elevation: '2 ft' }],
  groups: [],
  fixtures: [
    { id: 'LAV', name: 'Lavatory', kind: 'lavatory', level: 'L1', use: 'private', count: 1, inlets: 'cold' },
    { id: 'HB', name: 'Hose bibb', kind: 'hose-bibb', use: 'private', count: 1, height: '18 in' },
  ],
  schemes: [
    {
      id: 'A',
      name: 'As drawn',
      runs: [
        {
          id: 'S1',
          from: 'street',
          line: "1 PE 60' down 4' 1 corp stop then meter 3/4",
          note: 'by the city',
        },
        {
          id: 'S2',
          from: 'S1',
          size: '3/4',
          material: 'copper-l',
          length: '6 ft',
          fittings: [{ kind: 'ball-valve', count: 1 }],
          end: {
            device: 'filter',
            curve: [
              { flow: '5 gpm', loss: '1 psi' },
              { flow: '10 gpm', loss: '4 psi' },
            ],
          },
        },
        { id: 'B1', from: 'S2', line: "1/2 PEX 18' up 9' 2 ells to LAV cold" },
        { id: 'B2', from: 'S2', line: '3/4 PEX 12 m 3 ells to HB cold' },
      ],
    },
  ],
  chosen: 'A',
};
