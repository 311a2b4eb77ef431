import { describe, expect, it } from 'vitest';
import { atManifold } from '../../../engine/takeoff/at-manifold.ts';
import { run } from '../../jobs/written-job.ts';
import { inWords } from './counted.ts';

const runs = [
  run('M', 'street', { size: '3/4' }),
  run('A', 'M', { size: '1/2' }),
  run('B', 'M', { size: '3/8' }),
  run('C', 'M', { size: '1/2', fittings: { 'tee-run': 1 } }),
];
const manifold = (ports: number) =>
  atManifold(runs, 0, { device: 'manifold', size: '1', ports, valved: false }, [1, 2, 3]);

describe('a manifold', () => {
  it('has a fitting at each port in use and a plug in each other', () => {
    const { pieces, questions } = manifold(5);
    expect(inWords(pieces)).toEqual([
      '1 x manifold 1 plain 5 ports',
      '1 x threaded-adapter 3/4 x 1 pex',
      '1 x manifold-port 1/2 pex',
      '1 x manifold-port 3/8 pex',
      '1 x manifold-port 1/2 pex',
      '2 x port-plug',
    ]);
    // A tee is drawn in C, and none is there.
    expect(questions).toEqual([{ code: 'tee-without-junction', run: 'C', legs: 1 }]);
  });

  it('asks where more lines leave it than it has ports', () => {
    const { pieces, questions } = manifold(2);
    expect(inWords(pieces)).not.toContain('port-plug');
    expect(questions[0]).toEqual({ code: 'ports-short', run: 'M', ports: 2, lines: 3 });
  });
});
