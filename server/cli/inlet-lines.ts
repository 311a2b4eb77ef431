import type { InletResult, UnitSystem } from '../../engine/index.ts';
import { showParts } from '../../tables/units/display.ts';
import { unitSymbol } from '../../views/text/figure.ts';
import { inletName } from '../answers/choose-inlet.ts';
import { leftAndNeeded } from './short-of.ts';
import { tableLines } from './table-lines.ts';

/** Inlets in the table unless all are asked for. */
export const mostInlets = 20;

/** All inlets as a table, smallest margin first; beyond the first twenty a count unless `all`. */
export function inletLines(inlets: readonly InletResult[], system: UnitSystem, all: boolean): string[] {
  const shown = all ? inlets : inlets.slice(0, mostInlets);
  const more = inlets.length - shown.length;
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
      shown.map((result) => {
        const { left, needed, margin } = leftAndNeeded(result, system);
        return [
          result.inlet.fixture.name,
          inletName(result),
          showParts(result.staticPressure, 'pressure', system).value,
          left,
          needed,
          margin,
          result.margin < 0 ? 'SHORT' : '',
        ];
      }),
    ),
    ...(more === 0 ? [] : [`and ${more} more with more to spare; --all shows them`]),
  ];
}
