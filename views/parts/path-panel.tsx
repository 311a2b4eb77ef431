import { FigureLink } from '../components/figure-link.tsx';
import { figure, figuresApart, signedPressure, unitSymbol } from '../text/figure.ts';
import { lossWords } from '../text/loss-step.ts';
import { pathKey, type ShownPath, type Workbench } from '../workbench.ts';
import { Staircase } from './staircase.tsx';
import { type Stair, stairsOf } from './stairs.ts';

export const pathPanelId = 'path';

/** The staircase of one path with its ledger; the worst fixture's unless another is chosen. */
export function PathPanel({ bench }: { bench: Workbench }): JSX.Element {
  const { path, report, job } = bench;
  if (path === undefined) {
    return (
      <div id={pathPanelId}>
        <p>The staircase appears as soon as a run ends at a fixture.</p>
      </div>
    );
  }
  const stairs = stairsOf(path.lines, report.network.runs);
  const start = report.solution.supplyPressure;
  const [left, needed] = figuresApart(path.residual, path.required, 'pressure', job.units);
  return (
    <div id={pathPanelId}>
      <form
        class="picker"
        method="get"
        action={`/jobs/${bench.id}`}
        hx-get={`/jobs/${bench.id}/path`}
        hx-trigger="change, submit"
        hx-swap="none"
        id="picker"
      >
        <label for="picker-path">Path to</label>
        <select id="picker-path" name="path">
          {report.inlets.map(({ inlet, margin }) => {
            const key = pathKey(inlet.fixture.id, inlet.side);
            return (
              <option value={key} selected={key === pathKey(path.fixture.id, path.side)} safe>
                {`${inlet.fixture.name}, ${inlet.side} (${signedPressure(margin, job.units)})`}
              </option>
            );
          })}
        </select>
        <button type="submit" class="save">
          Show
        </button>
      </form>
      <figure class="stairs">
        <Staircase path={path} stairs={stairs} start={start} system={job.units} shape="wide" />
        <Staircase path={path} stairs={stairs} start={start} system={job.units} shape="narrow" />
        <figcaption safe>
          {`${path.fixture.name}, ${path.side}: ${left} left, ${signedPressure(path.margin, job.units)} against its need of ${needed}. Each step is numbered as in the ledger.`}
        </figcaption>
      </figure>
      <Ledger bench={bench} path={path} stairs={stairs} />
    </div>
  );
}

const quantityOf = {
  pipe: 'pipe-loss',
  fittings: 'fitting-loss',
  device: 'device-loss',
  elevation: 'elevation-loss',
} as const;

function Ledger({
  bench,
  path,
  stairs,
}: {
  bench: Workbench;
  path: ShownPath;
  stairs: readonly Stair[];
}): JSX.Element {
  const { report, job } = bench;
  const stepOf = new Map(
    stairs.flatMap((stair, index) => stair.lines.map((line) => [line, index + 1] as const)),
  );
  const unit = unitSymbol('pressure', job.units);
  return (
    <details class="ledger" id="ledger">
      <summary id="ledger:summary">Ledger: the same path as a table</summary>
      <section class="scroll" tabindex="0" aria-label="Ledger">
        <table>
          <thead>
            <tr>
              <th scope="col">Step</th>
              <th scope="col">Run</th>
              <th scope="col">What</th>
              <th scope="col" class="numeric" safe>{`Loss, ${unit}`}</th>
              <th scope="col" class="numeric" safe>{`Left, ${unit}`}</th>
            </tr>
          </thead>
          <tbody>
            <tr>
              <td></td>
              <td></td>
              <th scope="row">at the street, under demand</th>
              <td></td>
              <td class="numeric" safe>
                {figure(report.solution.supplyPressure, 'pressure', job.units)}
              </td>
            </tr>
            {path.lines.map((line, index) => {
              const run = report.network.runs[line.run]!;
              return (
                <tr>
                  <td safe>{String(stepOf.get(index) ?? '')}</td>
                  <td safe>{run.id}</td>
                  <th scope="row" safe>
                    {lossWords(run, line.what, line.loss)}
                  </th>
                  <td class="numeric">
                    <FigureLink
                      id={`ledger:${run.id}:${line.what}`}
                      job={bench.id}
                      of={run.id}
                      quantity={quantityOf[line.what]}
                      text={figure(line.loss, 'pressure', job.units)}
                      label={`this loss of run ${run.id}`}
                    />
                  </td>
                  <td class="numeric" safe>
                    {figure(line.after, 'pressure', job.units)}
                  </td>
                </tr>
              );
            })}
            <tr class="total">
              <td></td>
              <td></td>
              <th scope="row" safe>{`needed at ${path.fixture.name}, ${path.side}`}</th>
              <td></td>
              <td class="numeric">
                <span safe>{figure(path.required, 'pressure', job.units)}</span>
              </td>
            </tr>
            <tr class="total">
              <td></td>
              <td></td>
              <th scope="row">{path.margin < 0 ? 'SHORT by' : 'to spare'}</th>
              <td></td>
              <td class="numeric">
                <FigureLink
                  id="ledger:margin"
                  job={bench.id}
                  of={path.fixture.id}
                  quantity={`${path.side}-margin`}
                  text={signedPressure(path.margin, job.units).replace(/^\+| .*$/g, '')}
                  label={`the margin at ${path.fixture.name}`}
                />
              </td>
            </tr>
          </tbody>
        </table>
      </section>
    </details>
  );
}
