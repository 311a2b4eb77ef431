import type { Comparison, SchemeColumn } from '../schemes.ts';
import { figureWithUnit, signedPressure } from '../text/figure.ts';
import { money } from '../text/money.ts';
import { type CostLine, leastCostAt, roundPressures, shownSpan, stepsUpTo } from './cost-curves.ts';
import { CostPlot } from './cost-plot.tsx';
import type { Span } from './plot-scale.ts';

/** Cost against spare pressure: a point for each scheme as drawn, and its least-cost curve; the table says the same. */
export function SparePlot({ comparison }: { comparison: Comparison }): JSX.Element {
  const { columns, job, book } = comparison;
  const plotted = columns.filter(({ cost }) => cost.curve.length > 0 || cost.drawn !== undefined);
  if (plotted.length === 0) return <Whys columns={columns} />;
  const span = shownSpan(
    plotted.flatMap(({ cost }) => (cost.drawn === undefined ? [] : [cost.drawn.spare])),
    plotted.flatMap(({ cost }) => cost.curve.slice(0, 1).map(({ spare }) => spare)),
    plotted.flatMap(({ cost }) => cost.curve.slice(-1).map(({ spare }) => spare)),
  );
  const lines = plotted.map(
    ({ letter, compared, cost }): CostLine => ({
      letter,
      name: compared.name,
      strong: compared.id === job.chosen,
      corners: stepsUpTo(cost.curve, span.least),
      drawn: cost.drawn && { pressure: cost.drawn.spare, cents: cost.drawn.cents },
    }),
  );
  return (
    <>
      <figure class="stairs">
        <CostPlot
          id="spare-plot"
          title={`Cost against spare pressure. As drawn: ${plotted.map((column) => drawnText(column, comparison)).join('; ')}. The table below holds the curves.`}
          pressureLabel="spare pressure at the street"
          system={job.units}
          currency={book.currency}
          span={span}
          lines={lines}
          marks={[{ pressure: 0, label: 'nobody short' }]}
        />
        <figcaption>
          A letter in a ring is a scheme as drawn. The stepped line with the same letter is the least that its
          pipe, fittings and devices can cost while so much pressure is to spare: what the street could lose
          before the worst fixture is short. The cost axis does not begin at nothing.
          {comparison.reduced
            ? ' In front of a reducing valve that holds back, that is more than the margin at the fixture.'
            : ''}
        </figcaption>
      </figure>
      <Whys columns={columns} />
      <SpareTable comparison={comparison} columns={plotted} span={span} />
    </>
  );
}

function drawnText({ letter, compared, cost: { drawn } }: SchemeColumn, { job, book }: Comparison): string {
  const name = `${letter}, ${compared.name}`;
  if (drawn === undefined) return `${name}, not on the sheet`;
  return `${name}, ${money(drawn.cents, book.currency)} with ${signedPressure(drawn.spare, job.units)} to spare`;
}

function Whys({ columns }: { columns: readonly SchemeColumn[] }): JSX.Element {
  const whys = columns.filter(({ cost }) => cost.why !== '');
  const unplaced = columns.filter(({ cost }) => cost.why === '' && cost.drawn === undefined);
  return (
    <>
      {whys.map(({ letter, cost }) => (
        <p class="hint" safe>{`${letter}: ${cost.why}`}</p>
      ))}
      {unplaced.map(({ letter }) => (
        <p class="hint" safe>
          {`${letter}, as drawn: no pressure at the street would do, since a reducing valve holds back too much.`}
        </p>
      ))}
    </>
  );
}

function SpareTable(props: {
  readonly comparison: Comparison;
  readonly columns: readonly SchemeColumn[];
  readonly span: Span;
}): JSX.Element {
  const { columns, span } = props;
  const { job, book } = props.comparison;
  return (
    <details class="ledger" id="spare-table">
      <summary id="spare-table:summary">The same as a table</summary>
      <div class="scroll">
        <table class="curves">
          <thead>
            <tr>
              <th scope="col">To spare</th>
              {columns.map(({ letter, compared }) => (
                <th scope="col" class="numeric" safe>{`${letter} ${compared.name}`}</th>
              ))}
            </tr>
          </thead>
          <tbody>
            <tr class="total">
              <th scope="row">as drawn</th>
              {columns.map(({ cost: { drawn } }) => (
                <td class="numeric" safe>
                  {drawn === undefined
                    ? '–'
                    : `${money(drawn.cents, book.currency)} at ${signedPressure(drawn.spare, job.units)}`}
                </td>
              ))}
            </tr>
            {roundPressures(span, job.units, 16).map((spare) => (
              <tr>
                <th scope="row" safe>{`at least ${figureWithUnit(spare, 'pressure', job.units)}`}</th>
                {columns.map(({ cost }) => {
                  const cents = leastCostAt(cost.curve, spare);
                  return (
                    <td class="numeric" safe>
                      {cents === undefined ? 'nothing fits' : money(cents, book.currency)}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
