import { describe, expect, it } from 'vitest';
import type { FittingCount } from '../../../engine/job/job.ts';
import { cold, fixture, job, run } from '../../jobs/written-job.ts';
import { closet, findingsOf, quietBut } from './findings-of.ts';

const valve: FittingCount[] = [{ kind: 'ball-valve', count: 1 }];

describe('the main', () => {
  it('without a valve before the first branch', () => {
    expect(findingsOf('shut-off-missing', quietBut({ service: { fittings: [] } }))).toMatchObject([
      { severity: 'error', where: 'main', mend: { do: 'add-shut-off' } },
    ]);
  });

  it('not with one; a check valve is none, a count of 0 is none', () => {
    expect(findingsOf('shut-off-missing', quietBut({}))).toEqual([]);
    expect(
      findingsOf(
        'shut-off-missing',
        quietBut({ service: { fittings: [{ kind: 'check-valve', count: 1 }] } }),
      ),
    ).toHaveLength(1);
    expect(
      findingsOf('shut-off-missing', quietBut({ service: { fittings: [{ kind: 'ball-valve', count: 0 }] } })),
    ).toHaveLength(1);
  });

  it('a valve behind the first branch does not close the building', () => {
    const other = fixture('other', 'water-closet-tank');
    const written = quietBut(
      { service: { fittings: [] }, branch: { fittings: valve } },
      [run('other', 'service', { end: cold('other') })],
      { fixtures: [closet, other] },
    );
    expect(findingsOf('shut-off-missing', written)).toMatchObject([{ where: 'main', run: 'service' }]);
  });
});

describe('the kind of valve on the main', () => {
  const closed = (kind: 'ball-valve' | 'gate-valve' | 'curb-stop' | 'globe-valve' | 'compression-stop') =>
    findingsOf('shut-off-missing', quietBut({ service: { fittings: [{ kind, count: 1 }] } }));

  it('leaves the whole bore open', () => {
    expect(closed('ball-valve')).toEqual([]);
    expect(closed('gate-valve')).toEqual([]);
    for (const kind of ['curb-stop', 'globe-valve', 'compression-stop'] as const) {
      expect(closed(kind)).toMatchObject([{ where: 'main', severity: 'error' }]);
    }
  });

  it('serves a single outdoor outlet as well', () => {
    const bibb = quietBut({}, [], { fixtures: [fixture('closet', 'hose-bibb')] });
    expect(findingsOf('shut-off-missing', bibb)).toEqual([]);
  });
});

describe('make-up-unprotected', () => {
  it('is the caution where water fills another system, and only there', () => {
    const filling = quietBut({}, [], { fixtures: [fixture('closet', 'make-up')] });
    expect(findingsOf('make-up-unprotected', filling)).toMatchObject([{ fixtures: ['closet'] }]);
    expect(findingsOf('make-up-unprotected', quietBut({}))).toEqual([]);
  });
});

describe('outdoors', () => {
  const bibb = fixture('bibb', 'hose-bibb');
  const garden = (fittings: FittingCount[]) =>
    quietBut({}, [{ ...run('garden', 'service', { end: cold('bibb') }), fittings }], {
      fixtures: [closet, bibb],
    });

  it('without a valve of its own', () => {
    expect(findingsOf('shut-off-missing', garden([]))).toMatchObject([
      { severity: 'warning', where: 'outdoor', run: 'garden' },
    ]);
    expect(findingsOf('shut-off-missing', garden(valve))).toEqual([]);
  });

  it('hose-outlets: the caution where a hose may be put on, and only there', () => {
    expect(findingsOf('hose-outlets', garden(valve))).toMatchObject([
      { severity: 'note', fixtures: ['bibb'] },
    ]);
    expect(findingsOf('hose-outlets', quietBut({}))).toEqual([]);
  });
});

describe('the ports of a manifold', () => {
  const house = (valved: boolean, fittings: FittingCount[]) =>
    job(
      [fixture('a', 'water-closet-tank'), fixture('b', 'water-closet-tank')],
      [
        {
          ...run('service', 'street', { end: { device: 'manifold', size: '1', ports: 4, valved } }),
          fittings: valve,
        },
        { ...run('A', 'service', { end: cold('a') }), fittings },
        { ...run('B', 'service', { end: cold('b') }), fittings: valve },
      ],
    );

  it('without a valve on a line', () => {
    expect(findingsOf('shut-off-missing', house(false, []))).toMatchObject([
      { severity: 'warning', where: 'manifold', run: 'A' },
    ]);
  });

  it('not where the manifold or the line has one', () => {
    expect(findingsOf('shut-off-missing', house(true, []))).toEqual([]);
    expect(findingsOf('shut-off-missing', house(false, valve))).toEqual([]);
  });
});
