import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Finding, FindingCode, Mend } from '../../../engine/index.ts';
import type { Table } from '../../../tables/table.ts';
import { findingText } from '../../../views/text/finding-text.ts';
import { readSmallJob } from '../../server/small-job.ts';

const table: Table = {
  kind: 'value',
  id: 'test/limit',
  title: 'A limit',
  source: { id: 'test', title: 'A made-up rule book', edition: '1900' },
  at: { section: '7.2', checkedOn: '2026-11-25' },
  verified: 'memory',
  unit: 'psi',
  printed: 80,
};
const source = { value: 551581, printed: 80, unit: 'psi', table, verified: 'memory' } as const;
const common = { severity: 'warning', source } as const;
const psi = 6894.757293168361;

/** One of each code, with figures that are easy to read in US units: 10 psi, 20 psi, 5 ft/s, 8 gpm, 100 ft. */
const findings: { readonly [code in FindingCode]: Extract<Finding, { code: code }> } = {
  'residual-short': {
    ...common,
    code: 'residual-short',
    fixture: 'SH',
    inlet: 'hot',
    run: 'SHH',
    residual: 10 * psi,
    required: 20 * psi,
  },
  'static-high': { ...common, code: 'static-high', run: 'SV', pressure: 90 * psi, limit: 80 * psi },
  'velocity-high': { ...common, code: 'velocity-high', run: 'T1', velocity: 3.048, limit: 2.4384 },
  'service-small': { ...common, code: 'service-small', run: 'SV', size: '1/2', least: '3/4' },
  'fixture-supply-small': {
    ...common,
    code: 'fixture-supply-small',
    run: 'SHC',
    fixture: 'SH',
    size: '3/8',
    least: '1/2',
  },
  'manifold-over-capacity': {
    ...common,
    code: 'manifold-over-capacity',
    run: 'M',
    size: '3/4',
    flow: 2e-3,
    limit: 1e-3,
  },
  'manifold-ports-short': { ...common, code: 'manifold-ports-short', run: 'M', ports: 6, used: 8 },
  'home-run-long': { ...common, code: 'home-run-long', run: 'H', length: 30.48, limit: 18.288 },
  'home-run-pressure-low': {
    ...common,
    code: 'home-run-pressure-low',
    run: 'H',
    pressure: 30 * psi,
    limit: 35 * psi,
  },
  'meter-over-maximum': {
    ...common,
    code: 'meter-over-maximum',
    run: 'SV',
    size: '5/8',
    flow: 2e-3,
    limit: 1e-3,
  },
  'pump-short': { ...common, code: 'pump-short', run: 'SV', flow: 2e-3, limit: 1e-3 },
  'hot-length-long': {
    ...common,
    code: 'hot-length-long',
    run: 'SHH',
    fixture: 'SH',
    length: 30.48,
    limit: 15.24,
  },
  'hot-volume-large': {
    ...common,
    code: 'hot-volume-large',
    run: 'SHH',
    fixture: 'SH',
    volume: 3.785411784e-3,
    limit: 1.892705892e-3,
  },
  'expansion-uncontrolled': { ...common, code: 'expansion-uncontrolled', run: 'SV', heater: 'WH' },
  'hot-cold-apart': {
    ...common,
    code: 'hot-cold-apart',
    fixture: 'SH',
    cold: 40 * psi,
    hot: 20 * psi,
    limit: 15 * psi,
  },
  'rating-exceeded': {
    ...common,
    code: 'rating-exceeded',
    run: 'T1',
    pressure: 120 * psi,
    temperature: 355.372,
    limit: 100 * psi,
  },
  'rating-unknown': { ...common, code: 'rating-unknown', run: 'T1', temperature: 355.372 },
  'shut-off-missing': { ...common, code: 'shut-off-missing', where: 'main', run: 'SV' },
  'arrester-missing': { ...common, code: 'arrester-missing', run: 'KSC', fixture: 'KS' },
  'arrester-small': { ...common, code: 'arrester-small', run: 'KSC', size: 'A', least: 'B', units: 20 },
  'laws-apart': {
    ...common,
    code: 'laws-apart',
    run: 'SHH',
    hazenWilliams: 10 * psi,
    darcyWeisbach: 12 * psi,
  },
  'pressure-negative': { ...common, code: 'pressure-negative', run: 'SHH', pressure: -5 * psi },
  'curve-exceeded': { ...common, code: 'curve-exceeded', run: 'SV', flow: 2e-3, limit: 1e-3 },
  'height-mismatch': {
    ...common,
    code: 'height-mismatch',
    run: 'SHC',
    fixture: 'SH',
    piped: 3.048,
    scheduled: 6.096,
  },
  'static-low': { ...common, code: 'static-low', run: 'SV', pressure: 240e3, limit: 275.79e3 },
  'street-beyond-test': { ...common, code: 'street-beyond-test', run: 'SV', flow: 3e-3, limit: 2e-3 },
  'material-cold-only': {
    ...common,
    code: 'material-cold-only',
    run: 'H1',
    material: 'pvc',
    temperature: 333.15,
  },
  'make-up-unprotected': { ...common, code: 'make-up-unprotected', fixtures: ['HB'] },
  'dead-end': { ...common, code: 'dead-end', run: 'T2' },
  'hot-water-scalds': { ...common, code: 'hot-water-scalds', temperature: 333.15, limit: 322.039 },
  'hose-outlets': { ...common, code: 'hose-outlets', fixtures: ['HB'] },
  'demand-beyond-table': {
    ...common,
    code: 'demand-beyond-table',
    run: 'SV',
    unit: 'wsfu',
    units: 6000,
    limit: 5000,
  },
};

describe('findingText', () => {
  it('is tried here with every code that the engine knows', () => {
    const written = readFileSync(new URL('../../../engine/checks/finding.ts', import.meta.url), 'utf8');
    const codes = [...written.matchAll(/readonly code: '([a-z-]+)'/g)].map((match) => match[1]);
    expect(codes.length).toBeGreaterThan(20);
    expect(Object.keys(findings).sort()).toEqual(codes.sort());
  });

  it.each(Object.values(findings).map((finding) => [finding.code, finding] as const))(
    '%s says what, where, what to try, and by which rule',
    async (_code, finding) => {
      const text = findingText(finding, await readSmallJob());
      const place = 'run' in finding ? finding.run : 'fixture' in finding ? 'Rain shower (SH)' : '';
      expect(`${text.what} ${text.tryThis}`).toContain(place);
      expect(text.what).toMatch(/^\S.{15,}[.]$/);
      expect(text.tryThis).toMatch(/^\S.{10,}[.]$/);
      expect(text.source).toBe('A made-up rule book 1900, section 7.2 (from memory, not verified)');
      expect(`${text.what} ${text.tryThis}`).not.toMatch(/undefined|NaN|\[object/);
      if ('limit' in finding) expect(text.what.match(/\d/g)?.length).toBeGreaterThan(1);
    },
  );

  it('gives the figures in the units of the job', async () => {
    const job = await readSmallJob();
    expect(findingText(findings['residual-short'], job).what).toContain(
      'has 10.0 psi left at its hot inlet, run SHH; it needs 20.0 psi',
    );
    expect(findingText(findings['velocity-high'], job).what).toContain(
      '10.0 ft/s; the limit for this pipe and temperature is 8.0 ft/s',
    );
    expect(findingText(findings['residual-short'], { ...job, units: 'si' }).what).toContain('69 kPa');
    expect(findingText(findings['pressure-negative'], job).what).toContain('−5.0 psi');
  });

  it('calls a caution of the trade a caution, not a limit that is allowed', async () => {
    const { what } = findingText(findings['hot-water-scalds'], await readSmallJob());
    expect(what).toContain('the usual caution starts at 120 °F');
    expect(what).not.toContain('allowed');
  });

  it('suits irrigation as well as a hose bibb', async () => {
    const { what, tryThis } = findingText(findings['hose-outlets'], await readSmallJob());
    expect(what).toContain('from a hose or from the ground');
    expect(what).not.toContain('pool');
    expect(tryThis).toContain('for irrigation the backflow assembly');
  });

  it.each<[Mend, RegExp]>([
    [
      { do: 'larger-pipe', run: 'T1', size: '1-1/4', gain: 3 * psi, mends: true },
      /T1 in 1-1\/4 in\. would gain 3\.0 psi, which is enough/,
    ],
    [{ do: 'larger-pipe', run: 'T1', size: '1-1/4', gain: 3 * psi, mends: false }, /alone is not enough/],
    [
      { do: 'larger-meter', run: 'SV', size: '1', gain: 2 * psi, mends: true },
      /1 in\. meter on run SV would gain 2\.0 psi/,
    ],
    [{ do: 'add-reducing-valve' }, /reducing valve/],
    [{ do: 'add-expansion-tank' }, /expansion tank/],
    [{ do: 'add-shut-off', run: 'SV' }, /shut-off valve on run SV/],
    [{ do: 'add-arrester', run: 'KSC' }, /off KSC in a water hammer arrester/],
  ])('tells what would mend it: %o', async (mend, says) => {
    expect(findingText({ ...findings['residual-short'], mend }, await readSmallJob()).tryThis).toMatch(says);
  });
});
