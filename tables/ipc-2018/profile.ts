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

/** International Plumbing Code, Appendix E: buildings of any use. Its only group is the private bathroom. */
export const ipc2018: Profile = {
  title: 'International Plumbing Code',
  edition: '2018',
  fixtureUnits,
  demandTank,
  demandValve,
  outlets,
  supplySizes,
  fixtureRows,
  groupRows: {
    'full-bath': {
      tank: 'bathroom group, private, flush tank',
      valve: 'bathroom group, private, flushometer valve',
    },
    'half-bath': { tank: null, valve: null },
    kitchen: { tank: null, valve: null },
    laundry: { tank: null, valve: null },
  },
  homeRunKinds: ['bathtub', 'bathtub-shower', 'kitchen-sink', 'shower', 'hand-shower'],
  manifoldCapacity,
  velocityLimits,
  limits,
  rules: codeRules,
};
