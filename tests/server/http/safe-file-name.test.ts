import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { safeFileName } from '../../../server/http/safe-file-name.ts';

describe('safeFileName', () => {
  it.each([
    ['Three-level house', 'Three-level house.hightap.json'],
    ['../../etc/passwd', 'etcpasswd.hightap.json'],
    ['"; filename="x', 'filenamex.hightap.json'],
    ['Maison à étages', 'Maison a etages.hightap.json'],
    ['水', 'job.hightap.json'],
    ['...', 'job.hightap.json'],
  ])('%s', (name, expected) => {
    expect(safeFileName(name, '.hightap.json')).toBe(expected);
  });

  it('is harmless for any name', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (name) => {
        expect(safeFileName(name, '.json')).toMatch(/^[A-Za-z0-9_-][A-Za-z0-9 ._-]{0,79}\.json$/);
      }),
    );
  });
});
