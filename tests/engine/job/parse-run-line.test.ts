import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Run } from '../../../engine/job/job.ts';
import { parseRunLine } from '../../../engine/job/parse-run-line.ts';
import type { RunFields } from '../../../engine/job/print-run-line.ts';
import { quantity } from '../../arbitrary/quantity.ts';
import { arbitraryRun } from '../../arbitrary/run.ts';

const length = (text: string) => quantity(text, 'length');

function parsed(line: string, previous?: Run): RunFields {
  const result = parseRunLine(line, previous === undefined ? {} : { previous });
  if (!result.ok) throw new Error(result.problem);
  return result.run;
}

function problem(line: string): string {
  const result = parseRunLine(line);
  if (result.ok) throw new Error(`${line} was read`);
  return result.problem;
}

describe('metric pipe', () => {
  it.each([
    ['20x2.8 PE-X 5.5 m up 2.7 m 2 ells', '20x2.8', 'pe-x'],
    ['20 x 2.8 PE-X 5.5 m', '20x2.8', 'pe-x'],
    ['20\u00d72.8 pe-x 5.5 m', '20x2.8', 'pe-x'],
    ['20 PE-X S5 5.5 m', '20x1.9', 'pe-x-s5'],
    ['15x1 copper EN 4 m', '15x1', 'copper-en'],
    ['15 copper EN 1057 4 m', '15x1', 'copper-en'],
    ['22 thin copper 4 m', '22x0.9', 'copper-thin'],
    ['26 multilayer 12 ft', '26x3', 'multilayer'],
  ])('%s', (line, size, material) => {
    expect(parseRunLine(line)).toMatchObject({ ok: true, run: { size, material } });
  });

  it('keeps a size that the material lacks, for the check of sizes to name', () => {
    expect(parseRunLine('21 PE-X 5 m')).toMatchObject({ ok: true, run: { size: '21' } });
    expect(parseRunLine('20 PEX 5 m')).toMatchObject({ ok: true, run: { size: '20' } });
  });
});

describe('parseRunLine', () => {
  it.each<[string, RunFields]>([
    [
      "3/4 PEX 18' up 9' 2 ells",
      {
        size: '3/4',
        material: 'pex',
        length: length("18'"),
        rise: length("9'"),
        fittings: [{ kind: 'ell', count: 2 }],
      },
    ],
    [
      "1-1/4 PE 62' down 4' 1 corp stop 1 curb stop",
      {
        size: '1-1/4',
        material: 'pe',
        length: length("62'"),
        rise: length("-4'"),
        fittings: [
          { kind: 'corporation-stop', count: 1 },
          { kind: 'curb-stop', count: 1 },
        ],
      },
    ],
    [
      "1/2 PEX expansion 22' up 3' 4 ells 1 tee to RAIN hot",
      {
        size: '1/2',
        material: 'pex',
        joint: 'expansion',
        length: length("22'"),
        rise: length("3'"),
        fittings: [
          { kind: 'ell', count: 4 },
          { kind: 'tee-branch', count: 1 },
        ],
        end: { fixture: 'RAIN', inlet: 'hot' },
      },
    ],
    [
      '1 1/4" type k copper sweat 12 ft 6 in, rise \u22122 ft, 1 ball valve',
      {
        size: '1-1/4',
        material: 'copper-k',
        joint: 'solder',
        length: length('12 ft 6 in'),
        rise: length('\u22122 ft'),
        fittings: [{ kind: 'ball-valve', count: 1 }],
      },
    ],
  ])('reads %s', (line, run) => {
    expect(parsed(line)).toEqual(run);
  });

  it.each([
    ['2 ells', 'ell'],
    ["2 90's", 'ell'],
    ['2 elbows', 'ell'],
    ['2 90 ells', 'ell'],
    ['2 45s', 'ell-45'],
    ['2 45\u00b0', 'ell-45'],
    ['2 45 ells', 'ell-45'],
    ['2 tees', 'tee-branch'],
    ['2 side tees', 'tee-branch'],
    ['2 through tees', 'tee-run'],
    ['2 tee run', 'tee-run'],
    ['2 couplings', 'coupling'],
    ['2 Ball Valves', 'ball-valve'],
    ['2 gate valves', 'gate-valve'],
    ['2 globes', 'globe-valve'],
    ['2 butterfly valves', 'butterfly-valve'],
    ['2 checks', 'check-valve'],
    ['2 stops', 'compression-stop'],
    ['2 corporation stops', 'corporation-stop'],
    ['2 curb stops', 'curb-stop'],
  ])('knows %s', (words, kind) => {
    expect(parsed(`3/4 PEX 18' ${words}`).fittings).toEqual([{ kind, count: 2 }]);
    expect(parsed(`3/4 PEX 18 ft up 9 in ${words} to A cold`).fittings).toEqual([{ kind, count: 2 }]);
  });

  it.each<[string, RunFields['end']]>([
    ['then meter 3/4', { device: 'meter', size: '3/4' }],
    ['then meter 5/8x3/4', { device: 'meter', size: '5/8x3/4' }],
    ['then prv 60 psi', { device: 'reducing-valve', set: quantity('60 psi', 'pressure') }],
    ['then reducing valve 4.2 bar', { device: 'reducing-valve', set: quantity('4.2 bar', 'pressure') }],
    ['then prv 3/4 60 psi', { device: 'reducing-valve', size: '3/4', set: quantity('60 psi', 'pressure') }],
    [
      'then prv 1-1/4 4.2bar',
      { device: 'reducing-valve', size: '1-1/4', set: quantity('4.2bar', 'pressure') },
    ],
    [
      'then prv 1 62 1/2 psi',
      { device: 'reducing-valve', size: '1', set: quantity('62 1/2 psi', 'pressure') },
    ],
    ['then prv 62 1/2 psi', { device: 'reducing-valve', set: quantity('62 1/2 psi', 'pressure') }],
    ['then backflow rp 1', { device: 'backflow', type: 'reduced-pressure', size: '1' }],
    ['then backflow double check 3/4', { device: 'backflow', type: 'double-check', size: '3/4' }],
    ['then backflow rp', { device: 'backflow', type: 'reduced-pressure' }],
    ['then backflow dc', { device: 'backflow', type: 'double-check' }],
    ['then backflow vented', { device: 'backflow', type: 'dual-check-vented' }],
    ['then softener', { device: 'softener' }],
    ['then filter', { device: 'filter' }],
    ['then heater storage', { device: 'heater', type: 'storage' }],
    ['then heater tankless', { device: 'heater', type: 'tankless' }],
    ['then manifold 1 8 ports valved', { device: 'manifold', size: '1', ports: 8, valved: true }],
    ['then manifold 1-1/4 1 port', { device: 'manifold', size: '1-1/4', ports: 1, valved: false }],
    ['then mixing valve', { device: 'mixing-valve' }],
    ['then mixing valve cv 2.3', { device: 'mixing-valve', cv: 2.3 }],
    ['then expansion tank', { device: 'expansion-tank' }],
    ['then arrester A', { device: 'arrester', size: 'A' }],
    ['to HB_1-a cold', { fixture: 'HB_1-a', inlet: 'cold' }],
    ['TO hot HW', { fixture: 'hot', inlet: 'hot' }],
  ])('ends a run %s', (words, end) => {
    expect(parsed(`1 copper 6' ${words}`).end).toEqual(end);
  });

  it.each([
    ['', 'the line ends where a pipe size'],
    ['PEX 18', '"PEX" stands where a pipe size'],
    ["3/4 lead 18'", '"lead" stands where a material (PEX, copper L'],
    ['3/4 PEX', 'the line ends where the length of the run'],
    ['3/4 PEX far', '"far" stands where the length of the run'],
    ['3/4 PEX 18', '"18" has no unit; expected a length'],
    ["3/4 PEX 18 up 9'", '"18" has no unit; expected a length'],
    ['3/4 PEX 18 psi', '"18 psi" is a pressure; expected a length'],
    ["3/4 PEX -18'", `"-18'" is below zero`],
    ["3/4 PEX 99999'", 'is not within -3000 to 3000 m'],
    ['3/4 PEX NaN ft', '"NaN" stands where the length'],
    ['3/4 PEX 1e308 ft', 'is written with a power of ten'],
    ["3/4 PEX 18' op 9'", '"op" stands where up, down, counted fittings'],
    ["3/4 PEX 18' up", 'the line ends where a height after up'],
    ["3/4 PEX 18' up -9'", `"-9'" stands where a height without a sign after up`],
    ["3/4 PEX 18' up 9' 2 elks", '"elks" stands where a fitting (ell, 45'],
    ["3/4 PEX 18' 0 ells", '"0" stands where a count of fittings from 1 to 1000'],
    ["3/4 PEX 18' 1001 ells", '"1001" stands where a count of fittings'],
    ["3/4 PEX 18' 2", 'the line ends where a fitting'],
    ["3/4 PEX 18' 2 ells up 9'", '"up" stands where'],
    ["3/4 PEX 18' to", 'the line ends where the id of a fixture'],
    ["3/4 PEX 18' to RAIN", 'the line ends where cold or hot'],
    ["3/4 PEX 18' to RAIN warm", '"warm" stands where cold or hot'],
    ["3/4 PEX 18' to <b>x</b> hot", '"<b>x</b>" stands where the id of a fixture'],
    ["3/4 PEX 18' to __proto__ hot", '"__proto__" stands where the id of a fixture'],
    ["3/4 PEX 18' then", 'the line ends where a device (meter, prv'],
    ["3/4 PEX 18' then pump", '"pump" stands where a device'],
    ["3/4 PEX 18' then prv", 'the line ends where the set pressure'],
    ["3/4 PEX 18' then prv 60 ft", '"60 ft" is a length; expected a pressure'],
    ["3/4 PEX 18' then prv 3/4", '"3/4" has no unit; expected a pressure'],
    ["3/4 PEX 18' then prv 3/4 60 ft", '"60 ft" is a length; expected a pressure'],
    ["3/4 PEX 18' then backflow rp big", '"big" stands where the end of the line'],
    ["3/4 PEX 18' then backflow up", '"up" stands where rp, dc or vented'],
    ["3/4 PEX 18' then heater", 'the line ends where storage or tankless'],
    ["3/4 PEX 18' then manifold 1 0 ports", '"0" stands where the number of ports, 1 to 300'],
    ["3/4 PEX 18' then manifold 1 8", 'the line ends where the word ports'],
    ["3/4 PEX 18' then mixing valve cv -1", '"-1" stands where a flow coefficient'],
    ["3/4 PEX 18' then mixing valve cv", 'the line ends where a flow coefficient'],
    ["3/4 PEX 18' then meter 3/4 then filter", '"then" stands where the end of the line'],
    [`3/4 PEX 18' then other "coil"`, '"coil" needs its loss curve'],
    ["3/4 PEX 18' then other coil", '"coil" stands where a name in double quotes'],
    ["3/4 PEX 18' ".repeat(300), 'longer than 2000 characters'],
    [`3/4 PEX 18' ${'1 ell '.repeat(51)}`, 'more than 50 entries of fittings'],
  ])('stumbles over %j: %s', (line, what) => {
    const sentence = problem(line);
    expect(sentence).toContain(what);
    expect(sentence).not.toContain('\n');
  });

  it('says one thing or the other of any words', () => {
    const word = fc.constantFrom(
      '3/4',
      'PEX',
      "18'",
      '9',
      'up',
      'down',
      '2',
      'ells',
      '90',
      'tee',
      'run',
      'to',
      'then',
      'A',
      'hot',
      'meter',
      'prv',
      'psi',
      'ft',
      '"',
      '-',
      ',',
    );
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(word, { maxLength: 12 }).map((all) => all.join(' ')),
    );
    fc.assert(
      fc.property(text, (line) => {
        const result = parseRunLine(line);
        if (!result.ok) expect(result.problem.length).toBeGreaterThan(10);
      }),
      { numRuns: 2000 },
    );
  });

  const curve = [{ flow: quantity('5 gpm', 'flow'), loss: quantity('1 psi', 'pressure') }];
  const replaced = (end: NonNullable<Run['end']>): Run => ({
    id: 'R1',
    from: 'street',
    note: 'n',
    ...parsed("1 PE 6'"),
    end,
  });

  it('keeps note and curve of the run that it replaces while the device is the same', () => {
    const meter = replaced({ device: 'meter', size: '3/4', curve });
    expect(parsed("1 PE 9' then meter 3/4", meter)).toMatchObject({
      note: 'n',
      end: { device: 'meter', size: '3/4', curve },
    });
    expect(parsed("1 PE 9' then meter 1", meter).end).toEqual({ device: 'meter', size: '1' });
    expect(parsed("1 PE 9' then filter", meter).end).toEqual({ device: 'filter' });
    const valve = replaced({ device: 'reducing-valve', set: quantity('60 psi', 'pressure'), curve });
    expect(parsed("1 PE 9' then prv 55 psi", valve).end).toMatchObject({ set: { typed: '55 psi' }, curve });
    const sized = replaced({ device: 'backflow', type: 'double-check', size: '3/4', curve });
    expect(parsed("1 PE 9' then backflow dc 3/4", sized).end).toMatchObject({ size: '3/4', curve });
    expect(parsed("1 PE 9' then backflow dc 1", sized).end).not.toHaveProperty('curve');
    const coil = replaced({ device: 'other', name: 'coil', curve });
    expect(parsed(`1 PE 9' then other "long coil"`, coil).end).toEqual({
      device: 'other',
      name: 'long coil',
      curve,
    });
  });

  it('leaves the run that it replaces as it was', () => {
    fc.assert(
      fc.property(arbitraryRun, (run) => {
        const copy = structuredClone(run);
        parseRunLine("3/4 PEX 18' then filter", { previous: run });
        expect(run).toEqual(copy);
      }),
      { numRuns: 30 },
    );
  });
});
