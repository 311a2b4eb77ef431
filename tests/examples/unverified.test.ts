import { describe, expect, it } from 'vitest';
import { type Basis, explainAll, type Report } from '../../engine/index.ts';
import type { Supply } from '../../engine/job/job.ts';
import type { Inlet } from '../../engine/network/network.ts';
import { pathTo } from '../../engine/network/path.ts';
import { unverifiedOnPath } from '../../engine/network/unverified.ts';
import type { Cited } from '../../tables/table.ts';
import { gpm, psi } from '../jobs/written-job.ts';
import { exampleNames, openExample, reportOf } from './open-example.ts';

const key = ({ table, row, column }: Cited): string => `${table.id} ${row ?? ''} ${column ?? ''}`;

/** Cells of fixture units and of the fixtures' own flows are summed over all that a run serves: path.test.ts. */
const isSummed = ({ table, column }: Cited): boolean =>
  table.id.includes('fixture-units') || (table.id.includes('outlets') && column === 'flow');

/** What the written-out steps of a path take from tables, from the street to what is left at its inlet. */
function explained(report: Report, inlet: Inlet): Set<string> {
  const { network } = report;
  const ids = pathTo(network, inlet.run).map((at) => `${network.runs[at]!.id}.`);
  const found = new Set<string>();
  for (const { id, terms } of explainAll(report).values()) {
    const own = ids.some((run) => id.startsWith(run)) && !/\.(static|units|device-curve-at-rest)/.test(id);
    if (!own && id !== 'street.pressure' && id !== `${inlet.fixture.id}.${inlet.side}-margin`) continue;
    for (const term of Object.values(terms)) {
      if (term.from !== 'table' || isSummed(term.cite)) continue;
      const { verified } = term.cite;
      if (verified === 'memory' || verified === 'common-practice') found.add(key(term.cite));
    }
  }
  return found;
}

const flowTest: Supply = {
  kind: 'flow-test',
  elevation: { typed: '0 ft', si: 0 },
  static: psi(66),
  residual: psi(50),
  flow: gpm(400),
};

const choices: readonly (readonly [string, Partial<Basis>, Supply | undefined])[] = [
  ['its own basis', {}, undefined],
  [
    'rounded up, by Darcy-Weisbach, with an allowance',
    { friction: 'darcy-weisbach', between: 'round-up', fittingAllowancePercent: 50 },
    undefined,
  ],
  ['behind a flow test', {}, flowTest],
];

describe.each(
  exampleNames.flatMap((name) => choices.map(([choice, basis, supply]) => ({ name, choice, basis, supply }))),
)('$name, $choice', ({ name, basis, supply }) => {
  it('lists of every path just the unverified values that its written-out steps take', async () => {
    const job = await openExample(name);
    const report = reportOf({ ...job, basis: { ...job.basis, ...basis }, supply: supply ?? job.supply });
    let listed = 0;
    for (const { inlet } of report.inlets) {
      const list = unverifiedOnPath(report.network, report.solution, inlet).filter((one) => !isSummed(one));
      expect(new Set(list.map(key)), `${inlet.fixture.id} ${inlet.side}`).toEqual(explained(report, inlet));
      listed += list.length;
      if (supply !== undefined) expect(list.map(key)).toContain('flow-test-exponent  ');
    }
    expect(listed).toBeGreaterThan(0);
  });
});
