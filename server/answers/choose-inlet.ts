import type { InletResult, Report } from '../../engine/index.ts';
import { insteadOf } from '../words/nearest.ts';
import { shownWord } from '../words/shown-word.ts';
import { type Refusal, refuse } from './refusal.ts';

/** How an inlet is named on the command line: `shower-3.hot`. */
export function inletName({ inlet }: InletResult): string {
  return `${inlet.fixture.id}.${inlet.side}`;
}

/** The inlets meant by `FIXTURE` or `FIXTURE.side`, smallest margin first; none where there is no such fixture. */
export function inletsNamed(report: Report, name: string): InletResult[] {
  return report.inlets.filter((one) => one.inlet.fixture.id === name || inletName(one) === name);
}

/** The inlet that `--path` names; of a fixture without a side, the one with the smaller margin. */
export function chooseInlet(report: Report, name: string): InletResult | Refusal {
  const [found] = inletsNamed(report, name);
  if (found !== undefined) return found;
  const shown = shownWord(name);
  const [id, ...sides] = name.split('.');
  const ofFixture = report.inlets.filter(({ inlet }) => inlet.fixture.id === id).map(inletName);
  if (sides.length > 0 && ofFixture.length > 0) {
    return refuse(`there is no inlet ${shown}; expected ${ofFixture.join(' or ')}`);
  }
  const fixtures = [...new Set(report.inlets.map(({ inlet }) => inlet.fixture.id))];
  return refuse(
    `there is no fixture ${shown} in scheme ${report.network.scheme.id}; ${insteadOf(id!, fixtures)}`,
  );
}
