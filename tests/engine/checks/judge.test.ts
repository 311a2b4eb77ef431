import { expect, it } from 'vitest';
import { psi, reportOf } from '../../jobs/written-job.ts';
import { quiet, quietBut } from './findings-of.ts';

it('finds nothing where nothing is wrong', () => {
  const { findings, passes } = reportOf(quiet);
  expect(findings).toEqual([]);
  expect(passes).toBe(true);
});

it('puts errors before warnings before notes, and fails a job on its errors alone', () => {
  const { findings, passes } = reportOf(
    quietBut(
      { branch: { size: '3/8', length: { typed: '2000 ft', si: 609.6 } }, service: { fittings: [] } },
      [{ ...quiet.schemes[0]!.runs[0]!, id: 'stub', from: 'service', fittings: [] }],
    ),
  );
  const severities = findings.map(({ severity }) => severity);
  expect(severities).toEqual([...severities].sort((one, other) => rank(one) - rank(other)));
  expect(new Set(severities).size).toBeGreaterThan(1);
  expect(passes).toBe(false);
});

it('passes a job that has notes only', () => {
  const { findings, passes } = reportOf(
    quietBut({}, [{ ...quiet.schemes[0]!.runs[0]!, id: 'stub', from: 'service', fittings: [] }]),
  );
  expect(findings.map(({ code }) => code)).toEqual(['dead-end']);
  expect(passes).toBe(true);
});

it('gives every finding a source that somebody can look up', () => {
  const high = quietBut({}, [], {
    supply: { kind: 'static', elevation: psi(0), low: psi(90), high: psi(90) },
  });
  for (const { source } of reportOf(high).findings) {
    const document = 'table' in source ? source.table.source : source.source;
    expect(document.title.length).toBeGreaterThan(3);
  }
});

function rank(severity: string): number {
  return ['error', 'warning', 'note'].indexOf(severity);
}
