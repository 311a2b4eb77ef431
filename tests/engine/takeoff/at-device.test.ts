import { describe, expect, it } from 'vitest';
import type { Device, Run } from '../../../engine/job/job.ts';
import { atDevice } from '../../../engine/takeoff/at-device.ts';
import { psi, run } from '../../jobs/written-job.ts';
import { inWords } from './counted.ts';

type Plain = Exclude<Device, { device: 'manifold' }>;

const behind = (device: Plain, ...followers: readonly Run[]) => {
  const runs = [run('A', 'street', { size: '1' }), ...followers];
  const counted = atDevice(
    runs,
    0,
    device,
    followers.map((_, index) => index + 1),
  );
  return { ...counted, words: inWords(counted.pieces) };
};

const copper = run('B', 'A', { size: '3/4', material: 'copper-l' });

describe('a device', () => {
  it('has a union on each side, each of its own pipe', () => {
    const devices: Plain[] = [
      { device: 'reducing-valve', set: psi(60) },
      { device: 'backflow', type: 'double-check' },
      { device: 'softener' },
      { device: 'filter' },
      { device: 'heater', type: 'tankless' },
      { device: 'other', name: 'Scale filter', curve: [] },
    ];
    expect(devices.map((device) => behind(device, copper).words)).toEqual(
      [
        'reducing-valve',
        'backflow double-check',
        'softener',
        'filter',
        'heater tankless',
        'other Scale filter',
      ].map((name) => [`1 x ${name}`, '1 x union 1 pex', '1 x union 3/4 copper-l']),
    );
  });

  it('that is a meter has couplings of the two sizes', () => {
    expect(behind({ device: 'meter', size: '3/4' }, copper).words).toEqual([
      '1 x meter 3/4',
      '1 x meter-coupling 1 x 3/4 pex',
      '1 x meter-coupling 3/4 x 3/4 copper-l',
    ]);
  });

  it('that ends the pipe has one threaded adapter, an arrester by its thread', () => {
    expect(behind({ device: 'expansion-tank' }).words).toEqual([
      '1 x expansion-tank',
      '1 x threaded-adapter 1 pex',
    ]);
    // A 1/2 in thread at size A, 3/4 at B, 1-1/4 at D.
    expect(['A', 'B', 'D', 'AA'].map((size) => behind({ device: 'arrester', size }).words[1])).toEqual([
      '1 x threaded-adapter 1 x 1/2 pex',
      '1 x threaded-adapter 1 x 3/4 pex',
      '1 x threaded-adapter 1 x 1-1/4 pex',
      // No such size in the table: that of the pipe.
      '1 x threaded-adapter 1 x 1 pex',
    ]);
  });

  it('goes on into a row of tees of its own pipe where several follow', () => {
    const { words, questions } = behind(
      { device: 'heater', type: 'storage' },
      run('B', 'A', { size: '3/4', fittings: { 'tee-run': 1 } }),
      run('C', 'A', { size: '1/2', fittings: { 'tee-branch': 1 } }),
    );
    expect(words).toEqual([
      '1 x heater storage',
      '1 x union 1 pex',
      '1 x union 1 pex',
      '1 x nipple 1 pex',
      '1 x tee 1 x 3/4 x 1/2 pex',
    ]);
    expect(questions).toEqual([]);
  });

  it('asks for the other inlet of a mixing valve', () => {
    expect(behind({ device: 'mixing-valve' }, copper).questions).toEqual([
      { code: 'mixing-valve-inlet', run: 'A' },
    ]);
  });
});
