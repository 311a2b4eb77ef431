import { sources } from '../sources.ts';
import type { CurveTable, Source } from '../table.ts';
import type { MaterialId } from './names.ts';

/** Rated pressure by water temperature, for nominal sizes up to `sizesUpTo` inches (metric ones by their bore); below the first point it holds. */
export interface SizedRating {
  readonly sizesUpTo: number;
  readonly curve: CurveTable;
}

const at = { checkedOn: '2026-11-25' } as const;
type Points = readonly (readonly [fahrenheit: number, psi: number])[];

const solder = (sizes: string, points: Points): CurveTable => ({
  kind: 'curve',
  id: `rating-solder-${sizes.replaceAll(' ', '-')}`,
  title: `Rated pressure of 95-5 tin-antimony solder joints, ${sizes} in`,
  source: sources['asme-b16.22'],
  at,
  verified: 'seen-secondary',
  note:
    'The joint governs drawn tube. Annealed (soft) tube may rate lower from 1-1/2 in up: type L at 150 F has 347 psi at ' +
    '1-1/2 in, 309 at 2 in, 249 at 4 in in a rating sheet.',
  x: 'F',
  y: 'psi',
  points,
});

const copper: readonly SizedRating[] = [
  {
    sizesUpTo: 1,
    curve: solder('up to 1', [
      [100, 500],
      [150, 400],
      [200, 300],
      [250, 200],
    ]),
  },
  {
    sizesUpTo: 2,
    curve: solder('1-1/4 to 2', [
      [100, 400],
      [150, 350],
      [200, 250],
      [250, 175],
    ]),
  },
  {
    sizesUpTo: 4,
    curve: solder('2-1/2 to 4', [
      [100, 300],
      [150, 275],
      [200, 200],
      [250, 150],
    ]),
  },
];

const pex: CurveTable = {
  kind: 'curve',
  id: 'rating-pex-sdr-9',
  title: 'Rated pressure of PEX SDR-9',
  source: sources['astm-f876'],
  at,
  verified: 'seen-secondary',
  note: '80 psi at 200 F is recalled in one reading and was read on a trade page in the other.',
  x: 'F',
  y: 'psi',
  points: [
    [73, 160],
    [180, 100],
    [200, 80],
  ],
};

const cpvc: CurveTable = {
  kind: 'curve',
  id: 'rating-cpvc-sdr-11',
  title: 'Rated pressure of CPVC SDR-11',
  source: sources['astm-d2846'],
  at,
  verified: 'computed',
  note:
    '400 psi at 73 F times the factors of a manufacturer’s page (0.65, 0.57, 0.50, 0.40, 0.25). A pipe maker’s table in ' +
    'kgf/cm2 gives 256, 226, 196, 157 and 97 psi at the same temperatures. Ends at 180 F, where the system is rated.',
  x: 'F',
  y: 'psi',
  points: [
    [73, 400],
    [120, 260],
    [130, 228],
    [140, 200],
    [160, 160],
    [180, 100],
  ],
  rowVerified: { 0: 'seen-secondary', 5: 'seen-secondary' },
};

const pe: CurveTable = {
  kind: 'curve',
  id: 'rating-pe-sdr-9',
  title: 'Rated pressure of PE4710 SDR-9',
  source: sources['astm-d2737'],
  at,
  verified: 'seen-secondary',
  note: '250 psi read in two sheets for PE4710; older resins rate lower, 200 psi. The factor 0.8 at 100 F is recalled. Cold water only.',
  x: 'F',
  y: 'psi',
  points: [
    [73, 250],
    [100, 200],
  ],
  rowVerified: { 1: 'memory' },
};

const galvanized: CurveTable = {
  kind: 'curve',
  id: 'rating-threaded-150',
  title: 'Rated pressure of class 150 threaded malleable iron fittings',
  source: sources['asme-b16.3'],
  at,
  verified: 'memory',
  note: 'The fittings govern, not the pipe.',
  x: 'F',
  y: 'psi',
  points: [
    [150, 300],
    [200, 265],
  ],
};

type MetricPoints = readonly (readonly [celsius: number, bar: number])[];

/** Not one of these was read in print. */
const recalled = (
  id: string,
  of: string,
  source: Source,
  points: MetricPoints,
  note: string,
): CurveTable => ({
  kind: 'curve',
  id: `rating-${id}`,
  title: `Rated pressure of ${of}`,
  source,
  at,
  verified: 'memory',
  note,
  x: 'C',
  y: 'bar',
  points,
});

const solderMetric = (sizes: string, bars: readonly [number, number, number]): CurveTable =>
  recalled(
    `solder-${sizes.replaceAll(' ', '-')}-mm`,
    `soldered joints in copper tube, ${sizes} mm`,
    sources['en-1254-1'],
    [
      [30, bars[0]],
      [65, bars[1]],
      [110, bars[2]],
    ],
    'Of capillary fittings; the joint governs drawn tube.',
  );

const copperMetric: readonly SizedRating[] = [
  { sizesUpTo: 1.3, curve: solderMetric('up to 28', [25, 25, 16]) },
  { sizesUpTo: 2.5, curve: solderMetric('35 to 54', [25, 16, 10]) },
  { sizesUpTo: 4, curve: solderMetric('over 54', [16, 16, 10]) },
];

const designLife =
  'The class of 70 C of its standard, for fifty years with shares of time at each temperature. Above 70 C no figure is recalled.';

const pexS32 = recalled(
  'pe-x-s-3.2',
  'PE-X series S 3.2',
  sources['en-iso-15875'],
  [
    [20, 20],
    [70, 10],
  ],
  designLife,
);

const pexS5 = recalled(
  'pe-x-s-5',
  'PE-X series S 5',
  sources['en-iso-15875'],
  [
    [20, 12.5],
    [70, 6],
  ],
  designLife,
);

const multilayer = recalled(
  'multilayer',
  'multilayer pipe PE-X/Al/PE',
  sources['en-iso-21003'],
  [
    [20, 20],
    [70, 10],
  ],
  designLife,
);

const pvcFactors =
  'times the factors 0.88, 0.75, 0.62, 0.51, 0.40, 0.31 and 0.22 from 80 to 140 F. Cold water only.';

const pvc = (sizes: string, governing: string, points: Points): CurveTable => ({
  kind: 'curve',
  id: `rating-pvc-schedule-40-${sizes.replaceAll(' ', '-')}`,
  title: `Rated pressure of PVC schedule 40, ${sizes} in`,
  source: sources['astm-d1785'],
  at,
  verified: 'memory',
  note: `The ${governing} in size governs the group; its rating at 73 F ${pvcFactors}`,
  x: 'F',
  y: 'psi',
  points,
});

export const pressureRatings: { readonly [material in MaterialId]: readonly SizedRating[] } = {
  'pe-x': [{ sizesUpTo: 4, curve: pexS32 }],
  'pe-x-s5': [{ sizesUpTo: 4, curve: pexS5 }],
  'copper-en': copperMetric,
  'copper-thin': copperMetric,
  multilayer: [{ sizesUpTo: 4, curve: multilayer }],
  pex: [{ sizesUpTo: 3, curve: pex }],
  'copper-k': copper,
  'copper-l': copper,
  'copper-m': copper,
  cpvc: [{ sizesUpTo: 2, curve: cpvc }],
  pe: [{ sizesUpTo: 2, curve: pe }],
  galvanized: [{ sizesUpTo: 4, curve: galvanized }],
  pvc: [
    {
      sizesUpTo: 1,
      curve: pvc('up to 1', '1', [
        [73, 450],
        [80, 396],
        [90, 337.5],
        [100, 279],
        [110, 229.5],
        [120, 180],
        [130, 139.5],
        [140, 99],
      ]),
    },
    {
      sizesUpTo: 2,
      curve: pvc('1-1/4 to 2', '2', [
        [73, 280],
        [80, 246.4],
        [90, 210],
        [100, 173.6],
        [110, 142.8],
        [120, 112],
        [130, 86.8],
        [140, 61.6],
      ]),
    },
    {
      sizesUpTo: 4,
      curve: pvc('2-1/2 to 4', '4', [
        [73, 220],
        [80, 193.6],
        [90, 165],
        [100, 136.4],
        [110, 112.2],
        [120, 88],
        [130, 68.2],
        [140, 48.4],
      ]),
    },
  ],
};
