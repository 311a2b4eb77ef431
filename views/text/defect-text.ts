import type { UnitSystem } from '../../engine/job/job.ts';
import type { Defect } from '../../engine/network/defect.ts';
import { figureWithUnit } from './figure.ts';
import { sizeText } from './size-text.ts';

/** One defect of a document in a sentence: which part, what came, what was expected. */
export function defectText(defect: Defect, system: UnitSystem): string {
  const show = (value: number, dimension: 'length' | 'pressure') => figureWithUnit(value, dimension, system);
  switch (defect.code) {
    case 'no-such-scheme':
      return `The job has no scheme ${defect.scheme}.`;
    case 'no-runs':
      return `Scheme ${defect.scheme} has no runs; it needs at least one that comes from the street.`;
    case 'run-twice':
      return `Two runs are called ${defect.run}; give one of them another name.`;
    case 'run-named-street':
      return `A run may not be called ${defect.run}: that word stands for the source.`;
    case 'fixture-twice':
      return `Two fixtures are called ${defect.fixture}; give one of them another name.`;
    case 'level-twice':
      return `Two levels are called ${defect.level}; give one of them another name.`;
    case 'group-twice':
      return `Two groups are called ${defect.group}; give one of them another name.`;
    case 'scheme-twice':
      return `Two schemes are called ${defect.scheme}; give one of them another name.`;
    case 'several-services':
      return `Runs ${list(defect.runs)} all come from the street; only one may. Let one feed the others.`;
    case 'parent-missing':
      return `Run ${defect.run} comes from ${defect.from}, and there is no such run.`;
    case 'loop':
      return `Runs ${list(defect.runs)} feed each other in a ring; every run has to lead back to the street.`;
    case 'unknown-size':
      return `Run ${defect.run}: there is no ${sizeText(defect.size)} ${defect.material} on file; sizes are ${list(defect.sizes)}.`;
    case 'unknown-device-size':
      return `Run ${defect.run}: there is no ${sizeText(defect.size)} ${defect.device} on file; sizes are ${list(defect.sizes)}.`;
    case 'joint-mismatch':
      return `Run ${defect.run}: ${defect.material} is not joined by ${defect.joint}; it may be ${list(defect.joints)}.`;
    case 'rise-over-length':
      return `Run ${defect.run} rises or falls ${show(Math.abs(defect.rise), 'length')} in ${show(defect.length, 'length')} of pipe; it cannot rise more than its length.`;
    case 'fixture-missing':
      return `Run ${defect.run} ends at fixture ${defect.fixture}, and the schedule has no such fixture.`;
    case 'inlet-missing':
      return `Run ${defect.run} ends at the ${defect.side} inlet of ${defect.fixture}, which has none.`;
    case 'inlet-unserved':
      return `No run ends at the ${defect.side} inlet of ${defect.fixture}; exactly one has to.`;
    case 'inlet-served-twice':
      return `Runs ${list(defect.runs)} all end at the ${defect.side} inlet of ${defect.fixture}; only one may.`;
    case 'hot-without-heater':
      return `Run ${defect.run} ends at the hot inlet of ${defect.fixture}, and no heater is on its path.`;
    case 'cold-below-heater':
      return `Run ${defect.run} ends at the cold inlet of ${defect.fixture}, and its path leads through a heater.`;
    case 'run-after-end':
      return `Run ${defect.run} comes from ${defect.from}, which ends at a fixture, an expansion tank or an arrester; nothing can follow there.`;
    case 'level-missing':
      return `Fixture ${defect.fixture} stands on level ${defect.level}, and there is no such level.`;
    case 'place-level-missing': {
      const place = { serviceEntry: 'service entry', mechanicalRoom: 'mechanical room' }[defect.place];
      return `The ${place} stands on level ${defect.level}, and there is no such level.`;
    }
    case 'riser-twice':
      return `Two risers are called ${defect.riser}; give one of them another name.`;
    case 'group-missing':
      return `Fixture ${defect.fixture} belongs to group ${defect.group}, and there is no such group.`;
    case 'flow-test-inverted':
      return `The flow test has a residual of ${show(defect.residual, 'pressure')} over a static of ${show(defect.static, 'pressure')}; the residual has to be the lower.`;
    case 'pressures-inverted':
      return `The low pressure, ${show(defect.low, 'pressure')}, is over the high, ${show(defect.high, 'pressure')}; exchange them.`;
  }
}

function list(words: readonly string[]): string {
  if (words.length <= 1) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
