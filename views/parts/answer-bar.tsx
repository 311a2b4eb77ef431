import { Verdict } from '../components/verdict.tsx';
import { figuresApart, figureWithUnit, fixed, signedPressure } from '../text/figure.ts';
import type { Workbench } from '../workbench.ts';

export const answerBarId = 'answer';

/** The answer in one line: worst fixture, what is left against what it needs, pass or short, demand, findings. */
export function AnswerBar({ bench }: { bench: Workbench }): JSX.Element {
  const { report, job } = bench;
  const { worst, findings, unverified, solution } = report;
  const [left, needed] =
    worst === undefined
      ? ['', '']
      : figuresApart(worst.residual, worst.inlet.requiredPressure, 'pressure', job.units);
  const errors = findings.filter((finding) => finding.severity === 'error').length;
  return (
    <section id={answerBarId} class="answer" aria-label="Answer" role="status">
      {worst === undefined ? (
        <p class="answer-main">No fixture is served yet.</p>
      ) : (
        <p class="answer-main">
          <Verdict passes={report.passes} short={worst.margin < 0} />
          <span class="answer-worst">
            <span class="caption">Worst fixture </span>
            <strong safe>{`${worst.inlet.fixture.name}, ${worst.inlet.side}`}</strong>
          </span>
          <span>
            <strong safe>{left}</strong>
            <span safe>{` left, needs ${needed}`}</span>
            <strong class="margin" safe>
              {` (${signedPressure(worst.margin, job.units)})`}
            </strong>
          </span>
        </p>
      )}
      <p class="answer-more">
        <span safe>
          {report.network.size === 0
            ? ''
            : `Demand at the service ${figureWithUnit(solution.flow[0] ?? 0, 'flow', job.units)} (${fixed(solution.units[0] ?? 0, 1)} WSFU)`}
        </span>
        <a href="#findings" safe>
          {findingCount(findings.length, errors)}
        </a>
        {unverified.length === 0 ? (
          ''
        ) : (
          <a href="#unverified" safe>
            {`rests on ${unverified.length} ${unverified.length === 1 ? 'value' : 'values'} from memory or common practice, not verified`}
          </a>
        )}
      </p>
    </section>
  );
}

function findingCount(all: number, errors: number): string {
  if (all === 0) return 'no findings';
  const words = `${all} ${all === 1 ? 'finding' : 'findings'}`;
  return errors === 0 ? words : `${words}, ${errors} ${errors === 1 ? 'error' : 'errors'}`;
}
