import type { Network } from '../../engine/network/network.ts';
import { attribute } from '../components/attribute.ts';
import type { RiserView } from '../riser.ts';
import { figure, unitSymbol } from '../text/figure.ts';
import { endWords, pipeWords } from '../text/loss-step.ts';
import { runAddress } from './run-address.ts';

/** Runs fed by another that are named; the others are counted. */
const mostNamed = 4;

/** All that a riser says, run by run. */
export function RiserTable({ view }: { readonly view: RiserView }): JSX.Element {
  const { id, report, marked } = view;
  const { network, solution } = report;
  const system = network.job.units;
  const onWorst = new Set(view.worstPath);
  const goesOn = goesOnTo(network);
  return (
    <section class="scroll" tabindex="0" aria-label="Runs of the drawing">
      <table class="riser-runs">
        <thead>
          <tr>
            <th scope="col">Run</th>
            <th scope="col">From</th>
            <th scope="col">To</th>
            <th scope="col">Pipe</th>
            <th scope="col" class="numeric" safe>{`End at, ${unitSymbol('length', system)}`}</th>
            <th scope="col" class="numeric" safe>{`Flow, ${unitSymbol('flow', system)}`}</th>
            <th scope="col" class="numeric" safe>{`Left, ${unitSymbol('pressure', system)}`}</th>
          </tr>
        </thead>
        <tbody>
          {network.runs.map((run, at) => (
            <tr class={at === marked ? 'marked' : undefined}>
              <th scope="row">
                <a href={attribute(runAddress(id, run.id))} safe>
                  {run.id}
                </a>
                <span class="run-kind" safe>
                  {[network.hot[at] === 1 ? 'hot' : 'cold', ...(onWorst.has(at) ? ['worst path'] : [])].join(
                    ', ',
                  )}
                </span>
              </th>
              <td safe>{run.from}</td>
              <td safe>{[endWords(run), goesOn[at]!].filter((words) => words !== '').join('; ')}</td>
              <td safe>{pipeWords(run)}</td>
              <td class="numeric" safe>
                {figure(network.elevation[at]!, 'length', system)}
              </td>
              <td class="numeric" safe>
                {figure(solution.flow[at]!, 'flow', system)}
              </td>
              <td class="numeric" safe>
                {figure(solution.residual[at]!, 'pressure', system)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** The runs that each run feeds, in words. */
function goesOnTo({ runs, parent }: Network): string[] {
  const fed = runs.map((): string[] => []);
  parent.forEach((above, at) => {
    if (above >= 0) fed[above]!.push(runs[at]!.id);
  });
  return fed.map((names) => {
    const over = names.length - mostNamed;
    return over > 1 ? `${names.slice(0, mostNamed).join(', ')} and ${over} more` : names.join(', ');
  });
}
