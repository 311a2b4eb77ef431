import { profiles } from '../../tables/profiles.ts';
import { requiredFlow, requiredPressure, sidesOf } from '../demand/fixture-needs.ts';
import type { Fixture, InletSide, Job, Run } from '../job/job.ts';
import type { Defect } from './defect.ts';
import type { Inlet } from './network.ts';

/**
 * Ties every inlet of every fixture to the one run that ends there.
 *
 * @param runs in the order of the network
 * @param hot 1 where the water of a run came through a heater
 * @returns the inlets in the order of their runs, and every inlet that is on no run, on two, or on the wrong side
 */
export function placeInlets(
  job: Job,
  runs: readonly Run[],
  hot: Uint8Array,
): { inlets: Inlet[]; defects: Defect[] } {
  const profile = profiles[job.basis.profile];
  const byId = new Map(job.fixtures.map((fixture) => [fixture.id, fixture]));
  const runsAt = new Map<Fixture, { [side in InletSide]?: string[] }>();
  const inlets: Inlet[] = [];
  const defects: Defect[] = [];
  runs.forEach((run, at) => {
    if (run.end === undefined || !('fixture' in run.end)) return;
    const { fixture: id, inlet: side } = run.end;
    const fixture = byId.get(id);
    if (fixture === undefined) {
      defects.push({ code: 'fixture-missing', run: run.id, fixture: id });
      return;
    }
    if (!sidesOf(fixture).includes(side)) {
      defects.push({ code: 'inlet-missing', run: run.id, fixture: id, side });
      return;
    }
    if (side === 'hot' && hot[at] === 0)
      defects.push({ code: 'hot-without-heater', run: run.id, fixture: id });
    if (side === 'cold' && hot[at] === 1)
      defects.push({ code: 'cold-below-heater', run: run.id, fixture: id });
    const ends = runsAt.get(fixture) ?? {};
    runsAt.set(fixture, ends);
    ends[side] = [...(ends[side] ?? []), run.id];
    const flow = requiredFlow(profile, fixture);
    const pressure = requiredPressure(profile, fixture);
    inlets.push({
      fixture,
      side,
      run: at,
      requiredFlow: flow.value,
      flowFrom: flow.from,
      requiredPressure: pressure.value,
      pressureFrom: pressure.from,
    });
  });
  // By id: a fixture that stands twice in the schedule is a defect of its own.
  for (const fixture of byId.values()) {
    for (const side of sidesOf(fixture)) {
      const on = runsAt.get(fixture)?.[side] ?? [];
      if (on.length === 0) defects.push({ code: 'inlet-unserved', fixture: fixture.id, side });
      if (on.length > 1) defects.push({ code: 'inlet-served-twice', fixture: fixture.id, side, runs: on });
    }
  }
  return { inlets, defects };
}
