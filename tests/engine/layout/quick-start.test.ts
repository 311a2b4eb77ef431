import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Job } from '../../../engine/job/job.ts';
import { type QuickStart, quickStart } from '../../../engine/layout/quick-start.ts';
import { buildNetwork } from '../../../engine/network/build-network.ts';
import { report } from '../../../engine/report.ts';
import { readJob } from '../../../server/document/read-job.ts';
import { writeJob } from '../../../server/document/write-job.ts';
import { ft, psi } from '../../jobs/written-job.ts';

const plain = { height: ft(9), fullBaths: 0, halfBaths: 0, laundries: 0 };
const house: QuickStart = {
  name: 'New house',
  units: 'us',
  profile: 'irc-2021',
  levels: [
    { ...plain, name: 'Lower level', height: ft(9.5), fullBaths: 1, laundries: 1 },
    { ...plain, name: 'Main floor', height: ft(9.5), fullBaths: 1, halfBaths: 1 },
    { ...plain, name: 'Upper floor', fullBaths: 3, laundries: 1 },
  ],
  kitchenLevel: 1,
  hoseBibbs: 3,
  iceMaker: true,
  rainShower: true,
  source: { kind: 'street', low: psi(65), high: psi(78) },
};

const answers: fc.Arbitrary<QuickStart> = fc
  .record({
    units: fc.constantFrom('us' as const, 'si' as const),
    profile: fc.constantFrom('irc-2021' as const, 'ipc-2018' as const),
    levels: fc.array(
      fc.record({
        name: fc.constantFrom('Lower level', 'Main floor', 'Upper floor', '上', 'Main loft'),
        height: fc.integer({ min: 7, max: 14 }).map(ft),
        fullBaths: fc.nat({ max: 7 }),
        halfBaths: fc.nat({ max: 3 }),
        laundries: fc.nat({ max: 3 }),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    kitchen: fc.nat({ max: 100 }),
    hoseBibbs: fc.nat({ max: 9 }),
    iceMaker: fc.boolean(),
    rainShower: fc.boolean(),
    well: fc.boolean(),
    high: fc.integer({ min: 60, max: 120 }),
  })
  .map(({ kitchen, well, high, ...drawn }) => ({
    ...drawn,
    name: 'Drawn',
    kitchenLevel: kitchen % drawn.levels.length,
    source: well
      ? { kind: 'well' as const, cutIn: psi(40), cutOut: psi(60) }
      : { kind: 'street' as const, low: psi(55), high: psi(high) },
  }));

const ids = ({ fixtures }: Job, level: string): string[] =>
  fixtures
    .filter((fixture) => fixture.level === level && fixture.kind !== 'hose-bibb')
    .map(({ kind }) => kind);

describe('quickStart', () => {
  it('furnishes each level as the answers say', () => {
    const job = quickStart(house);
    expect(job.levels).toEqual([
      { id: 'lower', name: 'Lower level', elevation: { typed: "0'", si: 0 } },
      { id: 'main', name: 'Main floor', elevation: { typed: `9' 6"`, si: expect.closeTo(9.5 * 0.3048, 9) } },
      { id: 'upper', name: 'Upper floor', elevation: { typed: "19'", si: expect.closeTo(19 * 0.3048, 9) } },
    ]);
    const bath = ['bathtub-shower', 'water-closet-tank', 'lavatory'];
    const wash = ['clothes-washer', 'laundry-tray'];
    expect(ids(job, 'lower')).toEqual([...bath, ...wash]);
    expect(ids(job, 'main')).toEqual([
      ...bath,
      ...['water-closet-tank', 'lavatory'],
      ...['kitchen-sink', 'dishwasher', 'ice-maker'],
    ]);
    expect(ids(job, 'upper')).toEqual([
      ...['shower', 'hand-shower', 'water-closet-tank', 'lavatory'],
      ...bath,
      ...bath,
      ...wash,
    ]);
    expect(job.groups.map(({ kind }) => kind)).toEqual([
      ...['full-bath', 'laundry'],
      ...['full-bath', 'half-bath', 'kitchen'],
      ...['full-bath', 'full-bath', 'full-bath', 'laundry'],
    ]);
    expect(job.note).toMatch(/^A first draft/);
  });

  it('chooses the trunk among the three layouts', () => {
    const { schemes, chosen } = quickStart(house);
    expect(schemes.map(({ id }) => id)).toEqual(['trunk', 'home-run', 'zones']);
    expect(chosen).toBe('trunk');
  });

  it('puts hose bibbs on the outer walls, baths nearer to the riser than the kitchen', () => {
    const { fixtures, places } = quickStart(house);
    const [riser] = places!.risers;
    const xs = fixtures.map(({ x }) => x!.si);
    const ys = fixtures.map(({ y }) => y!.si);
    for (const { id, kind, x, y } of fixtures) {
      if (kind !== 'hose-bibb') continue;
      const onWall =
        [Math.min(...xs), Math.max(...xs)].includes(x!.si) ||
        [Math.min(...ys), Math.max(...ys)].includes(y!.si);
      expect(onWall, id).toBe(true);
    }
    const away = (tag: string) =>
      fixtures
        .filter(({ id }) => id.startsWith(tag))
        .map(({ x, y }) => Math.abs(x!.si - riser!.x.si) + Math.abs(y!.si - riser!.y.si));
    expect(Math.max(...away('LAV'))).toBeLessThan(Math.min(...away('SINK')));
  });

  it('makes a job that its file gives back, every scheme of which works, whatever is answered', async () => {
    await fc.assert(
      fc.asyncProperty(answers, async (drawn) => {
        const job = quickStart(drawn);
        expect(await readJob(writeJob(job))).toEqual({ ok: true, job });
        const spots = job.fixtures.map(({ level, x, y }) => `${level} ${x?.typed} ${y?.typed}`);
        expect(new Set(spots).size).toBe(spots.length);
        for (const { id } of job.schemes) {
          const built = buildNetwork(job, id);
          if (!built.ok) throw new Error(JSON.stringify(built.defects));
          const layoutsOwn = [
            'height-mismatch',
            'shut-off-missing',
            'expansion-uncontrolled',
            'arrester-missing',
            'static-high',
            'dead-end',
          ];
          expect(report(built.network).findings.filter(({ code }) => layoutsOwn.includes(code))).toEqual([]);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('passes as it stands where the street is good', () => {
    const job = quickStart({ ...house, source: { kind: 'street', low: psi(72), high: psi(79) } });
    for (const { id } of job.schemes) {
      const built = buildNetwork(job, id);
      expect(built.ok && report(built.network).passes, id).toBe(true);
    }
  });

  it('refuses answers that make no house, in a sentence', () => {
    expect(() => quickStart({ ...house, levels: [] })).toThrow('levels: none came; expected at least one');
    expect(() => quickStart({ ...house, kitchenLevel: 3 })).toThrow(
      'kitchenLevel: 3 came; expected a level from 0 to 2',
    );
    const turned = { kind: 'street', low: psi(80), high: psi(60) } as const;
    expect(() => quickStart({ ...house, source: turned })).toThrow('80 psi came as the low of 60 psi');
  });
});
