import type { Basis, Report, Supply } from '../../engine/index.ts';
import { profiles } from '../../tables/profiles.ts';
import { show } from '../../tables/units/display.ts';
import { wrap } from './wrap.ts';

/** One labelled line of a summary, wrapped under itself. */
export function labelled(label: string, text: string): string[] {
  return wrap(text, label.padEnd(10));
}

/** Which job, scheme, basis and supply an answer belongs to. */
export function headLines({ network }: Report): string[] {
  const { job, scheme, basis, supply } = network;
  const others = job.schemes.map(({ id }) => id).filter((id) => id !== scheme.id);
  const also = others.length === 0 ? '' : `; --scheme ${others.slice(0, 3).join(' or ')} for another`;
  return [
    ...labelled('Job', job.name),
    ...labelled('Scheme', `${scheme.name} (${scheme.id})${also}`),
    ...labelled('Basis', basisWords(basis)),
    ...labelled('Supply', supplyWords(supply)),
  ];
}

/** The line that stands under every answer. */
export const deferral = wrap(
  'Computed for planning: the local code, its inspector and the licensed plumber decide.',
);

function basisWords(basis: Basis): string {
  const { title, edition } = profiles[basis.profile];
  return [
    `${title} ${edition}`,
    `demand ${basis.between === 'interpolate' ? 'interpolated between rows' : 'rounded up to the next row'}`,
    basis.friction === 'hazen-williams' ? 'Hazen-Williams' : 'Darcy-Weisbach',
    `cold ${basis.coldTemperature.typed}`,
    `hot ${basis.hotTemperature.typed}`,
    ...(basis.elevationFactor === undefined ? [] : [`height by ${basis.elevationFactor.typed}`]),
    ...(basis.fittings === 'loss-coefficient' ? ['fittings by K'] : []),
    ...(basis.fittingAllowancePercent === undefined
      ? []
      : [`fittings as ${basis.fittingAllowancePercent} % of the length`]),
  ].join(', ');
}

function supplyWords(supply: Supply): string {
  const at = `at elevation ${supply.elevation.typed}`;
  switch (supply.kind) {
    case 'static':
      return `${supply.low.typed} at the daily low, ${supply.high.typed} at the high, ${at}`;
    case 'flow-test': {
      const { low, high } = supply;
      const day = [
        low === undefined ? '' : `, ${low.typed} at the daily low`,
        high === undefined ? '' : `, ${high.typed} at the high`,
      ].join('');
      return `flow test: ${supply.static.typed} static, ${supply.residual.typed} at ${supply.flow.typed}${day}, ${at}`;
    }
    case 'well': {
      const pump = supply.pumpFlow === undefined ? '' : `, pump ${supply.pumpFlow.typed}`;
      return `well: cut-in ${supply.cutIn.typed}, cut-out ${supply.cutOut.typed}${pump}, ${at}`;
    }
  }
}

/** Demand at the service and the pressure that the street gives under it. */
export function demandLines({ network, solution }: Report): string[] {
  if (network.size === 0) return [];
  const system = network.job.units;
  const flow = show(solution.flow[0]!, 'flow', system);
  const units = show(solution.units[0]!, 'fixture units', system);
  const street = show(solution.supplyPressure, 'pressure', system);
  return labelled('Demand', `${flow} at the service (${units}); the street gives ${street} under it`);
}
