import type { PriceIndex, Report, SizingRules } from '../../engine/index.ts';
import { type MaterialId, materials } from '../../tables/pipe/names.ts';
import type { Call } from './command.ts';
import { insteadOf } from './nearest.ts';
import { isRefusal, type Refusal, refuse } from './outcome.ts';
import { shownWord } from './shown-word.ts';

/** What `hightap size` was asked to hold: `--keep`, `--not-larger`, `--trunk`, `--material`. */
export function sizeRules(
  { flags, values, repeated }: Call,
  report: Report,
  prices: PriceIndex,
): SizingRules | Refusal {
  const keep = runsNamed(values.get('keep') ?? '', report);
  if (isRefusal(keep)) return keep;
  const trunks: ReadonlySet<string>[] = [];
  for (const text of repeated.get('trunk') ?? []) {
    const trunk = runsNamed(text, report);
    if (isRefusal(trunk)) return trunk;
    const apart = report.network.scheme.runs.filter(({ id, from }) => trunk.has(id) && !trunk.has(from));
    if (trunk.size < 2 || apart.length > 1) {
      return refuse(
        `--trunk ${shownWord(text)} is no trunk; expected two or more runs, each but the first fed by another of them`,
      );
    }
    trunks.push(trunk);
  }
  const chosen = materialsNamed(values.get('material'));
  if (chosen !== undefined && isRefusal(chosen)) return chosen;
  return {
    prices,
    keep,
    notLarger: flags.has('not-larger'),
    trunks,
    ...(chosen === undefined ? {} : { materials: chosen }),
  };
}

function namesIn(text: string): string[] {
  return text
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
}

function runsNamed(text: string, { network }: Report): ReadonlySet<string> | Refusal {
  const names = namesIn(text);
  const stray = names.find((name) => !network.positionOf.has(name));
  if (stray === undefined) return new Set(names);
  const ids = network.runs.map(({ id }) => id);
  return refuse(
    `there is no run ${shownWord(stray)} in scheme ${network.scheme.id}; ${insteadOf(stray, ids)}`,
  );
}

function materialsNamed(text: string | undefined): readonly MaterialId[] | undefined | Refusal {
  if (text === undefined) return undefined;
  const names = [...new Set(namesIn(text))];
  const stray = names.find((name) => !isMaterial(name));
  if (stray === undefined && names.length > 0) return names.filter(isMaterial);
  return refuse(
    `there is no material ${shownWord(stray ?? text)}; expected one or more of ${Object.keys(materials).join(', ')}`,
  );
}

function isMaterial(name: string): name is MaterialId {
  return Object.hasOwn(materials, name);
}
