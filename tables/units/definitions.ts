/**
 * Units and their exact definitions, each given once: SI value = printed value x factor + offset.
 *
 * Sources: the inch (0.0254 m), the pound (0.45359237 kg) and the US gallon (231 cubic inches) are exact by the
 * international yard and pound agreement of 1959 and NIST SP 811 (2008), appendix B; standard gravity is
 * 9.80665 m/s2 by the 3rd CGPM (1901); the degree Fahrenheit is NIST SP 811, table 8.
 */

const inch = 0.0254;
// 12 inches and 231 cubic inches, in digits: the products in binary miss them by the last one, and 60 ft as it is typed
// would be longer than 60 ft as a table prints it.
const foot = 0.3048;
const gallon = 3.785411784e-3;
const poundForce = 0.45359237 * 9.80665;
const psi = poundForce / inch ** 2;

export const standardGravity = 9.80665;

export type Dimension =
  | 'pressure'
  | 'pressure gradient'
  | 'flow'
  | 'length'
  | 'velocity'
  | 'temperature'
  | 'volume'
  | 'volume per length'
  | 'density'
  | 'dynamic viscosity'
  | 'kinematic viscosity'
  | 'area'
  | 'fixture units'
  | 'flow coefficient'
  | 'acceleration'
  | 'number';

export interface UnitDefinition {
  readonly dimension: Dimension;
  /** As a person reads it. */
  readonly symbol: string;
  readonly factor: number;
  readonly offset?: number;
}

export const units = {
  Pa: { dimension: 'pressure', symbol: 'Pa', factor: 1 },
  kPa: { dimension: 'pressure', symbol: 'kPa', factor: 1e3 },
  bar: { dimension: 'pressure', symbol: 'bar', factor: 1e5 },
  psi: { dimension: 'pressure', symbol: 'psi', factor: psi },
  'Pa/m': { dimension: 'pressure gradient', symbol: 'Pa/m', factor: 1 },
  'kPa/m': { dimension: 'pressure gradient', symbol: 'kPa/m', factor: 1e3 },
  'psi/ft': { dimension: 'pressure gradient', symbol: 'psi/ft', factor: psi / foot },
  'psi/100ft': { dimension: 'pressure gradient', symbol: 'psi/100 ft', factor: psi / (100 * foot) },
  'm3/s': { dimension: 'flow', symbol: 'm³/s', factor: 1 },
  'L/s': { dimension: 'flow', symbol: 'L/s', factor: 1e-3 },
  'L/min': { dimension: 'flow', symbol: 'L/min', factor: 1e-3 / 60 },
  'm3/h': { dimension: 'flow', symbol: 'm³/h', factor: 1 / 3600 },
  gpm: { dimension: 'flow', symbol: 'gpm', factor: gallon / 60 },
  m: { dimension: 'length', symbol: 'm', factor: 1 },
  mm: { dimension: 'length', symbol: 'mm', factor: 1e-3 },
  ft: { dimension: 'length', symbol: 'ft', factor: foot },
  in: { dimension: 'length', symbol: 'in', factor: inch },
  'm/s': { dimension: 'velocity', symbol: 'm/s', factor: 1 },
  'ft/s': { dimension: 'velocity', symbol: 'ft/s', factor: foot },
  K: { dimension: 'temperature', symbol: 'K', factor: 1 },
  C: { dimension: 'temperature', symbol: '°C', factor: 1, offset: 273.15 },
  F: { dimension: 'temperature', symbol: '°F', factor: 5 / 9, offset: 459.67 * (5 / 9) },
  m3: { dimension: 'volume', symbol: 'm³', factor: 1 },
  L: { dimension: 'volume', symbol: 'L', factor: 1e-3 },
  gal: { dimension: 'volume', symbol: 'gal', factor: gallon },
  floz: { dimension: 'volume', symbol: 'fl oz', factor: gallon / 128 },
  'm3/m': { dimension: 'volume per length', symbol: 'm³/m', factor: 1 },
  'floz/ft': { dimension: 'volume per length', symbol: 'fl oz/ft', factor: gallon / 128 / foot },
  m2: { dimension: 'area', symbol: 'm²', factor: 1 },
  'kg/m3': { dimension: 'density', symbol: 'kg/m³', factor: 1 },
  'Pa.s': { dimension: 'dynamic viscosity', symbol: 'Pa·s', factor: 1 },
  'm2/s': { dimension: 'kinematic viscosity', symbol: 'm²/s', factor: 1 },
  'm/s2': { dimension: 'acceleration', symbol: 'm/s²', factor: 1 },
  wsfu: { dimension: 'fixture units', symbol: 'WSFU', factor: 1 },
  /** Loading units of the European and British methods: no kin of WSFU but in name. */
  lu: { dimension: 'fixture units', symbol: 'LU', factor: 1 },
  /** gpm of water at 60 F that a valve passes at 1 psi. */
  Cv: { dimension: 'flow coefficient', symbol: 'Cv', factor: 1 },
  /** Feet of head per 100 ft of pipe, a slope. */
  'ft/100ft': { dimension: 'number', symbol: 'ft/100 ft', factor: 0.01 },
  one: { dimension: 'number', symbol: '', factor: 1 },
} as const satisfies Record<string, UnitDefinition>;

export type UnitId = keyof typeof units;

/** A value printed in `unit`, in SI. */
export function toSI(printed: number, unit: UnitId): number {
  const { factor, offset = 0 }: UnitDefinition = units[unit];
  return printed * factor + offset;
}

/** An SI value, in `unit`. */
export function fromSI(value: number, unit: UnitId): number {
  const { factor, offset = 0 }: UnitDefinition = units[unit];
  return (value - offset) / factor;
}
