import { hotColdApart, hotVolume, lawsApart, scaldTemperature } from '../practice-limits.ts';
import type { Profile } from '../profile.ts';
import { sources } from '../sources.ts';

const source = sources['irc-2021'];
const checkedOn = '2026-11-25';

export const limits: Profile['limits'] = {
  maximumStatic: {
    kind: 'value',
    id: 'irc-2021-maximum-static',
    title: 'Static pressure above which a reducing valve is required',
    source,
    at: { section: 'P2903.3.2', checkedOn },
    verified: 'seen-secondary',
    note: 'Read in a field guide that lists it as 2903.3.1; the section number changed between editions.',
    unit: 'psi',
    printed: 80,
  },
  minimumService: {
    kind: 'value',
    id: 'irc-2021-minimum-service',
    title: 'Least nominal size of the water service',
    source,
    at: { section: 'P2903.7', checkedOn },
    verified: 'corroborated',
    note: 'Recalled; the Uniform Plumbing Code, section 610.8, was read and asks for the same.',
    unit: 'in',
    printed: 0.75,
  },
  homeRunLength: {
    kind: 'value',
    id: 'irc-2021-home-run-length',
    title: 'Longest individual line of a manifold that may be 3/8 in',
    source,
    at: { section: 'P2903.8.2', checkedOn },
    verified: 'memory',
    unit: 'ft',
    printed: 60,
  },
  homeRunPressure: {
    kind: 'value',
    id: 'irc-2021-home-run-pressure',
    title: 'Pressure at the meter that the 3/8 in individual line asks for',
    source,
    at: { section: 'P2903.8.2', checkedOn },
    verified: 'memory',
    note: 'Some fixtures (one-piece closets, whirlpool tubs) need more by their makers.',
    unit: 'psi',
    printed: 40,
  },
  homeRunLeastSize: {
    kind: 'value',
    id: 'irc-2021-home-run-least-size',
    title: 'Least nominal size of an individual line of a manifold',
    source,
    at: { section: 'P2903.8.2', checkedOn },
    verified: 'memory',
    unit: 'in',
    printed: 0.375,
  },
  hotLength: {
    kind: 'value',
    id: 'irc-2021-hot-length',
    title: 'Longest developed length of hot piping from its source to a fixture',
    source,
    at: { section: 'P2905.3', checkedOn },
    verified: 'seen-secondary',
    unit: 'ft',
    printed: 100,
  },
  hotVolume,
  hotColdApart,
  scaldTemperature,
  lawsApart,
};
