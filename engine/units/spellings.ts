/**
 * How the trade writes units, each as the unit expression that mathjs reads. `scale` stands where the expression
 * cannot hold a number. A spelling is looked up as written and then in small letters, so `PSI` and `Gpm` are read;
 * those that differ by case alone (`mm` and `Mm`, `MPa` and `mPa`) are read as written only.
 */
export interface Spelling {
  readonly expression: string;
  readonly scale?: number;
}

const written: { readonly [expression: string]: readonly string[] } = {
  Pa: ['Pa', 'pa'],
  kPa: ['kPa', 'kpa'],
  MPa: ['MPa'],
  mbar: ['mbar'],
  bar: ['bar', 'barg', 'bars'],
  psi: ['psi', 'psig'],
  'Pa/m': ['Pa/m', 'pa/m'],
  'kPa/m': ['kPa/m', 'kpa/m'],
  'psi/ft': ['psi/ft', 'psi/foot'],
  'm^3/s': ['m3/s', 'm³/s'],
  'm^3/hour': ['m3/h', 'm³/h', 'm3/hr', 'm³/hr'],
  'L/s': ['l/s', 'lps', 'l/sec'],
  'L/minute': ['l/min', 'lpm'],
  'gal/minute': ['gpm', 'gal/min', 'us gpm'],
  m: ['m', 'meter', 'meters', 'metre', 'metres'],
  km: ['km'],
  cm: ['cm'],
  mm: ['mm'],
  ft: ["'", 'ft', 'foot', 'feet'],
  in: ['"', 'in', 'inch', 'inches'],
  'm/s': ['m/s', 'm/sec'],
  'ft/s': ['ft/s', 'fps', 'ft/sec'],
  K: ['K'],
  degC: ['c', '°c', 'degc', 'deg c', '° c', '℃'],
  degF: ['f', '°f', 'degf', 'deg f', '° f', '℉'],
  Cv: ['cv'],
};

const spellings = new Map<string, Spelling>([
  ['psi/100 ft', { expression: 'psi/ft', scale: 0.01 }],
  ['psi/100ft', { expression: 'psi/ft', scale: 0.01 }],
]);
for (const [expression, words] of Object.entries(written)) {
  for (const word of words) spellings.set(word, { expression });
}

/** The unit that a person wrote, or undefined; a full stop behind an abbreviation is passed over. */
export function findSpelling(word: string): Spelling | undefined {
  const plain = word
    .replace(/\.$/, '')
    .replace(/\s+/g, ' ')
    .replace(/\s*\/\s*/g, '/');
  return spellings.get(plain) ?? (/^M(?:m|bar)/.test(plain) ? undefined : spellings.get(plain.toLowerCase()));
}
