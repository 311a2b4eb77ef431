import type { UnitsAndCurve } from '../../tables/demand/methods.ts';
import { en8063 } from '../../tables/en-806-3/demand.ts';
import type { Profile } from '../../tables/profile.ts';
import type { Basis, DemandChoice, UnitSystem } from '../job/job.ts';
import type { DemandMethod } from './demand.ts';
import { demandColumnOf } from './demand-table.ts';
import type { FixtureEnds, Meet } from './fixture-ends.ts';
import { type GatheredUnits, gatherUnits } from './gather-units.ts';
import { ownCurve } from './own-table.ts';
import { codeCount, countOf } from './unit-count.ts';
import { unitsMethod } from './units-method.ts';

/** What a method gathers from: the tree, its fixtures, and the fixture units of the profile. */
export interface DemandTask {
  readonly basis: Basis;
  readonly profile: Profile;
  /** The reader's system, in which a job's own table is cited. */
  readonly units: UnitSystem;
  readonly parent: Int32Array;
  readonly ends: FixtureEnds;
  readonly meet: Meet;
  readonly code: GatheredUnits;
}

/** The method of a basis: its own choice, else that of its profile. */
export function demandChoice(basis: Basis, profile: Profile): DemandChoice {
  return basis.demand ?? profile.demand ?? { method: 'code-table' };
}

/** A demand method made ready to find the demand of every run of a tree. */
export function demandMethod(choice: DemandChoice, task: DemandTask): DemandMethod {
  switch (choice.method) {
    case 'code-table':
    case 'own-table':
      return byCode(choice, task);
    case 'en-806-3':
      return byUnits(en8063, task);
  }
}

/** By the fixture units of the profile, on its curve or on the job's own. */
function byCode(choice: DemandChoice, { basis, profile, units, code }: DemandTask): DemandMethod {
  const own = choice.method === 'own-table' ? demandColumnOf(ownCurve(choice, units)) : undefined;
  return unitsMethod({
    by: 'units',
    unit: 'wsfu',
    count: codeCount(profile),
    ...code,
    table: {
      tank: own ?? demandColumnOf(profile.demandTank, 'Demand, flush-tank column'),
      valve: own ?? demandColumnOf(profile.demandValve, 'Demand, flushometer-valve column'),
      roundUp: basis.between === 'round-up',
    },
  });
}

/** By units and a curve of another code than the profile's. */
function byUnits(method: UnitsAndCurve, { basis, parent, ends, meet }: DemandTask): DemandMethod {
  const count = countOf(method);
  const column = demandColumnOf(method.curve);
  return unitsMethod({
    by: 'units',
    unit: 'lu',
    count,
    ...gatherUnits(count, parent, ends, meet),
    table: { tank: column, valve: column, roundUp: method.roundUp ?? basis.between === 'round-up' },
  });
}
