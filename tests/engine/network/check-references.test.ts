import { describe, expect, it } from 'vitest';
import { checkNames } from '../../../engine/network/check-references.ts';
import { ft, job } from '../../jobs/written-job.ts';

describe('the places of a job', () => {
  const levels = [{ id: 'ground', name: 'Ground', elevation: ft(0) }];
  const at = { x: ft(1), y: ft(2) };
  const onGround = { level: 'ground', ...at };

  it('may stand on any level that is there', () => {
    const places = { serviceEntry: onGround, mechanicalRoom: onGround, risers: [{ id: 'R', ...at }] };
    expect(checkNames({ ...job([], [], { levels }), places })).toEqual([]);
  });

  it('are named where their level is not, and risers where two bear one name', () => {
    const riser = { id: 'R', ...at };
    const places = {
      serviceEntry: { ...onGround, level: 'cellar' },
      mechanicalRoom: { ...onGround, level: 'attic' },
      risers: [riser, riser],
    };
    expect(checkNames({ ...job([], [], { levels }), places })).toEqual([
      { code: 'place-level-missing', place: 'serviceEntry', level: 'cellar' },
      { code: 'place-level-missing', place: 'mechanicalRoom', level: 'attic' },
      { code: 'riser-twice', riser: 'R' },
    ]);
  });
});
