import type { Finding, Severity } from '../../engine/checks/finding.ts';
import { units } from '../../tables/units/definitions.ts';
import { citedText } from '../text/citation-text.ts';
import { findingText } from '../text/finding-text.ts';
import type { Workbench } from '../workbench.ts';

export const findingsId = 'findings-list';

const order: Record<Severity, number> = { error: 0, warning: 1, note: 2 };
const marks: Record<Severity, string> = { error: '✕ Error', warning: '! Warning', note: '· Note' };

/** Every finding in words, errors first, and the values on the worst path that nobody could verify. */
export function FindingsList({ bench }: { bench: Workbench }): JSX.Element {
  const { findings, unverified } = bench.report;
  const sorted = [...findings].sort((a, b) => order[a.severity] - order[b.severity]);
  return (
    <div id={findingsId}>
      {sorted.length === 0 ? (
        <p>Nothing to report: every rule that this job can be held to is met.</p>
      ) : (
        <ul class="findings">
          {sorted.map((finding) => (
            <FindingItem finding={finding} bench={bench} />
          ))}
        </ul>
      )}
      {unverified.length === 0 ? (
        ''
      ) : (
        <details id="unverified" class="unverified">
          <summary safe>{`Values from memory on the worst path: ${unverified.length}`}</summary>
          <p>These could not be compared with their document. Check them before you rely on the answer.</p>
          <ul>
            {unverified.map((cited) => (
              <li safe>
                {`${cited.table.title}${cited.row === undefined ? '' : `, ${cited.row}`}: ${cited.printed} ${units[cited.unit].symbol}`.trim() +
                  `. ${citedText(cited)}`}
              </li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}

function FindingItem({ finding, bench }: { finding: Finding; bench: Workbench }): JSX.Element {
  const text = findingText(finding, bench.job);
  const run = 'run' in finding ? finding.run : undefined;
  return (
    <li class={`finding ${finding.severity}`}>
      <span class="severity" safe>
        {marks[finding.severity]}
      </span>
      <div>
        <p class="what" safe>
          {text.what}
        </p>
        <p class="try" safe>
          {text.tryThis}
        </p>
        <p class="source">
          <span safe>{`Rule: ${text.source}.`}</span>
          {run === undefined ? (
            ''
          ) : (
            <>
              {' '}
              <a href={`#run:${run}`} safe>{`Go to run ${run}`}</a>
            </>
          )}
        </p>
      </div>
    </li>
  );
}
