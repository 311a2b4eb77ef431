/**
 * A small whole to start from: an invented cottage with a storage heater, read like any other job file. It stands
 * in code so that the command needs no file beside it.
 */
export const starterJob = {
  format: 'hightap-job',
  version: 2,
  name: 'Cottage',
  note: 'An invented building to start from. Replace supply, fixtures and runs by your own.',
  units: 'us',
  basis: {
    profile: 'irc-2021',
    between: 'interpolate',
    friction: 'hazen-williams',
    coldTemperature: '55 F',
    hotTemperature: '120 F',
  },
  supply: { kind: 'static', elevation: '-4 ft', low: '55 psi', high: '70 psi' },
  levels: [{ id: 'ground', name: 'Ground floor', elevation: '0 ft' }],
  groups: [],
  fixtures: [
    { id: 'sink', name: 'Kitchen sink', kind: 'kitchen-sink', level: 'ground', use: 'private', count: 1 },
    { id: 'shower', name: 'Shower', kind: 'shower', level: 'ground', use: 'private', count: 1 },
    { id: 'basin', name: 'Basin', kind: 'lavatory', level: 'ground', use: 'private', count: 1 },
    {
      id: 'closet',
      name: 'Water closet',
      kind: 'water-closet-tank',
      level: 'ground',
      use: 'private',
      count: 1,
    },
  ],
  schemes: [
    {
      id: 'trunk',
      name: 'Trunk and branch',
      runs: [
        { id: 'S1', from: 'street', line: "1 PE 40' up 4' 1 ball valve then meter 3/4" },
        { id: 'C1', from: 'S1', line: "1 PEX 12' 1 ell" },
        { id: 'C2', from: 'C1', line: "1 PEX 10' 1 tee" },
        { id: 'C3', from: 'C2', line: "1/2 PEX 8' up 2' 2 ells to sink cold" },
        { id: 'C4', from: 'C2', line: "3/4 PEX 12' 1 through tee" },
        { id: 'C5', from: 'C4', line: "1/2 PEX 8' up 4' 2 ells to shower cold" },
        { id: 'C6', from: 'C4', line: "1/2 PEX 6' up 2' 2 ells to basin cold" },
        { id: 'C7', from: 'C4', line: "1/2 PEX 6' up 1' 2 ells to closet cold" },
        { id: 'T1', from: 'C1', line: "3/4 PEX 2' then expansion tank" },
        { id: 'H1', from: 'C1', line: "3/4 PEX 6' 2 ells 1 ball valve then heater storage" },
        { id: 'H2', from: 'H1', line: "3/4 PEX 10' 1 ell" },
        { id: 'H3', from: 'H2', line: "1/2 PEX 8' up 2' 2 ells to sink hot" },
        { id: 'H4', from: 'H2', line: "3/4 PEX 12' 1 through tee" },
        { id: 'H5', from: 'H4', line: "1/2 PEX 8' up 4' 2 ells to shower hot" },
        { id: 'H6', from: 'H4', line: "1/2 PEX 6' up 2' 2 ells to basin hot" },
      ],
    },
  ],
  chosen: 'trunk',
} as const;
