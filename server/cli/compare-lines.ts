import type { ComparedScheme, Job, PriceBook } from '../../engine/index.ts';
import { materialWords } from '../../engine/job/words.ts';
import { toCents } from '../../engine/takeoff/money.ts';
import { priceName } from '../../engine/takeoff/price-item.ts';
import { show } from '../../tables/units/display.ts';
import { defectText } from '../../views/text/defect-text.ts';
import { unitSymbol } from '../../views/text/figure.ts';
import { inletName } from '../answers/choose-inlet.ts';
import type { Comparison } from '../answers/comparison.ts';
import { countsOf } from '../answers/findings-count.ts';
import { money } from '../words/money-words.ts';
import { feetTotals } from './compare-feet.ts';
import { deferral, labelled } from './job-head.ts';
import { bookLines } from './open-prices.ts';
import { tableLines } from './table-lines.ts';

/** Schemes beside each other in one table; the page is no wider than that. */
const inOneTable = 3;

/** The schemes as tables of at most three: figures down, schemes across. */
export function compareLines({ job, compared, broken, unsized }: Comparison, book: PriceBook): string[] {
  const lines = [
    ...labelled('Job', job.name),
    ...labelled(
      'Schemes',
      unsized === undefined ? 'as drawn' : 'each sized at the least cost for these prices',
    ),
    ...bookLines(book),
  ];
  const rows = rowsOf(compared, job, book);
  for (let from = 0; from < compared.length; from += inOneTable) {
    const block = compared.slice(from, from + inOneTable);
    lines.push(
      '',
      ...tableLines(
        [{ title: '', holds: 'words' }, ...block.map(({ id }) => ({ title: id, holds: 'words' }) as const)],
        rows.map(({ title, cell }) => [title, ...block.map(cell)]),
      ),
    );
  }
  const lacking = compared.flatMap(({ id, price }) =>
    price.missing.map((item) => `${priceName(item)} (${id})`),
  );
  if (lacking.length > 0) lines.push('', ...labelled('No price', lacking.slice(0, 6).join('; ')));
  for (const id of unsized ?? [])
    lines.push(
      '',
      ...labelled('Unsized', `no sizes fit ${id}, so it stands as drawn; hightap size tells why`),
    );
  for (const { id, defects } of broken) {
    lines.push('', ...labelled('Broken', `${id}: ${defectText(defects[0]!, job.units)}`));
  }
  return [...lines, '', ...deferral];
}

interface Row {
  readonly title: string;
  readonly cell: (scheme: ComparedScheme) => string;
}

function rowsOf(compared: readonly ComparedScheme[], job: Job, { currency }: PriceBook): Row[] {
  const { units } = job;
  const worst =
    (tell: (worst: NonNullable<ComparedScheme['report']['worst']>) => string): Row['cell'] =>
    ({ report }) =>
      report.worst === undefined ? '' : tell(report.worst);
  return [
    { title: 'Scheme', cell: ({ name }) => name },
    { title: 'Worst at', cell: worst((one) => inletName(one)) },
    { title: 'Left there', cell: worst(({ residual }) => show(residual, 'pressure', units)) },
    {
      title: 'Margin',
      cell: worst(({ margin }) => `${show(margin, 'pressure', units)}${margin < 0 ? ' SHORT' : ''}`),
    },
    { title: 'Passes', cell: ({ report }) => (report.passes ? 'yes' : 'NO') },
    { title: 'Errors', cell: ({ report }) => `${countsOf(report.findings).error}` },
    { title: 'Warnings', cell: ({ report }) => `${countsOf(report.findings).warning}` },
    { title: 'Notes', cell: ({ report }) => `${countsOf(report.findings).note}` },
    {
      title: `Price, ${currency}`,
      cell: ({ price }) => (price.total === undefined ? 'price missing' : money(toCents(price.total.money))),
    },
    { title: '  pipe', cell: ({ price }) => money(toCents(price.priced.pipe)) },
    { title: '  fittings', cell: ({ price }) => money(toCents(price.priced.fittings)) },
    { title: '  devices', cell: ({ price }) => money(toCents(price.priced.devices)) },
    { title: 'Labor, h', cell: ({ price }) => price.priced.hours.toFixed(1) },
    {
      title: 'Hot wait',
      cell: ({ longestWait: wait }) =>
        wait === undefined ? 'no hot pipe' : `${wait.seconds.toFixed(0)} s at ${wait.inlet.fixture.id}`,
    },
    {
      title: 'Wasted each',
      cell: ({ longestWait: wait }) => (wait === undefined ? '' : show(wait.volume, 'volume', units)),
    },
    {
      title: 'Fittings',
      cell: ({ price }) => `${price.fittings.reduce((sum, { count }) => sum + count, 0)}`,
    },
    ...feetTotals(compared, units).map(
      ({ material, size, lengths }): Row => ({
        title: `${size} ${materialWords[material][0]}, ${unitSymbol('length', units)}`,
        cell: ({ id }) => lengths.get(id) ?? '-',
      }),
    ),
  ];
}
