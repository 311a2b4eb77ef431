import type { Basis, Level, Report } from '../../../engine/index.ts';
import type { SheetBlock, SheetSection } from '../../../views/sheet.ts';
import { figuresApart, figureWithUnit, fixed, signedPressure } from '../../../views/text/figure.ts';
import { figures, paragraph, row, table } from '../blocks.ts';
import { demandUnit } from '../demand-sources.ts';
import { basisFacts } from './basis-facts.ts';

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
          ...serviceDemand(report),
          ...basisFacts(report),
          ...levelFacts(job.levels),
          ['Job file, SHA-256', hash],
        ],
      },
      ...ownDemand(job.basis),
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

function serviceDemand({ network, solution }: Report): (readonly [string, string])[] {
  if (network.size === 0) return [];
  const flow = figureWithUnit(solution.flow[0]!, 'flow', network.job.units);
  const counted = `${fixed(network.demand.from.units[0]!, 1)} ${demandUnit(network)}`;
  return [['Demand at the service', `${flow} (${counted})`]];
}

/** The finished floors on the job's datum. */
function levelFacts(levels: readonly Level[]): (readonly [string, string])[] {
  if (levels.length === 0) return [];
  return [['Floors', levels.map(({ name, elevation }) => `${name} at ${elevation.typed}`).join('; ')]];
}

/** The table that a job brings along, as it was typed. */
function ownDemand({ demand }: Basis): SheetBlock[] {
  if (demand?.method !== 'own-table') return [];
  const rows = demand.points.map((point) => row(String(point.units), point.flow.typed));
  return [
    table(
      `Demand table of the job: ${demand.name}`,
      [figures('WSFU'), figures('Flow')],
      rows,
      'As typed into the job; not compared with any document.',
    ),
  ];
}
