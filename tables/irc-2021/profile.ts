import { type FixtureKindId, fixtureKinds } from '../fixtures/kinds.ts';
import { velocityLimits } from '../pipe/velocity-limits.ts';
import type { Profile } from '../profile.ts';
import { codeRules } from './code-rules.ts';
import { demandTank, demandValve } from './demand.ts';
import { fixtureRows } from './fixture-rows.ts';
import { fixtureUnits } from './fixture-units.ts';
import { limits } from './limits.ts';
import { manifoldCapacity } from './manifold-capacity.ts';
import { outlets } from './outlets.ts';
import { supplySizes } from './supply-sizes.ts';

/** International Residential Code, chapter 29: one- and two-family dwellings. It prints no group with flushometer valves. */
export const irc2021: Profile = {
  title: 'International Residential Code',
  edition: '2021',
  fixtureUnits,
  demandTank,
  demandValve,
  outlets,
  supplySizes,
  fixtureRows,
  groupRows: {
    'full-bath': { tank: 'full-bath group', valve: null },
    'half-bath': { tank: 'half-bath group', valve: null },
    kitchen: { tank: 'kitchen group', valve: null },
    laundry: { tank: 'laundry group', valve: null },
  },
  homeRunKinds: Object.keys(fixtureKinds) as FixtureKindId[],
  manifoldCapacity,
  velocityLimits,
  limits,
  rules: codeRules,
};
