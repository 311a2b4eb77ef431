import { fixtureKinds } from '../../tables/fixtures/kinds.ts';
import type { UnitId } from '../../tables/units/definitions.ts';
import type { GatheredUnits } from '../demand/gather-units.ts';
import type { UnitSource } from '../network/network.ts';
import type { Report } from '../network/report.ts';
import { lessAll, sumOf, timesEach } from './arithmetic.ts';
import { fedTerms, type NamedTerm, terms } from './fed-runs.ts';
import { cited, given } from './leaf.ts';
import type { Explained } from './step.ts';
import type { Worksheet } from './worksheet.ts';

/** What units are called, and the quantity in whose steps they stand. */
export interface UnitName {
  readonly quantity: 'units' | 'loading-units';
  readonly title: string;
  readonly unit: UnitId;
}

/** Adds the step `<run>.<quantity>`: units that a run serves, gathered from the runs that it feeds and its own. */
export function explainUnits(
  report: Report,
  at: number,
  sheet: Worksheet,
  { quantity, title, unit }: UnitName,
  { units, sources }: Pick<GatheredUnits, 'units' | 'sources'>,
): Explained {
  const step = `${report.network.runs[at]!.id}.${quantity}`;
  const list = [
    ...fedTerms(report, at, quantity, units),
    ...sources[at]!.map((source) => explainSource(step, unit, source, sheet)),
  ];
  const formula = sumOf({
    id: quantity,
    title,
    unit,
    meaning: `${title.toLowerCase()} that the run serves`,
    terms: list.map(({ meaning }) => meaning),
  });
  return sheet.apply(step, formula, terms(list.map(({ term }) => term)));
}

/**
 * One reason for units at a run, as a term; arithmetic that it takes becomes a step of its own. Points part the names
 * in its id: an id may hold hyphens, so that with them fixture `A-all` would stand in the place of all of `A`.
 */
function explainSource(step: string, unit: UnitId, source: UnitSource, sheet: Worksheet): NamedTerm {
  if (source.what === 'group' || source.what === 'group ends') {
    const { group, column, value, members } = source;
    const meaning = `group ${group}, ${column}`;
    const id = `${step}-group.${group}.${column}${source.what === 'group' ? '' : '-ends'}`;
    const gain = sheet.apply(
      id,
      lessAll({
        id: 'group-units',
        title: 'A whole group in place of its fixtures',
        unit,
        meaning: 'what the group adds to the sum of its fixtures',
        terms: ['the group', ...members.map(({ row }) => row ?? 'fixture')],
      }),
      terms([cited(value), ...members.map(cited)]),
    );
    if (source.what === 'group') return { meaning, term: gain };
    const back = sheet.apply(
      `${id}-back`,
      timesEach(
        'group-back',
        'Back to the fixtures, since the run serves part of the group',
        unit,
        'the gain',
      ),
      { n: given(-1, 'one', 'taken back', '-1'), x: gain },
    );
    return { meaning: `${meaning}, no longer alone`, term: back };
  }
  const { fixture } = source;
  const count = given(fixture.count, 'one', `fixture ${fixture.id}, count`, `${fixture.count}`);
  if (source.what === 'inlet') {
    const meaning = `${fixture.name}, ${source.side}`;
    if (fixture.count === 1) return { meaning, term: cited(source.each) };
    const formula = timesEach('fixtures', 'Fixtures of one kind', unit, fixtureKinds[fixture.kind].label);
    return {
      meaning,
      term: sheet.apply(`${step}.${fixture.id}`, formula, { n: count, x: cited(source.each) }),
    };
  }
  const { total, cold, hot } = source;
  const each = sheet.apply(
    `${step}.${fixture.id}`,
    lessAll({
      id: 'both-sides',
      title: 'Both sides of one fixture: its total in place of cold plus hot',
      unit,
      meaning: 'what the total adds to cold plus hot',
      terms: ['total', 'cold', 'hot'],
    }),
    terms([cited(total), cited(cold), cited(hot)]),
  );
  const meaning = `${fixture.name}, both sides`;
  if (fixture.count === 1) return { meaning, term: each };
  const formula = timesEach('fixtures', 'Fixtures of one kind', unit, 'each');
  return { meaning, term: sheet.apply(`${step}.${fixture.id}.all`, formula, { n: count, x: each }) };
}
