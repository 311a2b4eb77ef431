import { darcyWeisbachGradient } from '../../engine/hydraulics/darcy-weisbach.ts';
import { hazenWilliams, headGradient } from '../../engine/hydraulics/hazen-williams.ts';
import { velocity } from '../../engine/hydraulics/velocity.ts';
import { waterAt } from '../../engine/hydraulics/water.ts';
import { lookUp } from '../../tables/look-up.ts';
import { pipeDimensions } from '../../tables/pipe/dimensions.ts';
import type { MaterialId } from '../../tables/pipe/names.ts';
import { fromSI, standardGravity, toSI } from '../../tables/units/definitions.ts';

/** Bore of the tables, m. */
export function boreOf(material: MaterialId, size: string): number {
  return lookUp(pipeDimensions[material], size, 'bore').value;
}

/** Friction by Hazen-Williams, psi per 100 ft of water at 60 F. @param bore m */
export function hazenWilliamsPsi(bore: number, gpm: number, c: number): number {
  const head = hazenWilliams.compute({ Q: gpm, C: c, d: fromSI(bore, 'in') });
  const { density } = waterAt(toSI(60, 'F'));
  return fromSI(headGradient.compute({ h: head, ρ: density, g: standardGravity }), 'psi/100ft');
}

/** Friction by Darcy-Weisbach and Colebrook, Pa/m. @param bore m @param roughness m */
export function darcyWeisbachPa(bore: number, gpm: number, roughness: number, fahrenheit: number): number {
  const { density, viscosity } = waterAt(toSI(fahrenheit, 'F'));
  const speed = velocity.compute({ Q: toSI(gpm, 'gpm'), d: bore });
  return darcyWeisbachGradient(speed, bore, roughness, density, viscosity);
}

/** The same in psi per 100 ft. */
export function darcyWeisbachPsi(bore: number, gpm: number, roughness: number, fahrenheit: number): number {
  return fromSI(darcyWeisbachPa(bore, gpm, roughness, fahrenheit), 'psi/100ft');
}

/** The same in feet of head per 100 ft of the water that flows. */
export function darcyWeisbachHead(bore: number, gpm: number, roughness: number, fahrenheit: number): number {
  const { density } = waterAt(toSI(fahrenheit, 'F'));
  return (100 * darcyWeisbachPa(bore, gpm, roughness, fahrenheit)) / (density * standardGravity);
}
