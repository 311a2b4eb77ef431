import { describe, expect, it } from 'vitest';
import { readJob } from '../../../server/document/read-job.ts';
import { writeJob } from '../../../server/document/write-job.ts';
import { quantity } from '../../arbitrary/quantity.ts';
import { smallJob } from './small-job.ts';

const places = {
  serviceEntry: { level: 'ground', x: '10 ft', y: '0 ft' },
  mechanicalRoom: { level: 'ground', x: '10 ft', y: '3.5 m' },
  risers: [{ id: 'wet-wall', x: `12' 6"`, y: '12 ft' }],
};

/** The small job with a fixture's place in it, as read. */
function read(place: object, around: object = {}) {
  const [first, ...others] = smallJob.fixtures;
  return readJob(JSON.stringify({ ...smallJob, ...around, fixtures: [{ ...first, ...place }, ...others] }));
}

describe('where things stand', () => {
  it('is read as typed, and written on a line for each place', async () => {
    const job = await read({ x: '4 ft', y: `3' 6"` }, { places });
    if (!job.ok) throw new Error(job.problems.join('\n'));
    expect(job.job.fixtures[0]).toMatchObject({
      x: quantity('4 ft', 'length'),
      y: quantity(`3' 6"`, 'length'),
    });
    expect(job.job.places?.mechanicalRoom).toEqual({
      level: 'ground',
      x: quantity('10 ft', 'length'),
      y: quantity('3.5 m', 'length'),
    });
    const lines = writeJob(job.job).split('\n');
    expect(lines).toContain('    "mechanicalRoom": { "level": "ground", "x": "10 ft", "y": "3.5 m" },');
    expect(lines).toContain('      { "id": "wet-wall", "x": "12\' 6\\"", "y": "12 ft" }');
  });

  it('may be a length of pipe alone', async () => {
    const job = await read({ distance: '22 ft' });
    expect(job.ok && job.job.fixtures[0]).toMatchObject({ distance: quantity('22 ft', 'length') });
    expect(job.ok && job.job).not.toHaveProperty('places');
  });

  it.each([
    [{ x: '4 ft' }, 'y: missing beside x; expected both x and y, or neither'],
    [{ y: '4 ft' }, 'x: missing beside y; expected both x and y, or neither'],
    [{ distance: '-4 ft' }, 'distance: "-4 ft" is not at or above zero'],
    [{ x: '4 psi', y: '4 ft' }, 'x: "4 psi" is a pressure; expected a length'],
  ])('is refused as %j', async (place, problem) => {
    const job = await read(place);
    expect(job.ok ? [] : job.problems).toEqual([expect.stringContaining(problem)]);
  });

  it('is told where a place lacks something', async () => {
    const { mechanicalRoom: _gone, ...rest } = places;
    const job = await read({}, { places: { ...rest, risers: [{ id: 'wet wall', x: '1 ft', y: '1 ft' }] } });
    expect(job.ok ? [] : job.problems).toEqual([
      expect.stringMatching(/^places\.mechanicalRoom is missing/),
      expect.stringMatching(/^places\.risers\[0\].*id: "wet wall" came/),
    ]);
  });
});
