import { fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { joints, materials } from '../../tables/pipe/names.ts';
import { profiles } from '../../tables/profiles.ts';

const fields: Readonly<Record<string, string>> = {
  from: 'comes from',
  coldTemperature: 'cold water',
  hotTemperature: 'hot water',
  elevationFactor: 'pressure by height',
  fittingAllowancePercent: 'fittings as % of length',
  velocityCold: 'velocity limit cold',
  velocityHot: 'velocity limit hot',
  between: 'between table rows',
  profile: 'code',
  cutIn: 'cut-in',
  cutOut: 'cut-out',
  chosen: 'scheme on the page',
  continuous: 'runs for long',
};

/** Fields whose value says by itself what it is. */
const plain: ReadonlySet<string> = new Set(['size', 'material', 'joint', 'end']);

/** What a field is called in a sentence; empty where its value says by itself what it is. */
export function fieldWord(field: string): string {
  return plain.has(field) ? '' : (fields[field] ?? spaced(field));
}

/** Values for which the file has keys of its own, by field. */
const values: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  material: materials,
  joint: joints,
  kind: {
    ...Object.fromEntries(Object.entries(fixtureKinds).map(([id, { label }]) => [id, label])),
    static: 'street main, static pressures',
    'flow-test': 'street main, two-point flow test',
    well: 'well pump with pressure tank',
    'full-bath': 'full bath',
    'half-bath': 'half bath',
  },
  profile: Object.fromEntries(
    Object.entries(profiles).map(([id, { title, edition }]) => [id, `${title} ${edition}`]),
  ),
  friction: { 'hazen-williams': 'Hazen-Williams', 'darcy-weisbach': 'Darcy-Weisbach' },
  fittings: { 'equivalent-length': 'equivalent length', 'loss-coefficient': 'loss coefficient K' },
  between: { interpolate: 'straight line', 'round-up': 'next row up' },
  units: { us: 'US customary', si: 'SI' },
};

/** A value as a reader sees it elsewhere, where the file has a key of its own for it. */
export function valueWord(field: string, value: string): string {
  const words = values[field];
  return words !== undefined && Object.hasOwn(words, value) ? words[value]! : value;
}

/** `siteReadings` as `site readings`. */
export function spaced(key: string): string {
  return key.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();
}
