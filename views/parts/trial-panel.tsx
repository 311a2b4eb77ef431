import type { Report } from '../../engine/network/report.ts';
import type { Part } from '../part.ts';
import { changeSentences } from '../text/change-text.ts';
import { figuresApart, figureWithUnit, signedPressure } from '../text/figure.ts';
import { findingChanges } from '../text/finding-changes.ts';
import type { Beside, Workbench } from '../workbench.ts';
import { TrialActions } from './trial-actions.tsx';

export const trialPanelId = 'trial';

/** Changes or findings told in full; of more the others are counted. */
const mostTold = 8;

type Trial = Extract<Beside, { kind: 'trial' }>;

/** What a trial changes and what it does to the answer, before and after; empty on the job as it is. */
export function TrialPanel({ bench }: { readonly bench: Workbench }): JSX.Element {
  const { beside } = bench;
  if (beside?.kind !== 'trial') return <div id={trialPanelId}></div>;
  const { changes, base } = beside;
  const count = `${changes.length} ${changes.length === 1 ? 'change' : 'changes'}`;
  const { gone, come } = findingChanges(base, bench);
  return (
    <section id={trialPanelId} class="beside trial" aria-labelledby="trial-title">
      <h2 id="trial-title" safe>{`Trying: ${count}, not saved`}</h2>
      <TrialActions trial={bench.id} />
      <Told title="" lines={changeSentences(changes, bench.job.chosen)} />
      <BeforeAfter base={base} bench={bench} />
      <Told title="Findings gone" lines={gone} />
      <Told title="Findings come" lines={come} />
    </section>
  );
}

export function trialPart(bench: Workbench): Part {
  return { id: trialPanelId, html: (<TrialPanel bench={bench} />) as string };
}

function BeforeAfter({ base, bench }: { base: Trial['base']; bench: Workbench }): JSX.Element {
  const before = answerWords(base.report, base.job.units);
  const after = answerWords(bench.report, bench.job.units);
  return (
    <section class="scroll" tabindex="0" aria-label="Before and after">
      <table>
        <thead>
          <tr>
            <td></td>
            <th scope="col">Before</th>
            <th scope="col">After</th>
          </tr>
        </thead>
        <tbody>
          {before.map(([label, value], row) => (
            <tr>
              <th scope="row" safe>
                {label}
              </th>
              <td safe>{value}</td>
              <td safe>{after[row]?.[1] ?? ''}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

type Row = readonly [label: string, value: string];

function answerWords({ worst, passes, network, solution }: Report, system: Workbench['job']['units']): Row[] {
  const [left, needed] =
    worst === undefined
      ? ['none', 'none']
      : figuresApart(worst.residual, worst.inlet.requiredPressure, 'pressure', system);
  const short = worst !== undefined && worst.margin < 0;
  return [
    [
      'Answer',
      worst === undefined ? 'No fixture is served' : short ? 'Short' : passes ? 'Pass' : 'Breaks a rule',
    ],
    ['Worst fixture', worst === undefined ? 'none' : `${worst.inlet.fixture.name}, ${worst.inlet.side}`],
    ['Pressure left there', left],
    ['It needs', needed],
    ['Margin', worst === undefined ? 'none' : signedPressure(worst.margin, system)],
    [
      'Demand at the service',
      network.size === 0 ? 'none' : figureWithUnit(solution.flow[0] ?? 0, 'flow', system),
    ],
  ];
}

function Told({ title, lines }: { title: string; lines: readonly string[] }): JSX.Element {
  if (lines.length === 0) return '';
  const rest = lines.length - mostTold;
  return (
    <>
      {title === '' ? '' : <h3 safe>{title}</h3>}
      <ul>
        {lines.slice(0, mostTold).map((line) => (
          <li safe>{line}</li>
        ))}
        {rest > 0 ? <li safe>{`and ${rest} more`}</li> : ''}
      </ul>
    </>
  );
}
