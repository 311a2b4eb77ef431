import type { Job } from '../../engine/index.ts';
import { readJob } from '../../server/document/read-job.ts';

/** An invented cottage: one bath above, a kitchen below, a heater, a hose bibb. */
export const smallJob = {
  format: 'hightap-job',
  version: 2,
  name: 'Cottage at Fern End (invented)',
  note: 'An invented building.',
  units: 'us',
  basis: {
    profile: 'irc-2021',
    between: 'interpolate',
    friction: 'hazen-williams',
    coldTemperature: '60 F',
    hotTemperature: '120 F',
  },
  supply: { kind: 'static', elevation: '0 ft', low: '55 psi', high: '75 psi' },
  levels: [
    { id: 'L1', name: 'Ground floor', elevation: '2 ft' },
    { id: 'L2', name: 'Upper floor', elevation: '12 ft' },
  ],
  groups: [{ id: 'G1', name: 'Upper bath', kind: 'full-bath' }],
  fixtures: [
    { id: 'HB', name: 'Hose bibb', kind: 'hose-bibb', level: 'L1', use: 'private', count: 1 },
    { id: 'KS', name: 'Kitchen sink', kind: 'kitchen-sink', level: 'L1', use: 'private', count: 1 },
    { id: 'LAV', name: 'Lavatory', kind: 'lavatory', level: 'L2', use: 'private', count: 1, group: 'G1' },
    {
      id: 'WC',
      name: 'Water closet',
      kind: 'water-closet-tank',
      level: 'L2',
      use: 'private',
      count: 1,
      group: 'G1',
    },
    {
      id: 'SH',
      name: 'Rain shower',
      kind: 'shower',
      level: 'L2',
      use: 'private',
      count: 1,
      group: 'G1',
      flow: '2.5 gpm',
    },
  ],
  schemes: [
    {
      id: 'S1',
      name: 'Trunk and branch',
      runs: [
        { id: 'SV', from: 'street', line: "1 PEX 60' up 2' 1 curb stop 1 ball valve then meter 3/4" },
        { id: 'T1', from: 'SV', line: "1 PEX 12' 1 ell 1 ball valve" },
        { id: 'HBR', from: 'T1', line: "3/4 PEX 20' 1 tee 1 ball valve to HB cold" },
        { id: 'T2', from: 'T1', line: "3/4 PEX 10' 1 through tee" },
        { id: 'KSC', from: 'T2', line: "1/2 PEX 12' up 2' 1 tee 2 ells to KS cold" },
        { id: 'RC', from: 'T2', line: "3/4 PEX 14' up 10' 1 ell" },
        { id: 'LAVC', from: 'RC', line: "1/2 PEX 9' up 2' 1 tee 1 ell to LAV cold" },
        { id: 'WCC', from: 'RC', line: "1/2 PEX 6' 1 tee 1 ell to WC cold" },
        { id: 'SHC', from: 'RC', line: "1/2 PEX 14' up 6' 1 tee 2 ells to SH cold" },
        { id: 'WH', from: 'T1', line: "3/4 PEX 8' 1 tee 2 ells 1 ball valve then heater storage" },
        { id: 'H1', from: 'WH', line: "3/4 PEX 12' 2 ells" },
        { id: 'KSH', from: 'H1', line: "1/2 PEX 14' up 2' 1 tee 2 ells to KS hot" },
        { id: 'RH', from: 'H1', line: "3/4 PEX 16' up 10' 2 ells" },
        { id: 'LAVH', from: 'RH', line: "1/2 PEX 10' up 2' 1 tee 1 ell to LAV hot" },
        { id: 'SHH', from: 'RH', line: "1/2 PEX 15' up 6' 1 tee 2 ells to SH hot" },
      ],
    },
  ],
  chosen: 'S1',
} as const;

export const smallDocument: string = JSON.stringify(smallJob);

export async function readSmallJob(): Promise<Job> {
  const read = await readJob(smallDocument);
  if (!read.ok) throw new Error(read.problems.join('; '));
  return read.job;
}
