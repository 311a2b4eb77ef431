/** Rows for levels on the form of a quick start; those without a name are not there. */
export const mostLevels = 6;

/** What the form holds before anybody answers: an invented house of two levels. */
export const quickStartDefaults: Readonly<Record<string, string>> = {
  name: '',
  units: 'us',
  profile: 'irc-2021',
  level0: 'Ground floor',
  height0: '10 ft',
  full0: '0',
  half0: '1',
  laundry0: '1',
  level1: 'Upper floor',
  height1: '9 ft',
  full1: '2',
  half1: '0',
  laundry1: '0',
  kitchen: '0',
  hoseBibbs: '2',
  source: 'street',
  low: '55 psi',
  high: '75 psi',
  cutIn: '40 psi',
  cutOut: '60 psi',
};
