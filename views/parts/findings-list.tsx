import type { Finding, Severity } from '../../engine/checks/finding.ts';
import { units } from '../../tables/units/definitions.ts';
import { citedText } from '../text/citation-text.ts';
import { findingText } from '../text/finding-text.ts';
import type { Workbench } from '../workbench.ts';

export const findingsId = 'findings-list';

/** More notes than this are folded, so that errors and warnings are not lost among them. */
const mostNotes = 3;

const order: Record<Severity, number> = { error: 0, warning: 1, note: 2 };
const marks: Record<Severity, string> = { error: '✕ Error', warning: '! Warning', note: '· Note' };

/** Every finding in words, errors first, and the values on the worst path that nobody could verify. */
export function FindingsList({ bench }: { bench: Workbench }): JSX.Element {
  const { findings, unverified } = bench.report;
  const graver = findings
    .filter(({ severity }) => severity !== 'note')
    .sort((a, b) => order[a.severity] - order[b.severity]);
  const notes = findings.filter(({ severity }) => severity === 'note');
  const list = (some: readonly Finding[]) => (
    <ul class="findings">
      {some.map((finding) => (
        <FindingItem finding={finding} bench={bench} />
      ))}
    </ul>
  );
  return (
    <div id={findingsId}>
      {findings.length === 0 ? <p>Nothing to report: every rule that this job can be held to is met.</p> : ''}
      {graver.length === 0 ? '' : (list(graver) as 'safe')}
      {notes.length === 0 ? (
        ''
      ) : notes.length <= mostNotes ? (
        (list(notes) as 'safe')
      ) : (
        <details id="notes">
          <summary id="notes:summary" safe>{`${notes.length} notes`}</summary>
          {list(notes) as 'safe'}
        </details>
      )}
      {unverified.length === 0 ? (
        ''
      ) : (
        <details id="unverified" class="unverified">
          <summary
            id="unverified:summary"
            safe
          >{`Values from memory or common practice on the worst path: ${unverified.length}`}</summary>
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
