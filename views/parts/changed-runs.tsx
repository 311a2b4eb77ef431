import type { ChangedRun, SizingView } from '../sizing.ts';
import { signedMoney } from '../text/money.ts';
import { sizingQuery } from './sizing-form.tsx';

/** Runs that the least-cost sizing makes of another pipe; each may be kept as it is drawn. */
export function ChangedRuns(props: {
  readonly view: SizingView;
  readonly changed: readonly ChangedRun[];
}): JSX.Element {
  const { view, changed } = props;
  if (changed.length === 0) return <p>The sizes drawn are those of least cost.</p>;
  return (
    <table class="changed">
      <thead>
        <tr>
          <th scope="col">Run</th>
          <th scope="col">Drawn</th>
          <th scope="col">Least cost</th>
          <th scope="col" class="numeric">
            Costs more
          </th>
          <th scope="col">
            <span class="visually-hidden">Keep</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {changed.map(({ id, before, after, more }) => (
          <tr>
            <th scope="row" safe>
              {id}
            </th>
            <td safe>{before}</td>
            <td>
              <strong safe>{`→ ${after}`}</strong>
            </td>
            <td class="numeric" safe>
              {more === undefined ? '–' : signedMoney(more, view.book.currency)}
            </td>
            <td>
              <a href={`/jobs/${view.id}/sizing?${sizingQuery(view.question, id)}#answer`}>
                Keep<span class="visually-hidden" safe>{` ${id} as drawn`}</span>
              </a>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
