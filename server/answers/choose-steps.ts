import { explainRun, type Report, type Step, type Steps } from '../../engine/index.ts';
import { insteadOf, nearest } from '../words/nearest.ts';
import { shownWord } from '../words/shown-word.ts';
import { chooseInlet, inletsNamed } from './choose-inlet.ts';
import { isRefusal, type Refusal, refuse } from './refusal.ts';

/**
 * The steps that a name on the command line means, each after those it uses: all of a run, one figure of a run and
 * what it rests on, or what is left over the need at a fixture's inlet. Steps of other runs are named, not told.
 */
export function chooseSteps(report: Report, name: string): readonly Step[] | Refusal {
  const { positionOf, runs, scheme } = report.network;
  if (positionOf.has(name)) {
    const steps = explainRun(report, name)!;
    return closure(
      steps,
      [...steps.keys()].filter((id) => !isCommon(id)),
    );
  }
  const inlets = inletsNamed(report, name.replace(/\.(cold|hot)-margin$/, '.$1'));
  if (inlets.length > 0) {
    const chosen = inlets.map(({ inlet }) =>
      closure(explainRun(report, runs[inlet.run]!.id)!, [`${inlet.fixture.id}.${inlet.side}-margin`]),
    );
    return [...new Map(chosen.flat().map((step) => [step.id, step])).values()];
  }
  const [head = '', ...rest] = name.split('.');
  const quantity = rest.join('.');
  const ofRun = positionOf.has(head) ? head : isCommon(name) ? runs[0]?.id : undefined;
  const shown = shownWord(name);
  if (ofRun !== undefined && quantity !== '') {
    const steps = explainRun(report, ofRun)!;
    if (steps.has(name)) return closure(steps, [name]);
    const ids = [...steps.keys()].filter((id) => id.startsWith(`${head}.`));
    const quantities = ids.map((id) => id.slice(head.length + 1));
    const near = nearest(quantity, quantities).map((one) => `${head}.${one}`);
    return refuse(`there is no figure ${shown}; ${insteadOfFigure(near, ids)}`);
  }
  if (report.inlets.some(({ inlet }) => inlet.fixture.id === head)) {
    const inlet = chooseInlet(report, name);
    if (isRefusal(inlet)) return inlet;
  }
  const names = [...runs.map(({ id }) => id), ...new Set(report.inlets.map(({ inlet }) => inlet.fixture.id))];
  return refuse(`there is no run or fixture ${shown} in scheme ${scheme.id}; ${insteadOf(head, names)}`);
}

function insteadOfFigure(near: readonly string[], ids: readonly string[]): string {
  return near.length > 0 ? `nearest: ${near.join(', ')}` : `expected one of ${ids.join(', ')}`;
}

/** Steps that belong to no run: the street, and the water at both temperatures. */
function isCommon(id: string): boolean {
  return /^(street|water-cold|water-hot)\./.test(id);
}

/** Steps and all that they use among `steps`, in their order. */
function closure(steps: Steps, ids: readonly string[]): Step[] {
  const wanted = new Set<string>();
  const open = [...ids];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    const step = steps.get(id);
    if (step === undefined || wanted.has(id)) continue;
    wanted.add(id);
    for (const term of Object.values(step.terms)) if (term.from === 'step') open.push(term.step);
  }
  return [...steps.values()].filter(({ id }) => wanted.has(id));
}
