import { fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { citePoint } from '../../tables/look-up.ts';
import type { Cited, CurveTable } from '../../tables/table.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { rowsRead } from '../demand/demand-table.ts';
import { servesSeveral } from '../demand/design-flow.ts';
import type { Inlet, UnitSource } from '../network/network.ts';
import type { Report } from '../network/report.ts';
import { between, largestOf, lessAll, names, readOff, sumOf, timesEach } from './arithmetic.ts';
import { belowTable, flowFormula } from './flow-formula.ts';
import { cited, given } from './leaf.ts';
import type { Explained } from './step.ts';
import type { Worksheet } from './worksheet.ts';

/** Terms x1, x2, ... of a formula made to measure. */
export function terms(list: readonly Explained[]): Record<string, Explained> {
  return Object.fromEntries(names(list.length).map((name, index) => [name, list[index]!]));
}

/** The runs that a run feeds directly. */
function fedBy({ network }: Report, at: number): number[] {
  const fed: number[] = [];
  for (let child = at + 1; child < network.subtreeEnd[at]!; child = network.subtreeEnd[child]!)
    fed.push(child);
  return fed;
}

/** Adds the steps from fixture units to design flow of one run: `units`, `demand`, `flow` and what they rest on. */
export function explainDemand(report: Report, at: number, sheet: Worksheet): void {
  const { network, solution } = report;
  const id = network.runs[at]!.id;
  const fed = fedBy(report, at);
  const of = (child: number, quantity: string, values: Float64Array): Explained => ({
    from: 'step',
    value: values[child]!,
    step: `${network.runs[child]!.id}.${quantity}`,
  });
  const fedNames = fed.map((child) => `run ${network.runs[child]!.id}`);

  const own = network.sources.units[at]!.map((source) => explainUnits(id, source, sheet));
  const units = sheet.apply(
    `${id}.units`,
    sumOf({
      id: 'units',
      title: 'Fixture units',
      unit: 'wsfu',
      meaning: 'fixture units that the run serves',
      terms: [...fedNames, ...own.map(({ meaning }) => meaning)],
    }),
    terms([...fed.map((child) => of(child, 'units', solution.units)), ...own.map(({ term }) => term)]),
  );

  const ends = network.inlets.filter(({ run }) => run === at);
  const inUnits = ends.filter(() => network.ownFlow[at]! > 0);
  const largest = sheet.apply(
    `${id}.largest`,
    largestOf({
      id: 'largest',
      title: 'Largest single fixture',
      unit: 'gpm',
      meaning: 'largest flow of one fixture',
      terms: [...fedNames, ...inUnits.map(({ fixture }) => fixture.name), ...nothing(fed, inUnits)],
    }),
    terms([
      ...fed.map((child) => of(child, 'largest', solution.largest)),
      ...inUnits.map((inlet) => ownFlowOf(inlet)),
      ...nothing(fed, inUnits).map(() => given(0, 'gpm', 'no fixture counted in units', '0')),
    ]),
  );
  const continuous = sheet.apply(
    `${id}.continuous`,
    sumOf({
      id: 'continuous',
      title: 'Flow that runs for long',
      unit: 'gpm',
      meaning: 'flow that is added and not counted in units',
      terms: [...fedNames, ...addedFlow(report, at, 'continuous').map(({ meaning }) => meaning)],
    }),
    terms([
      ...fed.map((child) => of(child, 'continuous', solution.continuous)),
      ...addedFlow(report, at, 'continuous').map(({ term }) => term),
    ]),
  );
  const demand = explainTable(report, at, sheet, units, fed, of);
  sheet.apply(`${id}.flow`, flowFormula(fedNames), {
    D: demand,
    L: largest,
    C: continuous,
    ...Object.fromEntries(
      names(fed.length).map((name, index) => [name, of(fed[index]!, 'flow', solution.flow)]),
    ),
  });
}

function nothing(fed: readonly number[], ends: readonly Inlet[]): string[] {
  return fed.length + ends.length === 0 ? ['no fixture'] : [];
}

function ownFlowOf({ fixture, requiredFlow, flowFrom }: Inlet): Explained {
  return flowFrom === 'maker'
    ? given(requiredFlow, 'gpm', `fixture ${fixture.id}, flow`, fixture.flow!.typed)
    : cited(flowFrom);
}

/** Own flows that a run adds to a sum, a fixture met by both its inlets taken off once. */
function addedFlow(
  { network }: Report,
  at: number,
  kind: 'continuous' | 'own',
): { meaning: string; term: Explained }[] {
  const amount = (kind === 'continuous' ? network.continuousAdded : network.ownFlowAdded)[at]!;
  if (amount === 0) return [];
  const ends = network.inlets.filter(({ run }) => run === at);
  const [first] = ends;
  if (ends.length === 1 && first!.fixture.count === 1) {
    return [{ meaning: first!.fixture.name, term: ownFlowOf(first!) }];
  }
  const meaning =
    first === undefined
      ? 'fixtures that both sides serve, counted once'
      : `${first.fixture.count} × ${first.fixture.name}`;
  return [{ meaning, term: given(amount, 'gpm', meaning, '') }];
}

/** Units to flow: between rows, up to the next row, or below the first row by the fixtures' own flows. */
function explainTable(
  report: Report,
  at: number,
  sheet: Worksheet,
  units: Explained,
  fed: readonly number[],
  of: (child: number, quantity: string, values: Float64Array) => Explained,
): Explained {
  const { network, solution } = report;
  const run = network.runs[at]!.id;
  const { tank, valve, roundUp } = network.demandTable;
  const column = solution.valve[at] === 1 ? valve : tank;
  const table = column.from;
  const title = solution.valve[at] === 1 ? 'Demand, flushometer-valve column' : 'Demand, flush-tank column';
  const value = solution.units[at]!;
  const id = `${run}.demand`;
  const added = addedFlow(report, at, 'own');
  const own = sheet.apply(
    `${run}.own-flows`,
    sumOf({
      id: 'own-flows',
      title: "Fixtures' own flows",
      unit: 'gpm',
      meaning: 'sum of the own flows of the fixtures served',
      terms: [
        ...fed.map((child) => `run ${network.runs[child]!.id}`),
        ...added.map(({ meaning }) => meaning),
      ],
    }),
    terms([...fed.map((child) => of(child, 'own-flows', solution.ownSum)), ...added.map(({ term }) => term)]),
  );
  if (!servesSeveral(solution.ownSum[at]!, solution.largest[at]!)) {
    return sheet.apply(id, readOff('one-fixture', 'One fixture: its own flow', 'gpm', 'own flow'), {
      y: own,
    });
  }
  if (value < column.units[0]!) {
    return sheet.apply(id, belowTable, { S: own, F: cited(citePoint(table, 0)) });
  }
  const [row, above] = rowsRead(column, value, roundUp);
  if (above === undefined) {
    const formula = readOff(
      'demand-row',
      roundUp ? `${title}, next row up` : title,
      'gpm',
      'flow of the row',
    );
    return sheet.apply(id, formula, { y: cited(citePoint(table, row)) });
  }
  const formula = between(
    'demand',
    title,
    { unit: 'wsfu', meaning: 'fixture units' },
    { unit: 'gpm', meaning: 'flow' },
  );
  return sheet.apply(id, formula, {
    x: units,
    'x₁': xOf(table, row),
    'y₁': cited(citePoint(table, row)),
    'x₂': xOf(table, above),
    'y₂': cited(citePoint(table, above)),
  });
}

/** x of a table's row. */
export function xOf(table: CurveTable, row: number): Explained {
  const point: Cited = citePoint(table, row);
  const x = table.points[row]![0];
  return {
    from: 'table',
    value: toSI(x, table.x),
    cite: { ...point, value: toSI(x, table.x), printed: x, unit: table.x },
  };
}

/**
 * One reason for units at a run, as a term; arithmetic that it takes becomes a step of its own. Points part the names
 * in its id: an id may hold hyphens, so that with them fixture `A-all` would stand in the place of all of `A`.
 */
function explainUnits(
  run: string,
  source: UnitSource,
  sheet: Worksheet,
): { meaning: string; term: Explained } {
  if (source.what === 'group' || source.what === 'group ends') {
    const { group, column, value, members } = source;
    const meaning = `group ${group}, ${column}`;
    const id = `${run}.units-group.${group}.${column}${source.what === 'group' ? '' : '-ends'}`;
    const gain = sheet.apply(
      id,
      lessAll({
        id: 'group-units',
        title: 'A whole group in place of its fixtures',
        unit: 'wsfu',
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
        'wsfu',
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
    const formula = timesEach('fixtures', 'Fixtures of one kind', 'wsfu', fixtureKinds[fixture.kind].label);
    return {
      meaning,
      term: sheet.apply(`${run}.units.${fixture.id}`, formula, { n: count, x: cited(source.each) }),
    };
  }
  const { total, cold, hot } = source;
  const each = sheet.apply(
    `${run}.units.${fixture.id}`,
    lessAll({
      id: 'both-sides',
      title: 'Both sides of one fixture: its total in place of cold plus hot',
      unit: 'wsfu',
      meaning: 'what the total adds to cold plus hot',
      terms: ['total', 'cold', 'hot'],
    }),
    terms([cited(total), cited(cold), cited(hot)]),
  );
  const meaning = `${fixture.name}, both sides`;
  if (fixture.count === 1) return { meaning, term: each };
  const formula = timesEach('fixtures', 'Fixtures of one kind', 'wsfu', 'each');
  return { meaning, term: sheet.apply(`${run}.units.${fixture.id}.all`, formula, { n: count, x: each }) };
}
