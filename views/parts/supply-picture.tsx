import type { Supply } from '../../engine/job/job.ts';
import type { Pictures } from '../pictures.ts';
import { figure, figuresApart, figureWithUnit, signedPressure, unitSymbol } from '../text/figure.ts';
import { endWords } from '../text/loss-step.ts';
import { SupplyPlot } from './supply-plot.tsx';

/** The supply's pressure against flow, with the demand, what the service takes, and what is left at the worst fixture. */
export function SupplyPicture({ pictures }: { readonly pictures: Pictures }): JSX.Element {
  const { job, supply, report } = pictures;
  const summary = supplySummary(pictures);
  const reach = supply.points.at(-1)?.flow ?? 0;
  const marks = ownMarks(report.network.supply).filter(({ flow }) => flow <= reach);
  return (
    <>
      <p safe>{summary}</p>
      <figure class="stairs read-off" data-read-off="supply-table">
        <SupplyPlot title={summary} curve={supply} system={job.units} marks={marks} />
        <figcaption>
          The upper line is the supply at its daily low. The dashed line is what the service leaves of it:
          pipe, fittings, height and meter. The upright line is the demand.
        </figcaption>
      </figure>
      <SupplyTable pictures={pictures} />
    </>
  );
}

/** Flows that the supply itself is known at. */
function ownMarks(supply: Supply): { flow: number; label: string }[] {
  switch (supply.kind) {
    case 'static':
      return [];
    case 'flow-test':
      return [{ flow: supply.flow.si, label: 'flow test' }];
    case 'well':
      return supply.pumpFlow === undefined ? [] : [{ flow: supply.pumpFlow.si, label: 'pump' }];
  }
}

function supplySummary({ job, report, supply }: Pictures): string {
  const { units } = job;
  const { demand } = supply;
  const read = (pressure: number) => figureWithUnit(pressure, 'pressure', units);
  const { worst } = report;
  const left =
    worst === undefined
      ? ''
      : leftWords(
          `${worst.inlet.fixture.name}, ${worst.inlet.side}`,
          figuresApart(worst.residual, worst.inlet.requiredPressure, 'pressure', units),
          signedPressure(worst.margin, units),
        );
  return `${supplyWords(report.network.supply)} The demand of ${figureWithUnit(demand.flow, 'flow', units)} meets the supply at ${read(demand.atStreet)}; ${serviceEnd(report.network.runs[supply.service]!)} ${read(demand.behindService)} of it are left.${left}`;
}

function leftWords(name: string, [left, needed]: readonly [string, string], margin: string): string {
  return ` The worst fixture, ${name}, is left ${left}, ${margin} against its need of ${needed}.`;
}

function serviceEnd(run: Pictures['report']['network']['runs'][number]): string {
  const meter = run.end !== undefined && 'device' in run.end && run.end.device === 'meter';
  return meter ? `behind the ${endWords(run)} of run ${run.id}` : `at the end of run ${run.id}, the first,`;
}

function supplyWords(supply: Supply): string {
  switch (supply.kind) {
    case 'static':
      return `The street holds ${supply.low.typed} at its daily low, taken to be the same at any flow.`;
    case 'flow-test':
      return `The test found ${supply.static.typed} at rest and ${supply.residual.typed} at ${supply.flow.typed}; the curve begins at the daily low of ${(supply.low ?? supply.static).typed}.`;
    case 'well':
      return `The well’s pump cuts in at ${supply.cutIn.typed}, which is what the tank is taken to hold at any flow${supply.pumpFlow === undefined ? '' : `; what is drawn over the pump’s ${supply.pumpFlow.typed} empties the tank`}.`;
  }
}

function SupplyTable({ pictures }: { readonly pictures: Pictures }): JSX.Element {
  const { job, supply } = pictures;
  const { units } = job;
  const rows = [...supply.points, supply.demand].sort((one, other) => one.flow - other.flow);
  const heads = [
    `Flow, ${unitSymbol('flow', units)}`,
    `At the street, ${unitSymbol('pressure', units)}`,
    `Behind the service, ${unitSymbol('pressure', units)}`,
  ];
  return (
    <details class="ledger" id="supply-table">
      <summary id="supply-table:summary">The same as a table</summary>
      <section class="scroll" tabindex="0" aria-label="Table of the supply curve">
        <table class="curves">
          <thead>
            <tr>
              {heads.map((head) => (
                <th scope="col" class="numeric" safe>
                  {head}
                </th>
              ))}
              <th scope="col">What</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr class={row === supply.demand ? 'total' : undefined}>
                <th scope="row" class="numeric" safe>
                  {figure(row.flow, 'flow', units)}
                </th>
                <td class="numeric" safe>
                  {figure(row.atStreet, 'pressure', units)}
                </td>
                <td class="numeric" safe>
                  {figure(row.behindService, 'pressure', units)}
                </td>
                <td>{row === supply.demand ? 'the demand' : ''}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}
