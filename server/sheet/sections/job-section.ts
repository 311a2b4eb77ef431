import type { Report } from '../../../engine/index.ts';
import { profiles } from '../../../tables/profiles.ts';
import type { SheetBlock, SheetSection } from '../../../views/sheet.ts';
import { figuresApart, figureWithUnit, fixed, signedPressure } from '../../../views/text/figure.ts';
import { paragraph } from '../blocks.ts';

/** The answer first, then what the job is and by which rules it was computed. */
export function jobSection(report: Report, hash: string): SheetSection {
  const { job } = report.network;
  const note = job.note === undefined ? [] : [['Note', job.note] as const];
  return {
    id: 'job',
    title: 'Job and basis',
    blocks: [
      ...answer(report),
      {
        is: 'facts',
        rows: [
          ...note,
          ['Layout', report.network.scheme.name],
          ...basisFacts(report),
          ['Job file, SHA-256', hash],
        ],
      },
    ],
  };
}

function answer({ worst, passes, network, findings, unverified }: Report): SheetBlock[] {
  if (worst === undefined) return [paragraph('No run ends at a fixture yet.', 'answer')];
  const { units } = network.job;
  const { inlet, residual, margin } = worst;
  const [left, needed] = figuresApart(residual, inlet.requiredPressure, 'pressure', units);
  const errors = findings.filter(({ severity }) => severity === 'error').length;
  const verdict = margin < 0 ? 'SHORT' : passes ? 'PASSES' : 'BREAKS A RULE';
  const broken = errors === 0 ? '' : ` ${errors} ${errors === 1 ? 'rule is' : 'rules are'} broken.`;
  const rests =
    unverified.length === 0 ? '' : `${restsOn(unverified.length)} They are marked where they stand.`;
  return [
    paragraph(
      `${verdict}: ${left} left at the worst fixture, ${inlet.fixture.name}, ${inlet.side}; it needs ${needed} (${signedPressure(margin, units)}).${broken}`,
      'answer',
    ),
    ...(rests === '' ? [] : [paragraph(rests, 'note')]),
  ];
}

function restsOn(count: number): string {
  const values = count === 1 ? '1 value' : `${count} values`;
  return `The worst path rests on ${values} from memory or common practice, not compared with a document.`;
}

function basisFacts({ network, solution }: Report): (readonly [string, string])[] {
  const { basis, job } = network;
  const { title, edition } = profiles[basis.profile];
  const limit = (typed: string | undefined): string => typed ?? 'the code profile’s';
  const demand =
    network.size === 0
      ? []
      : [
          [
            'Demand at the service',
            `${figureWithUnit(solution.flow[0]!, 'flow', job.units)} (${fixed(solution.units[0]!, 1)} WSFU)`,
          ] as const,
        ];
  return [
    ['Code', `${title} ${edition}`],
    ...demand,
    ['Between table rows', basis.between === 'interpolate' ? 'straight line' : 'next row up'],
    ['Friction', basis.friction === 'hazen-williams' ? 'Hazen-Williams' : 'Darcy-Weisbach'],
    ['Water', `cold ${basis.coldTemperature.typed}, hot ${basis.hotTemperature.typed}`],
    ['Pressure by height', basis.elevationFactor?.typed ?? 'density × gravity × height'],
    [
      'Fittings',
      basis.fittingAllowancePercent === undefined
        ? `counted as drawn, by ${basis.fittings === 'loss-coefficient' ? 'loss coefficient K' : 'equivalent length'}`
        : `${basis.fittingAllowancePercent} % of the developed length`,
    ],
    ['Velocity limits', `cold ${limit(basis.velocityCold?.typed)}, hot ${limit(basis.velocityHot?.typed)}`],
  ];
}
