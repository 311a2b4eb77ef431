import { describe, expect, it } from 'vitest';
import { readPrices } from '../../../server/document/read-prices.ts';
import { writePrices } from '../../../server/document/write-prices.ts';
import { smallBook } from '../../engine/takeoff/small-book.ts';

const parts = [
  {
    kind: 'tee',
    material: 'pex',
    joint: 'insert-brass',
    sizes: ['1', '3/4', '1/2'],
    each: '6.10',
    hours: 0.3,
  },
  { kind: 'stub-out', sizes: ['1/2'], each: '4.00', hours: 0.1 },
  { kind: 'test-gauge', each: '12', hours: 0.5 },
] as const;

async function problemOf(part: object): Promise<string> {
  const read = await readPrices(JSON.stringify({ ...smallBook, parts: [...parts, part] }));
  if (read.ok) throw new Error('the book was read');
  expect(read.problems).toHaveLength(1);
  return read.problems[0]!;
}

describe('prices of parts', () => {
  it('are read as they were written, and may be left out', async () => {
    const book = { ...smallBook, parts };
    expect(await readPrices(writePrices(book))).toEqual({ ok: true, book });
    expect(writePrices(smallBook)).not.toContain('"parts"');
  });

  it.each<[string, object, string]>([
    [
      'pipe, which has a list of its own',
      { kind: 'pipe' },
      'parts[3].kind: "pipe" came; expected kind of the part',
    ],
    ['a fitting as drawn', { kind: 'ell' }, 'parts[3].kind: "ell" came; expected kind of the part'],
    ['a device', { kind: 'meter' }, 'parts[3].kind: "meter" came; expected kind of the part'],
    ['a joint, which comes with its fitting', { kind: 'crimp-ring' }, 'parts[3].kind: "crimp-ring" came'],
    [
      'a size that is none',
      { kind: 'cap', sizes: ['7/8'] },
      'parts[3].sizes[0]: "7/8" came; expected nominal size',
    ],
    ['no size in the list', { kind: 'cap', sizes: [] }, 'expected a list of 1 to 3 sizes'],
    [
      'a joint without its material',
      { kind: 'cap', joint: 'solder' },
      'parts[3].joint: "solder" came without a material',
    ],
    [
      'a joint that does not join the material',
      { kind: 'cap', material: 'pex', joint: 'solder' },
      'parts[3].joint: "solder" does not join PEX SDR-9; expected one of insert-brass',
    ],
    [
      'an item twice',
      { kind: 'stub-out', sizes: ['1/2'] },
      'parts[3]: stub-out has a price already, at [1] of this list',
    ],
  ])('refuse %s', async (_, part, problem) => {
    expect(await problemOf({ each: '1', hours: 0, ...part })).toContain(problem);
  });
});
