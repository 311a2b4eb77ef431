import { BasisFields, basisForm } from '../../views/parts/basis-form.tsx';
import { JobFields, jobForm as jobFormId } from '../../views/parts/job-head.tsx';
import { SchemeFields, schemeForm as schemeFormId } from '../../views/parts/scheme-strip.tsx';
import { SupplyFields, supplyForm } from '../../views/parts/supply-form.tsx';
import { changed, present } from '../edits/edited.ts';
import { chooseScheme } from '../edits/scheme-edits.ts';
import { readBasisForm } from '../forms/basis-form.ts';
import { jobForm, schemeForm } from '../forms/job-form.ts';
import { readForm } from '../forms/read-form.ts';
import { readSupplyForm } from '../forms/supply-form.ts';
import { type EditAction, withForm } from './edit-action.ts';

/** The forms of supply, basis and the job itself. */
export const jobActions: readonly EditAction[] = [
  {
    path: '/supply',
    apply: (job, fields) =>
      withForm(readSupplyForm(fields, job.units, job.supply.kind), (supply) => changed({ ...job, supply })),
    fields: (bench, _place, refused) => (<SupplyFields job={bench.job} refused={refused} />) as string,
    form: () => supplyForm,
    anchor: () => 'supply-section',
  },
  {
    path: '/basis',
    apply: (job, fields) =>
      withForm(readBasisForm(fields, job.units), (basis) => changed({ ...job, ...basis })),
    fields: (bench, _place, refused) => (<BasisFields job={bench.job} refused={refused} />) as string,
    form: () => basisForm,
    anchor: () => 'basis-section',
  },
  {
    path: '/scheme',
    apply: (job, fields) => withForm(readForm(schemeForm, fields), ({ chosen }) => chooseScheme(job, chosen)),
    fields: (bench, _place, refused) => (<SchemeFields job={bench.job} refused={refused} />) as string,
    form: () => schemeFormId,
    anchor: () => 'main',
  },
  {
    path: '/job',
    apply: (job, fields) =>
      withForm(readForm(jobForm, fields), ({ name, note, chosen }) => {
        const { note: _old, ...rest } = job;
        return changed({ ...rest, name, chosen, ...present({ note: note === '' ? undefined : note }) });
      }),
    fields: (bench, _place, refused) => (<JobFields job={bench.job} refused={refused} />) as string,
    form: () => jobFormId,
    anchor: () => 'job-section',
  },
];
