import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Defect, DefectCode } from '../../../engine/index.ts';
import { defectText } from '../../../views/text/defect-text.ts';

const defects: { readonly [code in DefectCode]: Extract<Defect, { code: code }> } = {
  'no-such-scheme': { code: 'no-such-scheme', scheme: 'Q1' },
  'no-runs': { code: 'no-runs', scheme: 'Q1' },
  'run-twice': { code: 'run-twice', run: 'Q1' },
  'run-named-street': { code: 'run-named-street', run: 'street' },
  'fixture-twice': { code: 'fixture-twice', fixture: 'Q1' },
  'level-twice': { code: 'level-twice', level: 'Q1' },
  'group-twice': { code: 'group-twice', group: 'Q1' },
  'scheme-twice': { code: 'scheme-twice', scheme: 'Q1' },
  'several-services': { code: 'several-services', runs: ['Q1', 'Q2'] },
  'parent-missing': { code: 'parent-missing', run: 'Q1', from: 'Q2' },
  loop: { code: 'loop', runs: ['Q1', 'Q2', 'Q3'] },
  'unknown-size': { code: 'unknown-size', run: 'Q1', size: '7/8', material: 'PEX', sizes: ['1/2', '3/4'] },
  'unknown-device-size': {
    code: 'unknown-device-size',
    run: 'Q1',
    device: 'meter',
    size: '7/8',
    sizes: ['3/4', '1'],
  },
  'joint-mismatch': {
    code: 'joint-mismatch',
    run: 'Q1',
    joint: 'solder',
    material: 'PEX',
    joints: ['expansion'],
  },
  'rise-over-length': { code: 'rise-over-length', run: 'Q1', rise: -6.096, length: 3.048 },
  'fixture-missing': { code: 'fixture-missing', run: 'Q1', fixture: 'Q2' },
  'inlet-missing': { code: 'inlet-missing', run: 'Q1', fixture: 'Q2', side: 'hot' },
  'inlet-unserved': { code: 'inlet-unserved', fixture: 'Q1', side: 'cold' },
  'inlet-served-twice': { code: 'inlet-served-twice', fixture: 'Q1', side: 'cold', runs: ['Q2', 'Q3'] },
  'hot-without-heater': { code: 'hot-without-heater', run: 'Q1', fixture: 'Q2' },
  'cold-below-heater': { code: 'cold-below-heater', run: 'Q1', fixture: 'Q2' },
  'run-after-end': { code: 'run-after-end', run: 'Q1', from: 'Q2' },
  'level-missing': { code: 'level-missing', fixture: 'Q1', level: 'Q2' },
  'place-level-missing': { code: 'place-level-missing', place: 'mechanicalRoom', level: 'Q1' },
  'riser-twice': { code: 'riser-twice', riser: 'Q1' },
  'group-missing': { code: 'group-missing', fixture: 'Q1', group: 'Q2' },
  'flow-test-inverted': { code: 'flow-test-inverted', static: 344738, residual: 413685 },
  'pressures-inverted': { code: 'pressures-inverted', low: 413685, high: 344738 },
};

describe('defectText', () => {
  it('is tried here with every code that the engine knows', () => {
    const written = readFileSync(new URL('../../../engine/network/defect.ts', import.meta.url), 'utf8');
    const codes = [...written.matchAll(/readonly code: '([a-z-]+)'/g)].map((match) => match[1]);
    expect(codes.length).toBeGreaterThan(20);
    expect(Object.keys(defects).sort()).toEqual(codes.sort());
  });

  it.each(Object.values(defects).map((defect) => [defect.code, defect] as const))(
    '%s names every part it is about, in one sentence',
    (_code, defect) => {
      const text = defectText(defect, 'us');
      expect(text).toMatch(/^[A-Z].*\.$/);
      expect(text).not.toMatch(/undefined|NaN/);
      for (const value of Object.values(defect).flat()) {
        if (typeof value === 'string' && /^Q\d|^\d/.test(value)) expect(text).toContain(value);
      }
    },
  );

  it('names every end that nothing can follow, not a fixture alone', () => {
    expect(defectText(defects['run-after-end'], 'us')).toMatch(/fixture, an expansion tank or an arrester/);
  });

  it('gives lengths and pressures in the units of the job', () => {
    expect(defectText(defects['rise-over-length'], 'us')).toContain('20.0 ft in 10.0 ft');
    expect(defectText(defects['pressures-inverted'], 'us')).toContain('60.0 psi, is over the high, 50.0 psi');
    expect(defectText(defects['pressures-inverted'], 'si')).toContain('414 kPa');
  });
});
