import { toSI } from '../../tables/units/definitions.ts';
import type { SizingFound, SizingView } from '../sizing.ts';
import { figureWithUnit } from '../text/figure.ts';
import { money } from '../text/money.ts';
import { type CostLine, roundPressures, stepsFrom } from './cost-curves.ts';
import { CostPlot } from './cost-plot.tsx';
import type { Span } from './plot-scale.ts';

/** Farther from the supply a plot would only show how steep the end of the curve is. */
const reach = toSI(10, 'psi');
const room = toSI(2, 'psi');

/** Least cost against pressure at the street, as a picture and as a table. */
export function StreetPlot({ view, found }: { view: SizingView; found: SizingFound }): JSX.Element {
  const { curve, available } = found;
  const { units } = view.job;
  const { currency } = view.book;
  const cheapest = curve[0];
  const least = curve.at(-1);
  if (cheapest === undefined || least === undefined) {
    return <p>No pressure at the street within reach would do, so there is no curve.</p>;
  }
  const span = streetSpan(available, least.need, cheapest.need);
  const line: CostLine = {
    letter: '',
    name: 'least cost',
    strong: true,
    corners: stepsFrom(curve, Math.max(span.most, cheapest.need)),
    drawn: undefined,
  };
  const now = costFrom(curve, available);
  return (
    <>
      <figure class="stairs">
        <CostPlot
          id="street-plot"
          title={`Least cost of pipe and fittings against pressure at the street: ${money(least.cents, currency)} at ${figureWithUnit(least.need, 'pressure', units)} and nothing below it, down to ${money(cheapest.cents, currency)} from ${figureWithUnit(cheapest.need, 'pressure', units)} on. The supply gives ${figureWithUnit(available, 'pressure', units)}${now === undefined ? ', where nothing fits' : `, where it is ${money(now, currency)}`}.`}
          pressureLabel="pressure at the street under demand"
          system={units}
          currency={currency}
          span={span}
          lines={[line]}
          marks={[{ pressure: available, label: `supply ${figureWithUnit(available, 'pressure', units)}` }]}
        />
        <figcaption safe>
          {`Below ${figureWithUnit(least.need, 'pressure', units)} at the street nothing fits; from ${figureWithUnit(cheapest.need, 'pressure', units)} on more pressure saves nothing: there velocity and least sizes decide.`}
        </figcaption>
      </figure>
      <details class="ledger" id="street-table">
        <summary id="street-table:summary">The same as a table</summary>
        <div class="scroll">
          <table class="curves">
            <thead>
              <tr>
                <th scope="col">At the street</th>
                <th scope="col" class="numeric">
                  Least cost
                </th>
              </tr>
            </thead>
            <tbody>
              {[...roundPressures(span, units, 20), available]
                .sort((one, other) => one - other)
                .map((pressure) => {
                  const cents = costFrom(curve, pressure);
                  return (
                    <tr class={pressure === available ? 'total' : undefined}>
                      <th scope="row" safe>
                        {`${figureWithUnit(pressure, 'pressure', units)}${pressure === available ? ', the supply' : ''}`}
                      </th>
                      <td class="numeric" safe>
                        {cents === undefined ? 'nothing fits' : money(cents, currency)}
                      </td>
                    </tr>
                  );
                })}
            </tbody>
          </table>
        </div>
      </details>
    </>
  );
}

/** Pressures around the supply's, as far as more or less of it changes the least cost, and no farther than is of use. */
function streetSpan(available: number, fits: number, enough: number): Span {
  const least = Math.min(available, Math.max(fits, available - reach)) - room;
  const most = Math.min(Math.max(available, enough), Math.max(available, fits) + reach) + room;
  return { least, most };
}

/** Least cost with `pressure` at the street, cents. */
function costFrom(curve: SizingFound['curve'], pressure: number): number | undefined {
  return curve.find(({ need }) => need <= pressure)?.cents;
}
