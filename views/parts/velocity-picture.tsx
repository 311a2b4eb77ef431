import type { RunVelocity } from '../../engine/checks/run-velocities.ts';
import type { Pictures } from '../pictures.ts';
import { figure, figuresApart, unitSymbol } from '../text/figure.ts';
import { pipeWords } from '../text/loss-step.ts';
import { VelocityBars } from './velocity-bars.tsx';

/** More bars than these are no picture; the table has them all. */
const mostBars = 40;

/** Runs over their limit that the summary names; the others are counted. */
const mostNamed = 12;

/** Velocity in every run against the limit of its material and temperature, as bars and as a table. */
export function VelocityPicture({ pictures }: { readonly pictures: Pictures }): JSX.Element {
  const { job, velocities, report } = pictures;
  const { runs } = report.network;
  const bars = velocities.slice(0, mostBars);
  const summary = velocitySummary(pictures);
  return (
    <>
      <p safe>{summary}</p>
      <figure class="stairs">
        <VelocityBars title={summary} bars={bars} runs={runs} system={job.units} />
        <figcaption safe>
          {`Filled bars are cold water, hatched ones hot; the upright stroke is the run’s own limit. Runs stand in order of velocity over limit.${bars.length < velocities.length ? ` These are the first ${bars.length} of ${velocities.length}; the table has all.` : ''}`}
        </figcaption>
      </figure>
      <VelocityTable pictures={pictures} />
    </>
  );
}

function velocitySummary({ job, velocities, report }: Pictures): string {
  const { runs } = report.network;
  const tell = ({ run, hot, velocity, limit }: RunVelocity): string => {
    const [found, most] = figuresApart(velocity, limit, 'velocity', job.units);
    return `${runs[run]!.id}, ${hot ? 'hot' : 'cold'}, ${found} where ${most} is the limit`;
  };
  const over = velocities.filter((one) => one.over);
  const [nearest] = velocities;
  if (nearest === undefined) return 'No run carries water.';
  if (over.length === 0) {
    return `None of ${velocities.length} runs is over its limit. Nearest to it is ${tell(nearest)}.`;
  }
  const more = over.length - mostNamed;
  const named = over.slice(0, mostNamed).map(tell).join('; ');
  return `${over.length} of ${velocities.length} runs ${over.length === 1 ? 'is' : 'are'} over the limit: ${named}${more > 0 ? `; and ${more} more` : ''}.`;
}

function VelocityTable({ pictures }: { readonly pictures: Pictures }): JSX.Element {
  const { job, velocities, report } = pictures;
  const { runs } = report.network;
  const { units } = job;
  return (
    <details class="ledger" id="velocity-table">
      <summary id="velocity-table:summary">The same as a table</summary>
      <section class="scroll" tabindex="0" aria-label="Table of velocities">
        <table class="curves">
          <thead>
            <tr>
              <th scope="col">Run</th>
              <th scope="col">Pipe</th>
              <th scope="col">Water</th>
              <th scope="col" class="numeric" safe>{`Flow, ${unitSymbol('flow', units)}`}</th>
              <th scope="col" class="numeric" safe>{`Velocity, ${unitSymbol('velocity', units)}`}</th>
              <th scope="col" class="numeric" safe>{`Limit, ${unitSymbol('velocity', units)}`}</th>
              <th scope="col">Over</th>
            </tr>
          </thead>
          <tbody>
            {velocities.map(({ run, hot, velocity, limit, over }) => (
              <tr>
                <th scope="row" safe>
                  {runs[run]!.id}
                </th>
                <td safe>{pipeWords(runs[run]!)}</td>
                <td>{hot ? 'hot' : 'cold'}</td>
                <td class="numeric" safe>
                  {figure(report.solution.flow[run]!, 'flow', units)}
                </td>
                <td class="numeric" safe>
                  {figure(velocity, 'velocity', units)}
                </td>
                <td class="numeric" safe>
                  {figure(limit, 'velocity', units)}
                </td>
                <td>{over ? <strong>OVER</strong> : ''}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}
