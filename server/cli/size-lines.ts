import type {
  HandMethodId,
  InletResult,
  PriceBook,
  SizingStudy,
  StudiedSizes,
  UnitSystem,
} from '../../engine/index.ts';
import { materialWords } from '../../engine/job/words.ts';
import { toCents } from '../../engine/takeoff/money.ts';
import { priceName } from '../../engine/takeoff/price-item.ts';
import { show, showParts } from '../../tables/units/display.ts';
import { unitSymbol } from '../../views/text/figure.ts';
import { inletName } from '../answers/choose-inlet.ts';
import { countWords } from '../answers/findings-count.ts';
import { money, moneyMore } from '../words/money-words.ts';
import { deferral, demandLines, headLines, labelled } from './job-head.ts';
import { bookLines } from './open-prices.ts';
import { psiLines } from './psi-lines.ts';
import { leftAndNeeded } from './short-of.ts';
import { type Column, tableLines } from './table-lines.ts';
import { unsizedLines } from './unsized-lines.ts';

/** Missing prices that are told one by one. */
const mostMissing = 6;

/** Names of the hand methods, and how far each can be relied upon. */
export const methodNames: Record<HandMethodId, string> = {
  velocity: 'velocity limits alone (common practice)',
  'uniform-friction': 'uniform friction, farthest inlet',
  'segment-free-table': 'IPC table E201.1 (from memory)',
};

/** The sizing as text: what it costs, each run that changes, the hand methods, the curve, what a psi costs. */
export function sizeLines(study: SizingStudy, book: PriceBook, all: boolean): string[] {
  const { drawn, least } = study;
  const { units } = drawn.report.network.job;
  return [
    ...headLines(drawn.report),
    ...bookLines(book),
    ...demandLines(drawn.report),
    ...labelled('Drawn', sizesWords(drawn, book)),
    ...(least === undefined ? unsizedLines(study, book) : leastLines(study, least, book)),
    ...missingLines(study),
    ...(least === undefined ? [] : ['', ...changedLines(study, least, all)]),
    ...methodLines(study, units),
    ...curveLines(study, book, units),
    ...psiLines(study, book),
    '',
    ...deferral,
  ];
}

function leastLines(study: SizingStudy, least: StudiedSizes, book: PriceBook): string[] {
  const { drawn, result } = study;
  const before = drawn.runs?.cost;
  const apart = before === undefined ? 0 : least.runs!.cost - before;
  const against =
    before === undefined
      ? ''
      : apart === 0
        ? 'as much as what is drawn'
        : `${money(Math.abs(apart))} ${book.currency} ${apart < 0 ? 'less' : 'more'} than what is drawn (${percent(apart, before)})`;
  const { units } = drawn.report.network.job;
  const needs = result.ok ? `; it needs ${show(result.sized.need, 'pressure', units)} at the street` : '';
  return [
    ...labelled('Least', sizesWords(least, book)),
    ...labelled('', `proved least for these prices${against === '' ? '' : `: ${against}`}${needs}`),
  ];
}

function percent(apart: number, of: number): string {
  return `${apart > 0 ? '+' : ''}${((100 * apart) / of).toFixed(1)} %`;
}

/** `1,234.56 USD pipe and fittings, 3,000.00 with devices; Shower (x.hot) is worst with 3.4 psi to spare`. */
function sizesWords({ runs, price, report }: StudiedSizes, { currency }: PriceBook): string {
  const pipe =
    runs === undefined ? 'no price for all of it' : `${money(runs.cost)} ${currency} pipe and fittings`;
  const whole = price.total === undefined ? '' : `, ${money(toCents(price.total.money))} with devices`;
  const hours = runs === undefined ? '' : `, ${runs.hours.toFixed(1)} h of labor on the pipe`;
  const { worst, findings, network } = report;
  const left =
    worst === undefined
      ? ''
      : `; ${worst.inlet.fixture.name} (${inletName(worst)}) is worst, ${
          worst.margin < 0 ? 'SHORT by' : 'with'
        } ${marginOf(worst, network.job.units)} ${unitSymbol('pressure', network.job.units)}${worst.margin < 0 ? '' : ' to spare'}`;
  return `${pipe}${whole}${hours}${left}; findings: ${countWords(findings)}`;
}

const marginOf = (worst: InletResult, units: UnitSystem): string =>
  leftAndNeeded(worst, units).margin.replace('-', '');

function missingLines({ missing }: SizingStudy): string[] {
  if (missing.length === 0) return [];
  const names = missing.slice(0, mostMissing).map(priceName).join('; ');
  const over = missing.length - mostMissing;
  return labelled(
    'No price',
    `${names}${over > 0 ? `; and ${over} more` : ''}. What has no price is no choice here, and never counts as nothing.`,
  );
}

function changedLines({ drawn, least }: SizingStudy, now: StudiedSizes, all: boolean): string[] {
  const { network } = drawn.report;
  const after = new Map(now.scheme.runs.map((run) => [run.id, run]));
  const pipeOf = (run: { size: string; material: keyof typeof materialWords }): string =>
    `${run.size} ${materialWords[run.material][0]}`;
  const rows = network.runs
    .map((run, at) => ({ run, at, to: after.get(run.id)! }))
    .filter(({ run, to }) => all || pipeOf(run) !== pipeOf(to))
    .map(({ run, at, to }) => [
      run.id,
      showParts(network.length[at]!, 'length', network.job.units).value,
      showParts(drawn.report.solution.flow[at]!, 'flow', network.job.units).value,
      pipeOf(run),
      pipeOf(to),
      showParts(least!.report.solution.velocity[at]!, 'velocity', network.job.units).value,
    ]);
  if (rows.length === 0) return ['Every run is as it would be at the least cost.'];
  const { units } = network.job;
  return [
    all ? 'Every run' : `${rows.length} of ${network.size} runs change; --all shows the others`,
    '',
    ...tableLines(
      [
        { title: 'Run', holds: 'words' },
        { title: unitSymbol('length', units), holds: 'figures' },
        { title: unitSymbol('flow', units), holds: 'figures' },
        { title: 'Drawn', holds: 'words' },
        { title: 'Least cost', holds: 'words' },
        { title: unitSymbol('velocity', units), holds: 'figures' },
      ],
      rows,
    ),
  ];
}

const figures = (title: string): Column => ({ title, holds: 'figures' });

function methodLines({ drawn, least, methods }: SizingStudy, units: UnitSystem): string[] {
  if (methods.length === 0) return [];
  const base = least?.runs?.cost;
  const row = (name: string, { runs, report }: StudiedSizes, counts: readonly string[]): string[] => [
    name,
    runs === undefined ? '' : money(runs.cost),
    runs === undefined || base === undefined ? '' : moneyMore(runs.cost - base),
    report.worst === undefined ? '' : leftAndNeeded(report.worst, units).margin,
    ...counts,
    report.worst !== undefined && report.worst.margin < 0 ? 'SHORT' : '',
  ];
  return [
    '',
    'Beside it what is drawn and what the hand methods choose, pipe and fittings',
    '',
    ...tableLines(
      [
        { title: 'Sizes', holds: 'words' },
        figures('Cost'),
        figures('Over least'),
        figures(`Margin ${unitSymbol('pressure', units)}`),
        figures('Larger'),
        figures('Smaller'),
        { title: '', holds: 'words' },
      ],
      [
        ...(least === undefined ? [] : [row('least cost', least, ['', ''])]),
        row('drawn', drawn, ['', '']),
        ...methods.map((one) =>
          row(
            methodNames[one.method],
            one,
            least === undefined ? ['', ''] : [`${one.larger}`, `${one.smaller}`],
          ),
        ),
      ],
    ),
  ];
}

function curveLines(
  { drawn, curve, least }: SizingStudy,
  { currency }: PriceBook,
  units: UnitSystem,
): string[] {
  const own = drawn.report.solution.supplyPressure;
  const base = least?.runs?.cost;
  return [
    '',
    'Least cost by what the street gives, pipe and fittings',
    '',
    ...tableLines(
      [
        figures(`Street ${unitSymbol('pressure', units)}`),
        figures(`Cost ${currency}`),
        figures('Against now'),
        { title: '', holds: 'words' },
      ],
      curve.map(({ street, cost }) => [
        showParts(street, 'pressure', units).value,
        cost === undefined ? 'nothing fits' : money(cost),
        cost === undefined || base === undefined ? '' : moneyMore(cost - base),
        street === own ? 'this supply' : '',
      ]),
    ),
  ];
}
