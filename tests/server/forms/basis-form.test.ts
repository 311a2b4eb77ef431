import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Basis, Job } from '../../../engine/job/job.ts';
import { readBasisForm } from '../../../server/forms/basis-form.ts';
import type { FormFields } from '../../../server/forms/form-fields.ts';
import { BasisFields } from '../../../views/parts/basis-form.tsx';
import { arbitraryBasis } from '../../arbitrary/job.ts';
import { readSmallJob } from '../small-job.ts';

const entities: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  '#34': '"',
  '#39': "'",
};

function decoded(text: string): string {
  return text.replace(/&(amp|lt|gt|quot|#34|#39);/g, (_all, name: string) => entities[name]!);
}

/** What a browser would send of the basis form of a job, left as it is. */
function sentForm(job: Job): FormFields {
  const html = BasisFields({ job }) as string;
  const sent: Record<string, string> = {};
  for (const [, name, value] of html.matchAll(/<input [^>]*?name="([^"]+)"[^>]*? value="([^"]*)"/g)) {
    sent[name!] = decoded(value!);
  }
  for (const [, name, value] of html.matchAll(/<textarea [^>]*?name="([^"]+)"[^>]*>([^<]*)<\/textarea>/g)) {
    sent[name!] = decoded(value!);
  }
  for (const [, name, options] of html.matchAll(/<select [^>]*?name="([^"]+)"[^>]*>(.*?)<\/select>/gs)) {
    sent[name!] = /<option value="([^"]*)" selected/.exec(options!)?.[1] ?? 'nothing selected';
  }
  return sent;
}

/** Equivalent lengths are what a basis has that does not say. */
function normal({ fittings, ...rest }: Basis): Basis {
  return fittings === 'loss-coefficient' ? { ...rest, fittings } : rest;
}

/** A form trims what is typed into it; a name of blanks alone is none. */
const kept = arbitraryBasis.filter(
  ({ demand }) =>
    demand?.method !== 'own-table' || (demand.name === demand.name.trim() && demand.name !== ''),
);

describe('the basis form', () => {
  it('keeps every basis that it shows', async () => {
    const small = await readSmallJob();
    await fc.assert(
      fc.property(kept, fc.constantFrom('us' as const, 'si' as const), (basis, units) => {
        const sent = sentForm({ ...small, basis, units });
        expect(readBasisForm(sent, units)).toEqual({ ok: true, value: { units, basis: normal(basis) } });
      }),
      { numRuns: 300 },
    );
  });

  it('refuses another way to count fittings', async () => {
    const sent = sentForm(await readSmallJob());
    expect(readBasisForm({ ...sent, fittings: 'by eye' }, 'us')).toMatchObject({
      ok: false,
      problems: { fittings: expect.stringContaining('equivalent-length, loss-coefficient') },
    });
  });
});
