import type { PriceIndex, Report, SizingRules } from '../../engine/index.ts';
import { type MaterialId, materials } from '../../tables/pipe/names.ts';
import { insteadOf } from '../words/nearest.ts';
import { shownWord } from '../words/shown-word.ts';
import { isRefusal, type Refusal, refuse } from './refusal.ts';

/** What a sizing was asked to hold, in names that are still to be found in the scheme. */
export interface SizeQuestion {
  /** Runs that stay as drawn. */
  readonly keep: readonly string[];
  /** No run larger than the one that feeds it. */
  readonly notLarger: boolean;
  /** Runs one behind the other that keep one size. */
  readonly trunks: readonly (readonly string[])[];
  /** Materials to choose among; each run's own where it is left out. */
  readonly materials?: readonly string[];
}

/** The question as the engine takes it, every run and material found. */
export function sizeRules(question: SizeQuestion, report: Report, prices: PriceIndex): SizingRules | Refusal {
  const keep = runsNamed(question.keep, report);
  if (isRefusal(keep)) return keep;
  const trunks: ReadonlySet<string>[] = [];
  for (const names of question.trunks) {
    const trunk = runsNamed(names, report);
    if (isRefusal(trunk)) return trunk;
    const apart = report.network.scheme.runs.filter(({ id, from }) => trunk.has(id) && !trunk.has(from));
    if (trunk.size < 2 || apart.length > 1) {
      return refuse(
        `trunk ${shownWord(names.join(','))} is none; expected two or more runs, each but the first fed by another of them`,
      );
    }
    trunks.push(trunk);
  }
  const chosen = materialsNamed(question.materials);
  if (chosen !== undefined && isRefusal(chosen)) return chosen;
  return {
    prices,
    keep,
    notLarger: question.notLarger,
    trunks,
    ...(chosen === undefined ? {} : { materials: chosen }),
  };
}

function runsNamed(names: readonly string[], { network }: Report): ReadonlySet<string> | Refusal {
  const stray = names.find((name) => !network.positionOf.has(name));
  if (stray === undefined) return new Set(names);
  const ids = network.runs.map(({ id }) => id);
  return refuse(
    `there is no run ${shownWord(stray)} in scheme ${network.scheme.id}; ${insteadOf(stray, ids)}`,
  );
}

function materialsNamed(asked: readonly string[] | undefined): readonly MaterialId[] | undefined | Refusal {
  if (asked === undefined) return undefined;
  const names = [...new Set(asked)];
  const stray = names.find((name) => !isMaterial(name));
  if (stray === undefined && names.length > 0) return names.filter(isMaterial);
  return refuse(
    `there is no material ${shownWord(stray ?? '')}; expected one or more of ${Object.keys(materials).join(', ')}`,
  );
}

function isMaterial(name: string): name is MaterialId {
  return Object.hasOwn(materials, name);
}
