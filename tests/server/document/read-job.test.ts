import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseRunLine } from '../../../engine/job/parse-run-line.ts';
import { readJob } from '../../../server/document/read-job.ts';
import { quantity } from '../../arbitrary/quantity.ts';
import { smallJob } from './small-job.ts';

type Spoiled = ReturnType<typeof structuredClone<typeof smallJob>> & Record<string, unknown>;

/** The small job after `spoil` has been at it, as text. */
function spoiled(spoil: (job: Record<string, never> & Spoiled) => void): string {
  const job = structuredClone(smallJob) as Record<string, never> & Spoiled;
  spoil(job);
  return JSON.stringify(job);
}

async function problemsOf(file: string | Uint8Array): Promise<readonly string[]> {
  const read = await readJob(file);
  if (read.ok) throw new Error('the file was read');
  for (const problem of read.problems) {
    expect(problem).not.toContain('\n');
    expect(problem.length).toBeLessThan(600);
  }
  return read.problems;
}

/** Sets the value at a path such as `schemes.0.runs.3.length`. */
function setAt(path: string, value: unknown) {
  return (job: object) => {
    const keys = path.split('.');
    let at = job as Record<string, unknown>;
    for (const key of keys.slice(0, -1)) at = at[key] as Record<string, unknown>;
    at[keys.at(-1)!] = value;
  };
}

const curve = 'schemes.0.runs.1.end.curve';

describe('readJob', () => {
  it('reads quantities and run lines', async () => {
    const read = await readJob(JSON.stringify(smallJob));
    if (!read.ok) throw new Error(read.problems.join('\n'));
    expect(read.job.supply).toEqual({
      kind: 'static',
      elevation: quantity('0 ft', 'length'),
      low: quantity('50 psi', 'pressure'),
      high: quantity('70 psi', 'pressure'),
    });
    const line = parseRunLine("1/2 PEX 18' up 9' 2 ells to LAV cold");
    expect(line.ok && read.job.schemes[0]?.runs[2]).toEqual({
      id: 'B1',
      from: 'S2',
      ...(line.ok ? line.run : {}),
    });
    expect(read.job.schemes[0]?.runs[1]?.end).toMatchObject({
      device: 'filter',
      curve: [{ flow: { typed: '5 gpm' } }, {}],
    });
    expect(read.job).not.toHaveProperty('note');
  });

  it('reads bytes, with or without a byte order mark', async () => {
    const text = JSON.stringify(smallJob);
    const plain = await readJob(text);
    expect(plain.ok).toBe(true);
    expect(await readJob(Buffer.from(text))).toEqual(plain);
    expect(await readJob(`\ufeff${text}`)).toEqual(plain);
    expect(await readJob(Buffer.from(`\ufeff${text}`))).toEqual(plain);
  });

  it('keeps markup in names as text', async () => {
    const name = '<script>alert(1)</script> & "co"';
    const read = await readJob(spoiled(setAt('fixtures.0.name', name)));
    expect(read.ok && read.job.fixtures[0]?.name).toBe(name);
  });

  it.each<[string, unknown, string]>([
    [
      'schemes.0.runs.1.length',
      '62 psi',
      'schemes[0].runs[1] (S2) length: "62 psi" is a pressure; expected a length in',
    ],
    [
      'schemes.0.runs.1.length',
      '-6 ft',
      'schemes[0].runs[1] (S2) length: "-6 ft" is not at or above zero; expected a length',
    ],
    [
      'schemes.0.runs.1.length',
      '99999 ft',
      '(S2) length: "99999 ft" is not within -3000 to 3000 m; expected a length',
    ],
    [
      'schemes.0.runs.1.length',
      '1e308 ft',
      '(S2) length: "1e308 ft" is written with a power of ten; expected a length',
    ],
    ['schemes.0.runs.1.length', 'NaN', '(S2) length: "NaN" does not begin with a number; expected a length'],
    [
      'schemes.0.runs.1.length',
      18,
      '(S2) length: 18 came; expected a length in ft, in, m or mm, such as "12 ft 6 in", as text',
    ],
    ['schemes.0.runs.1.length', null, '(S2) length: null came; expected a length'],
    ['schemes.0.runs.1.length', undefined, '(S2) length is missing; expected a length'],
    [
      'schemes.0.runs.1.length',
      '9'.repeat(61),
      '(S2) length: "9999999999999999999999999999999999999999..." came; expected a length',
    ],
    [
      'schemes.0.runs.1.size',
      'a good size',
      '(S2) size: "a good size" came; expected a nominal size, such as "3/4"',
    ],
    [
      'schemes.0.runs.1.material',
      'lead',
      '(S2) material: "lead" came; expected material of the pipe, one of pex, copper-k',
    ],
    ['schemes.0.runs.1.joint', 'glue', '(S2) joint: "glue" came; expected'],
    [
      'schemes.0.runs.1.colour',
      'red',
      '(S2): unknown field "colour"; expected an object with the fields id, from, size',
    ],
    [
      'schemes.0.runs.1.fittings.0.kind',
      'bend',
      '(S2) fittings[0].kind: "bend" came; expected kind of the fitting, one of ell',
    ],
    [
      'schemes.0.runs.1.fittings.0.count',
      0,
      '(S2) fittings[0].count: 0 came; expected how many of it, a whole number from 1 to 1000',
    ],
    ['schemes.0.runs.1.fittings.0.count', 1001, 'a whole number from 1 to 1000'],
    ['schemes.0.runs.1.fittings.0.count', 1.5, 'a whole number from 1 to 1000'],
    [
      'schemes.0.runs.1.fittings',
      Array(51).fill({ kind: 'ell', count: 1 }),
      '(S2) fittings: a list of 51 entries came; expected at most 50',
    ],
    [
      'schemes.0.runs.1.end',
      { device: 'pump' },
      '(S2) end.device: "pump" came; expected a device, one of meter, reducing-valve',
    ],
    [
      'schemes.0.runs.1.end',
      { device: 'heater', type: 'gas' },
      '(S2) end.type: "gas" came; expected type of heater, one of storage, tankless',
    ],
    ['schemes.0.runs.1.end', { device: 'meter' }, '(S2) end.size is missing; expected a nominal size'],
    [
      'schemes.0.runs.1.end',
      { device: 'manifold', size: '1', ports: 301, valved: true },
      '(S2) end.ports: 301 came; expected number of ports, a whole number from 1 to 300',
    ],
    [
      'schemes.0.runs.1.end',
      { device: 'mixing-valve', cv: 0 },
      '(S2) end.cv: 0 came; expected a flow coefficient from 0.000001 to 10000',
    ],
    [
      'schemes.0.runs.1.end',
      { device: 'mixing-valve', cv: 5e-324 },
      '(S2) end.cv: 5e-324 came; expected a flow coefficient from 0.000001 to 10000',
    ],
    [
      'schemes.0.runs.1.end',
      { fixture: 'LAV', inlet: 'warm' },
      '(S2) end.inlet: "warm" came; expected which inlet, one of cold, hot',
    ],
    ['schemes.0.runs.1.end', { fixture: 'LAV' }, '(S2) end.inlet is missing'],
    ['schemes.0.runs.1.end', 'LAV', `(S2) end: "LAV" came; expected a fixture's inlet or a device`],
    [
      `${curve}.1.flow`,
      '5 gpm',
      '(S2) end.curve[1].flow: "5 gpm" is not more than "5 gpm" before it; expected flows that rise',
    ],
    [`${curve}.1.loss`, '-1 psi', '(S2) end.curve[1].loss: "-1 psi" is not within 0 to 400 psi'],
    [
      curve,
      [{ flow: '0 gpm', loss: '5 psi' }],
      '(S2) end.curve[0].flow: "0 gpm" is the only point of the curve; expected a point with flow',
    ],
    [curve, [], '(S2) end.curve: an empty list came; expected at least one point'],
    [
      'schemes.0.runs.2.line',
      "1/2 PEX 18' op 9'",
      'schemes[0].runs[2] (B1) line: "op" stands where up, down',
    ],
    ['schemes.0.runs.2.line', '1/2 PEX 18 psi', '(B1) line: "18 psi" is a pressure'],
    ['schemes.0.runs.2.line', 7, '(B1) line: 7 came; expected a run in trade words'],
    [
      'schemes.0.runs.2.size',
      '3/4',
      '(B1): unknown field "size"; expected an object with the fields id, from, line, note',
    ],
    [
      'schemes.0.runs.2.id',
      'a b',
      'schemes[0] (A) runs[2].id: "a b" came; expected id of the run: 1 to 64 letters, digits',
    ],
    ['schemes.0.runs.2.id', 'constructor', 'runs[2].id: "constructor" came; expected id of the run'],
    ['schemes.0.runs.2', 5, 'runs[2]: 5 came; expected a run, with a line or with size'],
    ['schemes.0.runs', {}, 'schemes[0] (A) runs: an object came; expected a list of runs'],
    ['schemes.0.runs', undefined, 'schemes[0] (A) runs is missing; expected a list of runs'],
    ['schemes', Array(51).fill(0), 'schemes: a list of 51 entries came; expected at most 50 schemes'],
    [
      'fixtures',
      Array(20_001).fill(0),
      'fixtures: a list of 20001 entries came; expected at most 20000 fixtures',
    ],
    [
      'fixtures.0.kind',
      'bucket',
      'fixtures[0] (LAV) kind: "bucket" came; expected kind of the fixture, one of bathtub',
    ],
    ['fixtures.0.kind', undefined, 'fixtures[0] (LAV) kind is missing; expected kind of the fixture'],
    ['fixtures.0.use', 'secret', 'fixtures[0] (LAV) use: "secret" came; expected'],
    ['fixtures.0.count', -1, 'fixtures[0] (LAV) count: -1 came; expected'],
    ['fixtures.0.count', '1', 'fixtures[0] (LAV) count: "1" came; expected'],
    ['fixtures.0.flow', '0 gpm', 'fixtures[0] (LAV) flow: "0 gpm" is not above zero; expected a flow'],
    [
      'fixtures.0.name',
      '',
      'fixtures[0] (LAV) name: "" came; expected name of the fixture, a text of 1 to 200',
    ],
    ['fixtures.0.name', 'x'.repeat(201), 'a text of 1 to 200 characters'],
    ['fixtures.0.name', 'a\u0000b', 'fixtures[0] (LAV) name: "a\\u0000b" came; expected'],
    ['fixtures.0.name', 'a\ud800b', 'fixtures[0] (LAV) name: "a\\ud800b" came; expected'],
    ['fixtures.0.continuous', 'yes', 'fixtures[0] (LAV) continuous: "yes" came; expected true or false'],
    ['levels.0.elevation', '60 F', 'levels[0] (L1) elevation: "60 F" is a temperature; expected a length'],
    ['name', '', 'name: "" came; expected name of the job'],
    ['note', 'x'.repeat(4001), 'note: "xxxx'],
    ['units', 'metric', `units: "metric" came; expected the reader's system of units, one of us, si`],
    ['basis.profile', 'nowhere-1900', 'basis.profile: "nowhere-1900" came; expected'],
    [
      'basis.coldTemperature',
      '20 F',
      'basis.coldTemperature: "20 F" is not within 32 to 212 F; expected a temperature',
    ],
    ['basis.hotTemperature', '220 F', 'basis.hotTemperature: "220 F" is not within 32 to 212 F'],
    [
      'basis.fittingAllowancePercent',
      201,
      'basis.fittingAllowancePercent: 201 came; expected a percentage from 0 to 200',
    ],
    ['basis.fittingAllowancePercent', -1, 'a percentage from 0 to 200'],
    ['basis.velocityCold', '0 ft/s', 'basis.velocityCold: "0 ft/s" is not above zero'],
    ['basis', undefined, 'basis is missing; expected an object with the fields profile'],
    [
      'supply.kind',
      'rain',
      'supply.kind: "rain" came; expected a supply whose kind is static, flow-test or well',
    ],
    ['supply.low', '401 psi', 'supply.low: "401 psi" is not within 0 to 400 psi'],
    [
      'supply.residual',
      '40 psi',
      'supply: unknown field "residual"; expected an object with the fields kind, elevation, low, high',
    ],
    ['chosen', undefined, 'chosen is missing; expected'],
    ['extra', 1, 'the job: unknown field "extra"; expected an object with the fields format'],
  ])('refuses case %# at %s', async (path, value, sentence) => {
    const problems = await problemsOf(spoiled(setAt(path, value)));
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(sentence);
  });

  it.each([
    ['size', 'end', 'material', 'from', 'rise', 'joint'],
    ['material', 'length', 'size', 'id'],
  ])('tells the shape that was meant however many of its fields are wrong', async (...fields) => {
    const problems = await problemsOf(
      spoiled((job) => {
        for (const field of fields) setAt(`schemes.0.runs.1.${field}`, 5)(job);
      }),
    );
    expect(problems).toHaveLength(fields.length);
    for (const problem of problems) expect(problem).not.toContain('line');
  });

  it('tells at most twenty problems and counts the others', async () => {
    const fixture = { ...smallJob.fixtures[0], kind: 'bucket' };
    const problems = await problemsOf(spoiled(setAt('fixtures', Array(27).fill(fixture))));
    expect(problems).toHaveLength(21);
    expect(problems[20]).toBe('and 7 more');
  });

  it('is done soon with a file of nothing but faults', async () => {
    const scheme = `{"id":"A","name":"A","runs":[${'0,'.repeat(199_999)}0]}`;
    const text = JSON.stringify({ ...smallJob, schemes: [] }).replace(
      '"schemes":[]',
      `"schemes":[${Array(40).fill(scheme).join(',')}]`,
    );
    const start = performance.now();
    const problems = await problemsOf(text);
    expect(problems).toHaveLength(21);
    expect(problems[20]).toMatch(/^and at least \d+ more$/);
    expect(performance.now() - start).toBeLessThan(10_000);
  });

  it.each<[string, string | Uint8Array, string]>([
    ['an empty file', '', 'the file is empty; expected a job file'],
    ['nothing but space', ' \n ', 'the file is empty; expected a job file'],
    ['no bytes', new Uint8Array(0), 'the file is empty; expected a job file'],
    ['prose', 'Dear Sir', 'line 1, column 1: "Dear Sir" stands where a value was expected'],
    ['a list', '[]', 'the file holds no object in braces; expected a job'],
    ['a number', '7', 'the file holds no object in braces; expected a job'],
    ['another format', '{"format":"x"}', 'format: "x" came; expected "hightap-job", the mark of a job file'],
    ['no format', '{}', 'format is missing; expected "hightap-job", the mark of a job file'],
    ['UTF-16 with a mark', Buffer.from('\ufeff{}', 'utf16le'), 'the file is UTF-16 text; expected UTF-8'],
    ['UTF-16 without', Buffer.from('{}', 'utf16le'), 'the file is UTF-16 text; expected UTF-8'],
    ['big-endian UTF-16', Buffer.from('{}', 'utf16le').swap16(), 'the file is UTF-16 text; expected UTF-8'],
    [
      'bytes that are no text',
      Buffer.from([0x7b, 0xc3, 0x28]),
      'the file holds bytes that are not UTF-8 text; expected a job file in UTF-8',
    ],
    [
      '100,000 brackets',
      '['.repeat(100_000),
      'line 1, column 33: nested deeper than the 32 levels that a job may have',
    ],
    [
      'a deep object',
      '{"a":'.repeat(100_000),
      'line 1, column 161: nested deeper than the 32 levels that a job may have',
    ],
    ['a list without end', `{"runs":[${'0,'.repeat(300_000)}`, 'runs has more than 200000 entries'],
  ])('refuses %s', async (_, file, sentence) => {
    expect(await problemsOf(file)).toEqual([sentence]);
  });

  it('refuses 50 MB by its size, before reading it', async () => {
    const start = performance.now();
    expect(await problemsOf(Buffer.alloc(50_000_000, '['))).toEqual([
      'the file has 50.0 MB; expected a job of at most 20 MB',
    ]);
    expect(await problemsOf('['.repeat(50_000_000))).toEqual([
      'the file has 50.0 MB; expected a job of at most 20 MB',
    ]);
    expect(performance.now() - start).toBeLessThan(2000);
  });

  it('names line and column where a file is cut off, wherever that is', async () => {
    const text = JSON.stringify(smallJob, null, 2);
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 1, max: text.length - 1 }), async (length) => {
        const cut = text.slice(0, length);
        const lines = cut.split('\n');
        const [problem] = await problemsOf(cut);
        expect(problem).toMatch(/^line \d+, column \d+: /);
        if (problem!.includes('cut off')) {
          expect(problem).toContain(
            `line ${lines.length}, column ${lines.at(-1)!.length + 1}: the file ends where`,
          );
        }
      }),
      { numRuns: 100 },
    );
  });

  it.each(['__proto__', 'constructor', 'prototype'])('refuses the field %s anywhere', async (key) => {
    const inside = spoiled((job) => setAt('fixtures.0.mark', 1)(job)).replace('"mark"', `"${key}"`);
    expect((await problemsOf(inside))[0]).toBe(`fixtures[0] has the field "${key}", which no job may have`);
    const escaped = inside.replace(
      `"${key}"`,
      `"\\u${key.charCodeAt(0).toString(16).padStart(4, '0')}${key.slice(1)}"`,
    );
    expect((await problemsOf(escaped))[0]).toBe(`fixtures[0] has the field "${key}", which no job may have`);
    expect(({} as Record<string, unknown>).mark).toBeUndefined();
  });

  it('refuses a field given twice', async () => {
    const twice = JSON.stringify(smallJob).replace('"chosen":"A"', '"chosen":"A","chosen":"B"');
    expect(await problemsOf(twice)).toEqual(['the job has the field "chosen" twice; expected it once']);
  });

  it.each([
    [
      3,
      'version: the file was written by a newer Hightap (version 3); expected a whole number from 1 to 2, so update this one',
    ],
    [1e300, 'written by a newer Hightap'],
    [0, 'version: 0 came; expected a whole number from 1 to 2'],
    [-1, 'version: -1 came; expected a whole number from 1 to 2'],
    ['1', 'version is no whole number; expected a whole number from 1 to 2'],
    [1.5, 'version is no whole number; expected a whole number from 1 to 2'],
    [undefined, 'version is missing; expected a whole number from 1 to 2'],
  ])('refuses version %j', async (version, sentence) => {
    const problems = await problemsOf(spoiled(setAt('version', version)));
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(sentence);
  });

  it('reads a file of version 1, which lacks the fields that version 2 may have', async () => {
    const read = await readJob(spoiled(setAt('version', 1)));
    expect(read.ok && read.job.version).toBe(2);
  });

  it('migrates an older version before it is checked', async () => {
    const older = spoiled((job) => {
      setAt('version', 0)(job);
      setAt('title', 'Old cabin')(job);
      setAt('name', undefined)(job);
    });
    const migrations = [
      {
        from: 0,
        up: ({ title, ...job }: { readonly [field: string]: unknown }) => ({ ...job, name: title }),
      },
      { from: 1, up: (job: { readonly [field: string]: unknown }) => job },
    ];
    const read = await readJob(older, { migrations });
    expect(read.ok && read.job).toMatchObject({ version: 2, name: 'Old cabin' });
    expect((await readJob(older)).ok).toBe(false);
  });

  it('answers with a sentence to any bytes and any JSON', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(fc.uint8Array({ minLength: 1 }), fc.json(), fc.string({ unit: 'binary', minLength: 1 })),
        async (file) => {
          expect((await problemsOf(file)).length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('answers to a job with any one value replaced', async () => {
    const paths: string[] = [];
    const walk = (value: unknown, path: string): void => {
      if (path !== '') paths.push(path);
      if (typeof value === 'object' && value !== null) {
        for (const [key, inner] of Object.entries(value)) walk(inner, path === '' ? key : `${path}.${key}`);
      }
    };
    walk(smallJob, '');
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...paths), fc.jsonValue(), async (path, value) => {
        const read = await readJob(spoiled(setAt(path, value)));
        if (!read.ok) expect(read.problems.join(' ')).toMatch(/expected|nested|which no job may have/);
      }),
      { numRuns: 500 },
    );
  });
});
