import { describe, expect, it } from 'vitest';
import {
  buildNetwork,
  type Job,
  type LayoutOptions,
  layOut,
  type Run,
  report,
  type Scheme,
} from '../../engine/index.ts';
import { quantity } from '../arbitrary/quantity.ts';
import { openExample } from './open-example.ts';

const job = await openExample('large-house.json');
const service = { new: true, size: '1-1/4', length: quantity('70 ft', 'length'), meter: '1' } as const;
const options: { readonly [id: string]: LayoutOptions } = {
  trunk: { kind: 'trunk', service },
  'home-run': { kind: 'home-run', service },
  zones: { kind: 'zones', service },
  'trunk-halves': { kind: 'trunk', halves: true, mainSize: '1', service },
};

function schemeOf(from: Job, id: string): Scheme {
  const scheme = from.schemes.find((each) => each.id === id);
  if (scheme === undefined) throw new Error(`no scheme ${id}`);
  return scheme;
}

function count({ runs }: Scheme, what: (run: Run) => boolean): number {
  return runs.filter(what).length;
}

function fittings({ runs }: Scheme, kind: string): number {
  return runs
    .flatMap((run) => run.fittings)
    .reduce((sum, each) => sum + (each.kind === kind ? each.count : 0), 0);
}

const device = (name: string) => (run: Run) =>
  run.end !== undefined && 'device' in run.end && run.end.device === name;
const isInlet = (run: Run) => run.end !== undefined && 'fixture' in run.end;

/*
 * By the schedule: 26 fixtures indoors and three hose bibbs. Hot and cold: two lavatories, two showers and a tub in
 * the primary bath; shower and lavatory of the guest, main and lower bath; tub and lavatory of the hall bath; the
 * powder room's lavatory; two washers, a tray, the kitchen sink: 18. Hot only: the dishwasher. Cold only: six closets and the
 * ice maker.
 */
const inlets = { cold: 18 + 6 + 1, hot: 18 + 1, outdoor: 3 };
/** Two washers on both sides, the dishwasher and the ice maker. */
const quick = 2 * 2 + 1 + 1;

describe.each(Object.keys(options))('%s of the large house', (id) => {
  const scheme = schemeOf(job, id);

  it('is what its places and schedule are drawn up to', () => {
    const laid = layOut(job, options[id]!);
    expect(laid.ok && laid.scheme).toEqual(scheme);
  });

  it('ends at every inlet and arrester that the schedule asks for', () => {
    expect(count(scheme, isInlet)).toBe(inlets.cold + inlets.hot + inlets.outdoor);
    expect(count(scheme, device('arrester'))).toBe(quick);
    expect(count(scheme, device('expansion-tank'))).toBe(1);
    expect(count(scheme, device('heater'))).toBe(id === 'trunk-halves' ? 2 : 1);
  });

  it('has two tee legs for every place where pipe parts, manifolds aside', () => {
    // A tree of pipe with n ends parts n - 1 times; the ports of a manifold of n lines stand for n - 1 of these.
    const ends = count(
      scheme,
      (run) => isInlet(run) || device('arrester')(run) || device('expansion-tank')(run),
    );
    const ports = scheme.runs.reduce(
      (sum, { end }) =>
        sum + (end !== undefined && 'device' in end && end.device === 'manifold' ? end.ports - 1 : 0),
      0,
    );
    expect(fittings(scheme, 'tee-branch')).toBe(ends - 1 - ports);
    expect(fittings(scheme, 'tee-run')).toBe(ends - 1 - ports);
  });

  it('has a valve at the main, the outdoor group, each heater, each half and each washer', () => {
    const split = id === 'trunk-halves';
    expect(fittings(scheme, 'ball-valve')).toBe(1 + 1 + (split ? 2 : 1) + (split ? 2 : 0) + 4);
  });
});

describe('the large house', () => {
  it('has home runs from two manifolds: a line for each inlet, and two more where there is an arrester', () => {
    const scheme = schemeOf(job, 'home-run');
    const ports = scheme.runs.flatMap(({ end }) =>
      end !== undefined && 'device' in end && end.device === 'manifold' ? [end.ports] : [],
    );
    expect(ports).toEqual([inlets.hot, inlets.cold]);
    // Service 2, header 3, tank, heater, two mains; the bibbs' group with two tees: 5.
    expect(scheme.runs).toHaveLength(9 + 5 + inlets.cold + inlets.hot + 2 * quick);
  });

  it('has its rain shower at the end of these lengths', () => {
    const alone = (id: string, run: string) =>
      schemeOf(job, id).runs.find((each) => each.id === run)?.length.typed;
    // From the cold manifold at (20, 12), 5 ft up: 4 up to 9 ft, 26 + 4 to the east riser at (46, 16), 10 ft 6 in up to 19 ft 6 in, 8 + 8 to (54, 24), 6 ft 6 in up.
    expect(alone('home-run', 'C-U1')).toBe("67'");
  });

  it('is left short by a velocity limit alone, but for the home runs', () => {
    const margins = Object.fromEntries(
      Object.keys(options).map((id) => {
        const built = buildNetwork(job, id);
        if (!built.ok) throw new Error(JSON.stringify(built.defects));
        const { worst, findings } = report(built.network);
        expect(worst?.inlet.fixture.id, id).toBe('RAIN');
        expect(
          findings.filter(({ severity, code }) => severity === 'error' && code !== 'residual-short'),
          id,
        ).toEqual([]);
        return [id, worst!.margin > 0];
      }),
    );
    expect(margins).toEqual({ trunk: false, 'home-run': true, zones: false, 'trunk-halves': false });
  });

  it('has a 1-1/4 in entry and two 1 in mains in its halves', () => {
    const sizes = schemeOf(job, 'trunk-halves').runs.flatMap(({ id, size }) =>
      /^(S\d|[A-Z]M1)$/.test(id) ? [[id, size]] : [],
    );
    expect(sizes).toEqual([
      ['S1', '1-1/4'],
      ['S2', '1-1/4'],
      ['BM1', '1'],
      ['TM1', '1'],
    ]);
  });
});
