import type { Network, Report, Supply } from '../../../engine/index.ts';
import type { SheetSection } from '../../../views/sheet.ts';
import { figure, unitSymbol } from '../../../views/text/figure.ts';
import { endWords } from '../../../views/text/loss-step.ts';
import { figures, row, table, words } from '../blocks.ts';

/** What the street gives, and every device with what it takes. */
export function supplySection(report: Report): SheetSection {
  const { network, solution } = report;
  const { units } = network.job;
  const pressure = unitSymbol('pressure', units);
  const facts = [
    ...supplyFacts(network.supply),
    ['Height of that point', network.supply.elevation.typed] as const,
    ['Under the design demand', `${figure(solution.supplyPressure, 'pressure', units)} ${pressure}`] as const,
    ['At rest, highest', `${figure(solution.supplyStatic, 'pressure', units)} ${pressure}`] as const,
  ];
  const devices = table(
    'Meter, valves, assemblies and other devices',
    [
      words('Run'),
      words('Device'),
      words('Loss from'),
      figures(`Flow, ${unitSymbol('flow', units)}`),
      figures(`Loss, ${pressure}`),
      figures(`Behind it, ${pressure}`),
    ],
    network.devices.map(({ run, curve, setPressure }) =>
      row(
        network.runs[run]!.id,
        setPressure === undefined
          ? endWords(network.runs[run]!)
          : `reducing valve set to ${figure(setPressure, 'pressure', units)} ${pressure}`,
        curveWords(curve.from),
        figure(solution.flow[run]!, 'flow', units),
        figure(solution.deviceLoss[run]!, 'pressure', units),
        figure(solution.residual[run]!, 'pressure', units),
      ),
    ),
  );
  return {
    id: 'supply',
    title: 'Supply',
    blocks: [{ is: 'facts', rows: facts }, ...(network.devices.length === 0 ? [] : [devices])],
  };
}

function supplyFacts(supply: Supply): (readonly [string, string])[] {
  switch (supply.kind) {
    case 'static':
      return [
        ['Street, static', `${supply.low.typed} at the daily low, ${supply.high.typed} at the daily high`],
      ];
    case 'flow-test':
      return [
        [
          'Street, flow test',
          `${supply.static.typed} static, ${supply.residual.typed} residual at ${supply.flow.typed}`,
        ],
        ...(supply.low === undefined ? [] : [['Daily low', supply.low.typed] as const]),
        ...(supply.high === undefined ? [] : [['Daily high', supply.high.typed] as const]),
      ];
    case 'well':
      return [
        ['Well', `pump starts at ${supply.cutIn.typed}, stops at ${supply.cutOut.typed}`],
        ...(supply.pumpFlow === undefined ? [] : [['Pump gives', supply.pumpFlow.typed] as const]),
      ];
  }
}

function curveWords(from: Network['devices'][number]['curve']['from']): string {
  if (from === 'maker') return 'the maker’s points, as typed';
  if (from === 'none') return 'no loss is taken';
  return 'printed' in from ? from.table.title : from.title;
}
