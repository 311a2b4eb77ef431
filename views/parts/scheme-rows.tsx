import type { Fixture } from '../../engine/job/job.ts';
import { fittings, materials } from '../../tables/pipe/names.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { Verdict } from '../components/verdict.tsx';
import type { Comparison, SchemeColumn } from '../schemes.ts';
import { figureWithUnit, fixed, signedPressure } from '../text/figure.ts';
import { money } from '../text/money.ts';
import { leastCostAt } from './cost-curves.ts';

/** One figure of every scheme. */
export interface SchemeRow {
  readonly label: string;
  readonly cell: (column: SchemeColumn) => JSX.Element;
  readonly strong?: boolean;
}

/** Figures of one kind; those that `fold` are folded away on a phone. */
export interface RowGroup {
  readonly title: string;
  readonly fold?: boolean;
  readonly rows: readonly SchemeRow[];
}

const none = '–';

function text(words: string): JSX.Element {
  return <span safe>{words}</span>;
}

/** Everything that tells schemes apart, in the order in which it is asked for. */
export function schemeRows({ job, book, columns }: Comparison): readonly RowGroup[] {
  const { units } = job;
  const { currency } = book;
  return [
    {
      title: 'Pressure',
      rows: [
        {
          label: 'Answer',
          cell: ({ compared: { report } }) =>
            report.worst === undefined ? (
              text(none)
            ) : (
              <Verdict passes={report.passes} short={report.worst.margin < 0} />
            ),
        },
        {
          label: 'Left at the worst fixture',
          strong: true,
          cell: ({ compared: { report } }) =>
            text(
              report.worst === undefined ? none : figureWithUnit(report.worst.residual, 'pressure', units),
            ),
        },
        {
          label: 'Over what it needs',
          cell: ({ compared: { report } }) =>
            text(report.worst === undefined ? none : signedPressure(report.worst.margin, units)),
        },
        { label: 'Worst fixture', cell: ({ compared: { report } }) => text(worstName(report.worst)) },
        { label: 'Findings', cell: ({ compared }) => text(findingCounts(compared.report.findings)) },
      ],
    },
    {
      title: 'Price',
      rows: [
        {
          label: 'Total',
          strong: true,
          cell: ({ compared: { price }, missing }) =>
            price.total === undefined ? (
              <span>
                Not known: the price book lacks <span safe>{missing.join('; ')}</span>
              </span>
            ) : (
              text(money(price.total.money.times(100).toNumber(), currency))
            ),
        },
        ...(['pipe', 'fittings', 'devices'] as const).map(
          (part): SchemeRow => ({
            label: { pipe: 'Pipe', fittings: 'Fittings', devices: 'Devices' }[part],
            cell: ({ compared: { price } }) =>
              text(money(price.priced[part].times(100).toNumber(), currency)),
          }),
        ),
        {
          label: 'Labor',
          cell: ({ compared: { price } }) => text(`${fixed(price.priced.hours, 1)} h`),
        },
        {
          label: 'At least cost, nobody short',
          cell: ({ cost }) => {
            const least = leastCostAt(cost.curve, 0);
            return text(
              least !== undefined ? money(least, currency) : cost.why === '' ? 'no sizes fit' : none,
            );
          },
        },
      ],
    },
    {
      title: 'Hot water',
      rows: [
        {
          label: 'Longest wait',
          strong: true,
          cell: ({ compared: { longestWait } }) =>
            text(longestWait === undefined ? none : `${fixed(longestWait.seconds, 0)} s`),
        },
        {
          label: 'Wasted at that draw',
          cell: ({ compared: { longestWait } }) =>
            text(longestWait === undefined ? none : figureWithUnit(longestWait.volume, 'volume', units)),
        },
        {
          label: 'Waits longest',
          cell: ({ compared: { longestWait } }) =>
            text(longestWait === undefined ? none : fixtureName(longestWait.inlet)),
        },
      ],
    },
    { title: 'Pipe, developed length', fold: true, rows: pipeRows(columns, units) },
    { title: 'Fittings, a tee in its two legs', fold: true, rows: fittingRows(columns) },
  ];
}

/** Name and side of a worst inlet. */
export function worstName(worst: SchemeColumn['compared']['report']['worst']): string {
  return worst === undefined ? 'serves no fixture' : `${fixtureName(worst.inlet)}, ${worst.inlet.side}`;
}

function fixtureName({ fixture }: { readonly fixture: Fixture }): string {
  return `${fixture.name} (${fixture.id})`;
}

/** `2 broken rules, 1 warning, 3 notes`; kinds of which there are none are left out. */
export function findingCounts(findings: SchemeColumn['compared']['report']['findings']): string {
  const words = { error: 'broken rule', warning: 'warning', note: 'note' } as const;
  const parts = (['error', 'warning', 'note'] as const).flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return count === 0 ? [] : [`${count} ${words[severity]}${count === 1 ? '' : 's'}`];
  });
  return parts.length === 0 ? 'none' : parts.join(', ');
}

function pipeRows(columns: readonly SchemeColumn[], units: Comparison['job']['units']): SchemeRow[] {
  const sizes = new Map<string, SchemeRow>();
  for (const { material, size } of columns.flatMap(({ compared }) => compared.price.feet)) {
    const label = `${size} ${materials[material]}`;
    const feetIn = ({ compared: { price } }: SchemeColumn) =>
      price.feet.find((one) => one.material === material && one.size === size)?.feet.toNumber();
    sizes.set(label, {
      label,
      cell: (column) => {
        const feet = feetIn(column);
        return text(feet === undefined ? none : figureWithUnit(toSI(feet, 'ft'), 'length', units));
      },
    });
  }
  const all: SchemeRow = {
    label: 'All pipe',
    strong: true,
    cell: ({ compared: { price } }) => {
      const feet = price.feet.reduce((sum, one) => sum + one.feet.toNumber(), 0);
      return text(figureWithUnit(toSI(feet, 'ft'), 'length', units));
    },
  };
  return [all, ...sizes.values()];
}

function fittingRows(columns: readonly SchemeColumn[]): SchemeRow[] {
  const counted = (column: SchemeColumn, kind?: string) =>
    column.compared.price.fittings.reduce(
      (sum, one) => sum + (kind === undefined || one.kind === kind ? one.count : 0),
      0,
    );
  const used = new Set(columns.flatMap(({ compared }) => compared.price.fittings.map(({ kind }) => kind)));
  return [
    { label: 'All fittings', strong: true, cell: (column) => text(String(counted(column))) },
    ...(Object.keys(fittings) as (keyof typeof fittings)[])
      .filter((kind) => used.has(kind))
      .map((kind) => ({
        label: fittings[kind],
        cell: (column: SchemeColumn) => text(String(counted(column, kind))),
      })),
  ];
}
