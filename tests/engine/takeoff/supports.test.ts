import { describe, expect, it } from 'vitest';
import { supports } from '../../../engine/takeoff/supports.ts';
import type { MaterialId } from '../../../tables/pipe/names.ts';
import { ft, q, run } from '../../jobs/written-job.ts';
import { inWords } from './counted.ts';

const of = (material: MaterialId, size: string, length: number, rise = 0) =>
  inWords(supports(run('A', 'street', { material, size, length: ft(length), rise: ft(rise) }), 0).pieces).map(
    (words) => words.replace(` ${size} ${material}`, ''),
  );

describe('supports', () => {
  it('stand at every spacing begun of the horizontal pipe', () => {
    // 8 ft are three times 32 in: not one more.
    expect(of('pex', '1/2', 8)).toEqual(['3 x hanger']);
    expect(of('pex', '1/2', 8.01)).toEqual(['4 x hanger']);
    expect(of('pex', '1-1/4', 8)).toEqual(['2 x hanger']);
    expect(of('copper-l', '1-1/4', 24)).toEqual(['4 x hanger']);
    expect(of('copper-m', '1-1/2', 24)).toEqual(['3 x hanger']);
    expect(of('cpvc', '1', 12)).toEqual(['4 x hanger']);
    expect(of('cpvc', '1-1/4', 12)).toEqual(['3 x hanger']);
    expect(of('pvc', '2', 12)).toEqual(['3 x hanger']);
    expect(of('galvanized', '2', 24)).toEqual(['2 x hanger']);
  });

  it('along the rise are riser supports, and guides for plastic', () => {
    expect(of('copper-l', '1', 20, 20)).toEqual(['2 x riser-support']);
    expect(of('pex', '1', 20, -20)).toEqual(['2 x riser-support', '2 x guide']);
    expect(of('pex', '1', 4.9, 4.9)).toEqual(['1 x riser-support']);
    expect(of('pex', '1', 5, 5)).toEqual(['1 x riser-support', '1 x guide']);
    // The note on guides ends at 2 in.
    expect(of('pvc', '3', 20, 20)).toEqual(['2 x riser-support']);
    expect(of('galvanized', '1', 30, 30)).toEqual(['2 x riser-support']);
  });

  it('take the developed length less the rise as horizontal', () => {
    expect(of('copper-l', '1', 18, 12)).toEqual(['1 x hanger', '2 x riser-support']);
    const metric = run('A', 'street', { material: 'copper-l', length: q(3.6576, 'm'), rise: q(0, 'm') });
    // 12 ft exactly.
    expect(inWords(supports(metric, 0).pieces)).toEqual(['2 x hanger 1 copper-l']);
  });

  it('ask where the table has no row', () => {
    expect(supports(run('A', 'street', { material: 'pe' }), 0)).toEqual({
      pieces: [],
      cited: [],
      questions: [{ code: 'no-support-spacing', run: 'A', material: 'pe', size: '1' }],
    });
  });
});
