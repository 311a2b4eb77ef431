import type { InletResult, UnitSystem } from '../../engine/index.ts';
import { showParts } from '../../tables/units/display.ts';
import { unitSymbol } from '../../views/text/figure.ts';
import { inletName } from './choose-inlet.ts';
import { tableLines } from './table-lines.ts';

/** Inlets in the table unless all are asked for. */
export const mostInlets = 20;

/** All inlets as a table, smallest margin first; beyond the first twenty a count unless `all`. */
export function inletLines(inlets: readonly InletResult[], system: UnitSystem, all: boolean): string[] {
  const pressure = (value: number): string => showParts(value, 'pressure', system).value;
  const shown = all ? inlets : inlets.slice(0, mostInlets);
  const left = inlets.length - shown.length;
  return [
    `What is left at each inlet, ${unitSymbol('pressure', system)}, smallest margin first`,
    '',
    ...tableLines(
      [
        { title: 'Fixture', holds: 'words' },
        { title: 'Inlet', holds: 'words' },
        { title: 'Static', holds: 'figures' },
        { title: 'Left', holds: 'figures' },
        { title: 'Need', holds: 'figures' },
        { title: 'Margin', holds: 'figures' },
        { title: '', holds: 'words' },
      ],
      shown.map((result) => [
        result.inlet.fixture.name,
        inletName(result),
        pressure(result.staticPressure),
        pressure(result.residual),
        pressure(result.inlet.requiredPressure),
        pressure(result.margin),
        result.margin < 0 ? 'SHORT' : '',
      ]),
    ),
    ...(left === 0 ? [] : [`and ${left} more with more to spare; --all shows them`]),
  ];
}
