import { type PriceBook, pathTo, type SizingStudy } from '../../engine/index.ts';
import { fromSI } from '../../tables/units/definitions.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { unitSymbol } from '../../views/text/figure.ts';
import { inletName } from '../answers/choose-inlet.ts';
import { money, moneyMore } from '../words/money-words.ts';
import { changeWords } from './change-words.ts';
import { type Column, tableLines } from './table-lines.ts';
import { wrap } from './wrap.ts';

/** Single changes that are told one by one. */
const mostChanges = 6;

const figures = (title: string): Column => ({ title, holds: 'figures' });

/** What one more psi at the worst inlet costs, by single changes. */
export function psiLines({ changes, least, drawn }: SizingStudy, { currency }: PriceBook): string[] {
  const { network, worst } = (least ?? drawn).report;
  if (worst === undefined || changes.length === 0) return [];
  const { units } = network.job;
  const symbol = unitSymbol('pressure', units);
  const { unit } = displayUnits[units].pressure;
  const path = pathTo(network, worst.inlet.run).length;
  return [
    '',
    ...wrap(
      `What more pressure at ${worst.inlet.fixture.name} (${inletName(worst)}) costs: single changes on its path of ${path} runs, the most for the money first`,
    ),
    '',
    ...tableLines(
      [
        { title: 'Change', holds: 'words' },
        figures(`Gain ${symbol}`),
        figures(`Cost ${currency}`),
        figures(`${currency} for 1 ${symbol}`),
      ],
      changes
        .slice(0, mostChanges)
        .map(({ change, gain, cents }) => [
          changeWords(change),
          fromSI(gain, unit).toFixed(displayUnits[units].pressure.decimals + 1),
          moneyMore(cents),
          money(Math.round(cents / fromSI(gain, unit))),
        ]),
    ),
  ];
}
