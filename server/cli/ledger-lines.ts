import { type InletResult, ledger, type Report } from '../../engine/index.ts';
import { showParts } from '../../tables/units/display.ts';
import { unitSymbol } from '../../views/text/figure.ts';
import { lossWords } from '../../views/text/loss-step.ts';
import { leftAndNeeded } from './short-of.ts';
import { tableLines } from './table-lines.ts';
import { wrap } from './wrap.ts';

/** The path from the street to one inlet as a table of what is lost to what, and what is left. */
export function ledgerLines({ network, solution }: Report, result: InletResult): string[] {
  const { inlet, margin } = result;
  const system = network.job.units;
  const ends = leftAndNeeded(result, system);
  const pressure = (value: number): string => showParts(value, 'pressure', system).value;
  const rows = ledger(network, solution, inlet.run).map(({ run, what, loss, after }) => {
    const pipe = what === 'pipe';
    return [
      network.runs[run]!.id,
      lossWords(network.runs[run]!, what, loss),
      pipe ? showParts(solution.flow[run]!, 'flow', system).value : '',
      pipe ? showParts(solution.velocity[run]!, 'velocity', system).value : '',
      pressure(loss),
      pressure(after),
    ];
  });
  return [
    ...wrap(`Path to ${inlet.fixture.name}, ${inlet.side}`),
    '',
    ...tableLines(
      [
        { title: 'Run', holds: 'words' },
        { title: 'What', holds: 'words' },
        { title: unitSymbol('flow', system), holds: 'figures' },
        { title: unitSymbol('velocity', system), holds: 'figures' },
        { title: `Loss ${unitSymbol('pressure', system)}`, holds: 'figures' },
        { title: `Left ${unitSymbol('pressure', system)}`, holds: 'figures' },
      ],
      [
        ['street', 'at the street, under demand', '', '', '', pressure(solution.supplyPressure)],
        ...rows,
        ['', 'needed there', '', '', '', ends.needed],
        ['', margin < 0 ? 'SHORT by' : 'to spare', '', '', '', ends.margin.replace('-', '')],
      ],
    ),
  ];
}
