import { describe, expect, it } from 'vitest';
import type { JobChange } from '../../../engine/compare/job-changes.ts';
import { changeSentences, changeSummary } from '../../../views/text/change-text.ts';

const ofRun = (id: string, scheme = 'S1') => ({ way: ['schemes', scheme, 'runs', id], list: 'runs' });
const ofFixture = { way: ['fixtures', 'SH'], list: 'fixtures', name: 'Rain shower' };

const cases: readonly (readonly [words: string, change: JobChange])[] = [
  [
    'Run ER: 1 becomes 3/4',
    { change: 'field', subject: ofRun('ER'), field: 'size', before: '1', after: '3/4' },
  ],
  [
    'Run ER of scheme S2: length 18 ft becomes 20 ft',
    { change: 'field', subject: ofRun('ER', 'S2'), field: 'length', before: '18 ft', after: '20 ft' },
  ],
  [
    'Run ER: PEX SDR-9 becomes copper type L',
    { change: 'field', subject: ofRun('ER'), field: 'material', before: 'pex', after: 'copper-l' },
  ],
  ['Run ER: rise 9 ft added', { change: 'field', subject: ofRun('ER'), field: 'rise', after: '9 ft' }],
  [
    'Run ER: to SH hot left out',
    { change: 'field', subject: ofRun('ER'), field: 'end', before: 'to SH hot' },
  ],
  [
    "Run ER added: 1/2 PEX 10' to SH hot",
    { change: 'added', subject: ofRun('ER'), words: "1/2 PEX 10' to SH hot" },
  ],
  ['Run ER taken out: 1/2 PEX', { change: 'removed', subject: ofRun('ER'), words: '1/2 PEX' }],
  ['Run ER was called E', { change: 'renamed', subject: ofRun('ER'), from: 'E' }],
  ['Run ER moved in its list', { change: 'moved', subject: ofRun('ER') }],
  ['Runs in another order', { change: 'reordered', subject: { way: ['schemes', 'S1', 'runs'] } }],
  [
    'Fixture Rain shower (SH): flow 2.5 gpm becomes 3 gpm',
    { change: 'field', subject: ofFixture, field: 'flow', before: '2.5 gpm', after: '3 gpm' },
  ],
  ['Fixture Rain shower (SH) taken out', { change: 'removed', subject: ofFixture }],
  [
    'Supply: low 55 psi becomes 60 psi',
    { change: 'field', subject: { way: ['supply'] }, field: 'low', before: '55 psi', after: '60 psi' },
  ],
  [
    'Basis: friction Hazen-Williams becomes Darcy-Weisbach',
    {
      change: 'field',
      subject: { way: ['basis'] },
      field: 'friction',
      before: 'hazen-williams',
      after: 'darcy-weisbach',
    },
  ],
  [
    'Job: name A becomes B',
    { change: 'field', subject: { way: [] }, field: 'name', before: 'A', after: 'B' },
  ],
  [
    'Job: note changed',
    {
      change: 'field',
      subject: { way: [] },
      field: 'note',
      before: `${'a'.repeat(80)}b`,
      after: 'a'.repeat(90),
    },
  ],
  [
    'Site readings R1: pressure 50 psi becomes 52 psi',
    {
      change: 'field',
      subject: { way: ['siteReadings', 'R1'], list: 'siteReadings' },
      field: 'pressure',
      before: '50 psi',
      after: '52 psi',
    },
  ],
];

describe('a change in words', () => {
  it.each(cases)('%s', (words, change) => {
    expect(changeSentences([change], 'S1')).toEqual([words]);
  });

  it('gathers the fields of one thing in one sentence', () => {
    const field = (name: string, before: string, after: string): JobChange => ({
      change: 'field',
      subject: ofRun('ER'),
      field: name,
      before,
      after,
    });
    expect(changeSentences([field('size', '1', '3/4'), field('length', '18 ft', '20 ft')], 'S1')).toEqual([
      'Run ER: 1 becomes 3/4, length 18 ft becomes 20 ft',
    ]);
  });

  it('fits on one line as a summary, with how many more there are', () => {
    const moved: JobChange = { change: 'moved', subject: ofRun('ER') };
    expect(changeSummary([moved], 'S1')).toBe('Run ER moved in its list');
    expect(changeSummary([moved, moved, moved], 'S1')).toBe('Run ER moved in its list; and 2 more');
    const long: JobChange = { change: 'removed', subject: ofRun('ER'), words: 'x'.repeat(500) };
    const summary = changeSummary([long, moved], 'S1');
    expect(summary).toHaveLength(140);
    expect(summary).toMatch(/…; and 1 more$/);
    expect(changeSummary([], 'S1')).toBe('Nothing changed');
  });
});
