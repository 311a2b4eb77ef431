import { unitsOf } from '../../../engine/demand/unit-count.ts';
import type { Fixture, Network, Report } from '../../../engine/index.ts';
import { fixtureKinds } from '../../../tables/fixtures/kinds.ts';
import { profiles } from '../../../tables/profiles.ts';
import type { SheetRow, SheetSection } from '../../../views/sheet.ts';
import { figure, fixed, unitSymbol } from '../../../views/text/figure.ts';
import { figures, row, table, words } from '../blocks.ts';
import { demandUnit, tableSource } from '../demand-sources.ts';

/** The schedule: what each fixture counts and what it needs, with the tables that say so. */
export function fixtureSection({ network }: Report): SheetSection {
  const { job, basis } = network;
  const unit = demandUnit(network);
  const schedule = table(
    'Fixtures',
    [
      words('Id'),
      words('Fixture'),
      words('Kind'),
      words('Where'),
      figures('Count'),
      figures(`${unit} cold`),
      figures(`${unit} hot`),
      figures(`${unit} total`),
      figures(`Flow, ${unitSymbol('flow', job.units)}`),
      figures(`Needs, ${unitSymbol('pressure', job.units)}`),
      words('Asked by'),
    ],
    job.fixtures.map((fixture) => fixtureRow(network, fixture)),
    [
      'Each fixture by itself, before what is counted as a group; private use unless another is said.',
      `Units: ${tableSource(network.demand.from.count.table)}.`,
      `Flow and pressure: ${tableSource(profiles[basis.profile].outlets)}; the maker’s where typed.`,
    ].join(' '),
  );
  return { id: 'fixtures', title: 'Fixture schedule', blocks: [schedule, ...groups(network)] };
}

function fixtureRow({ job, demand, inlets }: Network, fixture: Fixture): SheetRow {
  const units = unitsOf(demand.from.count, fixture);
  const side = (value: { readonly value: number } | undefined): string =>
    value === undefined ? '' : fixed(value.value, 2);
  const place = [job.levels.find(({ id }) => id === fixture.level)?.name, fixture.room];
  const inlet = inlets.find((one) => one.fixture === fixture);
  const asked = inlet === undefined ? '' : inlet.pressureFrom === 'maker' ? 'maker' : 'code';
  const use = fixture.use === 'public' ? ', public use' : '';
  return row(
    fixture.id,
    fixture.name,
    `${fixtureKinds[fixture.kind].label}${use}`,
    place.filter((part) => part !== undefined).join(', '),
    String(fixture.count),
    units === undefined ? 'flow' : side(units.sides.cold),
    units === undefined ? '' : side(units.sides.hot),
    units === undefined ? '' : side(units.total),
    inlet === undefined ? '' : figure(inlet.requiredFlow, 'flow', job.units),
    inlet === undefined ? 'not piped' : figure(inlet.requiredPressure, 'pressure', job.units),
    asked,
  );
}

/** Fixtures that the code counts together, and what for. */
function groups(network: Network): SheetSection['blocks'] {
  const { job, demand, runs } = network;
  if (job.groups.length === 0) return [];
  const placed = demand.from.sources.flatMap((list, at) =>
    list.filter((source) => source.what === 'group').map((source) => ({ source, run: runs[at]!.id })),
  );
  const rows = job.groups.map((group) => {
    const members = job.fixtures.filter((fixture) => fixture.group === group.id).map(({ id }) => id);
    const counted = placed
      .filter(({ source }) => source.group === group.id)
      .map(
        ({ source, run }) =>
          `${source.column} ${fixed(source.value.value, 2)} ${demandUnit(network)} at run ${run}`,
      );
    return row(
      group.name,
      group.kind.replace('-', ' '),
      members.join(', '),
      counted.length === 0 ? 'as its fixtures' : counted.join('; '),
    );
  });
  const columns = [words('Group'), words('Kind'), words('Fixtures'), words('Counted')];
  return [table('Groups', columns, rows)];
}
