import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scanJson } from '../../../server/document/scan-json.ts';

function jsonParses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('scanJson', () => {
  it.each([
    ['{"a" 1}', 'line 1, column 6: "1}" stands where ":" was expected'],
    ['{"a":1,}', 'line 1, column 8: "}" stands where a field name in double quotes was expected'],
    ['[1,]', 'line 1, column 4: "]" stands where a value was expected'],
    ['[1\n 2]', 'line 2, column 2: "2]" stands where "," or the end of the list or object was expected'],
    ['{"a":tru}', 'line 1, column 6: "tru}" stands where a value was expected'],
    ["{'a':1}", `line 1, column 2: "'a':1}" stands where a field name in double quotes or "}" was expected`],
    ['[1}', 'line 1, column 3: "}" stands where "," or the end of the list or object was expected'],
    ['{}{}', 'line 1, column 3: "{}" stands where the end of the file was expected'],
    [
      '["a',
      'line 1, column 4: the file ends where the end of the text in double quotes was expected; it seems cut off',
    ],
    ['{"a":', 'line 1, column 6: the file ends where a value was expected; it seems cut off'],
  ])('tells of %j', (text, problem) => {
    expect(scanJson(text)).toEqual([problem]);
  });

  it('names every field that is given twice, by its place', () => {
    expect(scanJson('{"a":[{},{"b":1,"b":2,"\\u0062":3}],"a":0}')).toEqual([
      'a[1] has the field "b" twice; expected it once',
      'a[1] has the field "b" twice; expected it once',
      'the job has the field "a" twice; expected it once',
    ]);
  });

  it('refuses an object of very many fields', () => {
    const fields = Array.from({ length: 101 }, (_, index) => `"f${index}":0`).join(',');
    expect(scanJson(`{${fields}}`)).toEqual(['the job has more than 100 fields']);
  });

  // JSON.parse is the reference for what is JSON; it keeps silent on the rest.
  it('finds fault with just what JSON.parse refuses', () => {
    const piece = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"a"',
      '"b"',
      '1',
      '-',
      '0',
      '.5',
      'e3',
      'null',
      'true',
      ' ',
      '\n',
      '"',
      '\\',
      '\\u00e9',
      '\u0001',
    );
    const text = fc.oneof(
      fc.array(piece, { maxLength: 12 }).map((pieces) => pieces.join('')),
      fc.json(),
      fc.json().chain((json) => fc.nat({ max: json.length }).map((length) => json.slice(0, length))),
    );
    fc.assert(
      fc.property(text, (json) => {
        const problems = scanJson(json).filter((problem) => !/twice|no job may have/.test(problem));
        expect(problems.length === 0).toBe(jsonParses(json));
      }),
      { numRuns: 5000 },
    );
  });
});
