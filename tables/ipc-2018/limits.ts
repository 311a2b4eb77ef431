import { hotColdApart, hotVolume, lawsApart, lawsApartLeast, scaldTemperature } from '../practice-limits.ts';
import type { Profile } from '../profile.ts';
import { sources } from '../sources.ts';

const source = sources['ipc-2018'];
const checkedOn = '2026-11-25';

export const limits: Profile['limits'] = {
  maximumStatic: {
    kind: 'value',
    id: 'ipc-2018-maximum-static',
    title: 'Static pressure above which a reducing valve is required',
    source,
    at: { section: '604.8', checkedOn },
    verified: 'seen-secondary',
    unit: 'psi',
    printed: 80,
  },
  minimumService: {
    kind: 'value',
    id: 'ipc-2018-minimum-service',
    title: 'Least nominal size of the water service',
    source,
    at: { section: '603.1', checkedOn },
    verified: 'seen-secondary',
    unit: 'in',
    printed: 0.75,
  },
  homeRunLength: {
    kind: 'value',
    id: 'ipc-2018-home-run-length',
    title:
      'Longest individual line of a manifold that may be one size smaller than the table of supply sizes',
    source,
    at: { table: '604.5, footnote a', checkedOn },
    verified: 'memory',
    note: 'For a bathtub up to 60 x 32 in, a kitchen sink or a shower, one nominal size smaller.',
    unit: 'ft',
    printed: 60,
  },
  homeRunPressure: {
    kind: 'value',
    id: 'ipc-2018-home-run-pressure',
    title: 'Pressure at the meter that the smaller individual line asks for',
    source,
    at: { table: '604.5, footnote a', checkedOn },
    verified: 'memory',
    note: 'The IPC footnote says 35 psi where the IRC says 40 psi.',
    unit: 'psi',
    printed: 35,
  },
  homeRunLeastSize: {
    kind: 'value',
    id: 'ipc-2018-home-run-least-size',
    title: 'Least nominal size of an individual line of a manifold',
    source,
    at: { table: '604.5, footnote a', checkedOn },
    verified: 'memory',
    note: 'One nominal size below the 1/2 in of the table.',
    unit: 'in',
    printed: 0.375,
  },
  homeRunUsualSize: {
    kind: 'value',
    id: 'ipc-2018-home-run-usual-size',
    title: 'Nominal size from which an individual line needs no exception',
    source,
    at: { table: '604.5, footnote a', checkedOn },
    verified: 'memory',
    unit: 'in',
    printed: 0.5,
  },
  hotLength: {
    kind: 'value',
    id: 'ipc-2018-hot-length',
    title: 'Longest developed length of hot piping from its source to a fixture',
    source,
    at: { section: '607.2', checkedOn },
    verified: 'seen-secondary',
    note: 'A circulated or heat-traced pipe counts as source (from memory); 100 ft in editions before about 2012.',
    unit: 'ft',
    printed: 50,
  },
  hotVolume,
  hotColdApart,
  scaldTemperature,
  lawsApart,
  lawsApartLeast,
};
