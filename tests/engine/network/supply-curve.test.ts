import { describe, expect, it } from 'vitest';
import { buildNetwork, report, supplyCurve } from '../../../engine/index.ts';
import { readJob } from '../../../server/document/read-job.ts';
import { openExample, reportOf as solve } from '../../examples/open-example.ts';
import { smallJob } from '../../server/small-job.ts';

const psi = 6894.757293168;
const gpm = 3.785411784e-3 / 60;

async function reportOf(document: object) {
  const read = await readJob(JSON.stringify(document));
  if (!read.ok) throw new Error(read.problems.join('; '));
  const built = buildNetwork(read.job);
  if (!built.ok) throw new Error('no tree');
  return report(built.network);
}

/** The cottage with one run of service: 100 ft of 1 in. copper type L, bore 1.025 in., up 10 ft, then its meter. */
const serviceOf = (supply: object, line: string) => ({
  ...smallJob,
  basis: { ...smallJob.basis, elevationFactor: '0.433 psi/ft' },
  supply: { elevation: '0 ft', ...supply },
  schemes: [
    {
      ...smallJob.schemes[0],
      runs: [{ id: 'SV', from: 'street', line }, ...smallJob.schemes[0].runs.slice(1)],
    },
  ],
});

const flowTest = { kind: 'flow-test', static: '70 psi', residual: '60 psi', flow: '100 gpm', low: '64 psi' };

describe('supplyCurve', () => {
  it('falls by the 1.85th power of the flow, from the daily low', async () => {
    const { points } = supplyCurve(await reportOf(serviceOf(flowTest, "1 copper L 100' up 10'")), [
      0,
      50 * gpm,
      100 * gpm,
    ]);
    // 64; 64 - 10 x 0.5^1.85 = 64 - 2.774; 64 - 10.
    const street = points.map(({ atStreet }) => atStreet / psi);
    expect(street[0]).toBeCloseTo(64, 6);
    expect(street[1]).toBeCloseTo(61.226, 3);
    expect(street[2]).toBeCloseTo(54, 6);
  });

  it('takes height and friction of the first run where no meter stands on the way', async () => {
    const { service, points } = supplyCurve(
      await reportOf(serviceOf({ kind: 'static', low: '60 psi', high: '70 psi' }, "1 copper L 100' up 10'")),
      [0, 10 * gpm],
    );
    expect(service).toBe(0);
    // At rest the height alone: 10 ft x 0.433 psi/ft. At 10 gpm also 4.52 x 10^1.852 / (C^1.852 x 1.025^4.8704) psi/ft
    // with C = 140 for copper: 4.52 x 71.12 / (9430 x 1.1277) = 0.03023, over 100 ft 3.02.
    expect(points[0]!.behindService / psi).toBeCloseTo(60 - 4.33, 4);
    expect(Math.abs(points[1]!.behindService / psi - (60 - 4.33 - 3.02))).toBeLessThan(0.05);
  });

  it.each(['three-level-house', 'home-run-house', 'copper-walk-up', 'well-cabin', 'large-house'])(
    'has the solver’s own figures at the demand of %s',
    async (name) => {
      const solved = solve(await openExample(`${name}.json`));
      const { service, demand } = supplyCurve(solved, []);
      expect(demand.flow).toBe(solved.solution.flow[0]);
      expect(demand.atStreet).toBe(solved.solution.supplyPressure);
      expect(demand.behindService).toBeCloseTo(solved.solution.residual[service]!, 4);
      const end = solved.network.runs[service]!.end;
      expect(end !== undefined && 'device' in end && end.device === 'meter').toBe(name !== 'well-cabin');
    },
  );
});
