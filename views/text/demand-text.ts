import type { DemandChoice } from '../../engine/job/job.ts';

/** The demand methods as a choice. */
export const demandNames: { readonly [id in DemandChoice['method']]: string } = {
  'code-table': 'fixture units of the code',
  'en-806-3': 'EN 806-3 loading units',
  'own-table': 'a table of the job’s own',
};
