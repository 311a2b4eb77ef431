import type { FittingSource } from '../network/network.ts';
import type { Report } from '../network/report.ts';
import { sumOf, timesEach } from './arithmetic.ts';
import { terms } from './fed-runs.ts';
import { cited, given } from './leaf.ts';
import { allowance, fittingLossByK, flowCoefficient, gradientOverLength } from './pressure-formulas.ts';
import type { Explained } from './step.ts';
import type { Worksheet } from './worksheet.ts';

/** What is known of a run before its fittings. */
interface Known {
  readonly flow: Explained;
  readonly gradient: Explained;
  readonly length: Explained;
  readonly density: Explained;
  readonly v: Explained;
}

/** Adds the steps to `<run>.fitting-loss`: fittings by length and by K, or an allowance, and the port of a manifold. */
export function explainFittings({ network }: Report, at: number, sheet: Worksheet, known: Known): Explained {
  const { id } = network.runs[at]!;
  const sources = network.sources.fittings[at]!;
  const port = sources.find(({ by }) => by === 'Cv');
  const name = port === undefined ? `${id}.fitting-loss` : `${id}.fittings`;
  const percent = network.basis.fittingAllowancePercent;
  const fittings =
    percent === undefined
      ? counted(id, name, sources, sheet, known)
      : sheet.apply(name, gradientOverLength, {
          R: known.gradient,
          L: sheet.apply(`${id}.fitting-length`, allowance, {
            L: known.length,
            a: given(percent, 'one', 'basis, fitting allowance', `${percent} %`),
          }),
        });
  if (port === undefined) return fittings;
  const through = sheet.apply(`${id}.port-loss`, flowCoefficient, { Q: known.flow, Cv: cited(port.each) });
  const title = 'Loss of the fittings and of the manifold port';
  const formula = sumOf({
    id: 'fittings-and-port',
    title,
    unit: 'psi',
    meaning: title,
    terms: ['fittings', 'manifold port'],
  });
  return sheet.apply(`${id}.fitting-loss`, formula, terms([fittings, through]));
}

function counted(
  id: string,
  name: string,
  sources: readonly FittingSource[],
  sheet: Worksheet,
  known: Known,
): Explained {
  const total = (by: 'equivalent length' | 'K', what: string, unit: 'ft' | 'one'): Explained => {
    const list = sources.filter((source) => source.by === by);
    // A run may name a kind twice, as a line is written on a stud: each mention is a step of its own.
    const mention = (at: number): string => {
      const earlier = list.slice(0, at).filter(({ kind }) => kind === list[at]!.kind).length;
      return earlier === 0 ? '' : `-${earlier + 1}`;
    };
    const each = list.map(({ kind, count, each: one }, at) =>
      sheet.apply(
        `${id}.${what}-${kind}${mention(at)}`,
        timesEach('fittings', 'Fittings of one kind', unit, `each ${kind}`),
        { n: given(count, 'one', `run ${id}, fittings`, `${count} ${kind}`), x: cited(one) },
      ),
    );
    const meaning = by === 'K' ? 'sum of K' : 'equivalent length of the fittings';
    const names = list.map(({ kind, count }) => `${count} ${kind}`);
    return sheet.apply(
      `${id}.${what}`,
      sumOf({ id: what, title: meaning, unit, meaning, terms: names }),
      terms(each),
    );
  };
  const L = total('equivalent length', 'fitting-length', 'ft');
  if (sources.every(({ by }) => by !== 'K')) {
    return sheet.apply(name, gradientOverLength, { R: known.gradient, L });
  }
  const K = total('K', 'fitting-k', 'one');
  const { gradient: R, density: ρ, v } = known;
  return sheet.apply(name, fittingLossByK, { R, L, K, ρ, v });
}
