import { demandChoice } from '../../../engine/demand/demand-method.ts';
import type { Basis, Report } from '../../../engine/index.ts';
import { profiles } from '../../../tables/profiles.ts';
import { demandNames } from '../../../views/text/demand-text.ts';
import { demandSources } from '../demand-sources.ts';

type Fact = readonly [name: string, value: string];

const fittingNames: {
  readonly [by in NonNullable<Basis['fittings']>]: string;
} = {
  'equivalent-length': 'counted as drawn, by equivalent length; by K where no table prints a length',
  'loss-coefficient': 'counted as drawn, by loss coefficient K',
};

/** By which rules a job was computed, with what takes the place of those that it leaves out. */
export function basisFacts({ network }: Report): readonly Fact[] {
  const { basis } = network;
  const profile = profiles[basis.profile];
  const limit = (typed: string | undefined): string => typed ?? 'the code profile’s';
  // Every field of a basis has its line: one that is added to it does not compile without.
  const facts: { readonly [field in keyof Basis]-?: Fact } = {
    profile: ['Code', `${profile.title} ${profile.edition}`],
    demand: [
      'Demand by',
      [demandNames[demandChoice(basis, profile).method], ...demandSources(network)].join('; '),
    ],
    between: ['Between table rows', betweenText(network.demand.from.table.roundUp, basis.between)],
    friction: ['Friction', basis.friction === 'hazen-williams' ? 'Hazen-Williams' : 'Darcy-Weisbach'],
    coldTemperature: ['Cold water', basis.coldTemperature.typed],
    hotTemperature: ['Hot water', basis.hotTemperature.typed],
    elevationFactor: ['Pressure by height', basis.elevationFactor?.typed ?? 'density × gravity × height'],
    fittings: ['Fittings', fittingNames[basis.fittings ?? 'equivalent-length']],
    fittingAllowancePercent: [
      'Fitting allowance',
      basis.fittingAllowancePercent === undefined
        ? 'none'
        : `${basis.fittingAllowancePercent} % of the developed length, in place of the fittings drawn`,
    ],
    velocityCold: ['Velocity limit, cold', limit(basis.velocityCold?.typed)],
    velocityHot: ['Velocity limit, hot', limit(basis.velocityHot?.typed)],
  };
  return Object.values(facts);
}

/** A method may read the next row up whatever the basis says. */
function betweenText(roundUp: boolean, chosen: Basis['between']): string {
  if (!roundUp) return 'straight line';
  return chosen === 'round-up' ? 'next row up' : 'next row up, as the demand method has it';
}
