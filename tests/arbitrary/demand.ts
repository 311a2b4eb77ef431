import * as fc from 'fast-check';
import type { DemandChoice, DemandPoint } from '../../engine/job/job.ts';
import { arbitraryFlow } from './quantity.ts';
import { arbitraryName } from './run.ts';

const arbitraryPoints: fc.Arbitrary<DemandPoint[]> = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 5000 }), arbitraryFlow), { minLength: 2, maxLength: 12 })
  .map((rows) => {
    const units = [...new Set(rows.map(([each]) => each))].sort((a, b) => a - b);
    const flows = rows.map(([, flow]) => flow).sort((a, b) => a.si - b.si);
    return units.map((each, at): DemandPoint => ({ units: each, flow: flows[at]! }));
  })
  .filter(({ length }) => length >= 2);

/** Any demand method with any parameters. */
export const arbitraryDemand: fc.Arbitrary<DemandChoice> = fc.oneof(
  fc.constantFrom<DemandChoice>({ method: 'code-table' }, { method: 'en-806-3' }),
  fc
    .record({ name: arbitraryName, points: arbitraryPoints })
    .map((own): DemandChoice => ({ method: 'own-table', ...own })),
);
