import type { Job } from '../../../engine/job/job.ts';
import { cold, fixture, ft, hot, job, psi, q, run } from '../../jobs/written-job.ts';

const copper = { material: 'copper-l' } as const;
const large = { ...copper, size: '3/4' } as const;
const small = { ...copper, size: '1/2' } as const;
const inches = (value: number) => q(value, 'in');

/** An invented bathroom group in copper behind a PEX service, with its heater: drawn to be counted by hand. */
export const bathroom: Job = job(
  [
    fixture('WC', 'water-closet-tank', { level: 'floor' }),
    fixture('LAV', 'lavatory', { level: 'floor' }),
    fixture('SHW', 'shower', { level: 'floor' }),
  ],
  [
    run('S1', 'street', {
      size: '3/4',
      length: ft(30),
      fittings: { 'corporation-stop': 1, 'ball-valve': 1 },
    }),
    run('M1', 'S1', { ...large, length: ft(4), rise: ft(2), fittings: { ell: 1 } }),
    run('W1', 'M1', {
      ...large,
      length: ft(3),
      fittings: { 'tee-branch': 1, 'ball-valve': 1 },
      end: { device: 'heater', type: 'storage' },
    }),
    run('C1', 'M1', { ...large, length: ft(12), fittings: { 'tee-run': 1, ell: 1 } }),
    run('C2', 'C1', {
      ...small,
      length: ft(6),
      rise: inches(8),
      fittings: { 'tee-branch': 1, ell: 1, 'compression-stop': 1 },
      end: cold('WC'),
    }),
    run('C3', 'C1', { ...large, length: ft(3), fittings: { 'tee-run': 1 } }),
    run('C4', 'C3', {
      ...small,
      length: ft(5),
      rise: inches(20),
      fittings: { 'tee-branch': 1, 'compression-stop': 1 },
      end: cold('LAV'),
    }),
    run('C5', 'C3', {
      ...small,
      length: ft(6),
      rise: ft(4),
      fittings: { 'tee-run': 1, ell: 2 },
      end: cold('SHW'),
    }),
    run('H1', 'W1', { ...large, length: ft(14), fittings: { ell: 2 } }),
    run('H2', 'H1', {
      ...small,
      length: ft(4),
      rise: inches(20),
      fittings: { 'tee-branch': 1, 'compression-stop': 1 },
      end: hot('LAV'),
    }),
    run('H3', 'H1', {
      ...small,
      length: ft(6),
      rise: ft(4),
      fittings: { 'tee-run': 1, ell: 2 },
      end: hot('SHW'),
    }),
  ],
  {
    levels: [{ id: 'floor', name: 'Floor', elevation: ft(0) }],
    supply: { kind: 'static', elevation: ft(-1), low: psi(60), high: psi(60) },
  },
);
