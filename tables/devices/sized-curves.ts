import { sources } from '../sources.ts';
import type { CurveTable, Verification } from '../table.ts';

/** Upper design flow of reducing valves by nominal size, gpm, as the manufacturer's sheet prints it. */
const reducingValveFlows = { '1/2': 7.3, '3/4': 12.5, '1': 19, '1-1/4': 34, '1-1/2': 44, '2': 70 } as const;

/** The valve whose fall-off the sheet prints: 7.3 psi at 8 gpm in 3/4 in. */
const printed = { size: '3/4', flow: 8, fallOff: 7.3 } as const;

const tenths = (value: number): number => Math.round(value * 10) / 10;

function fallOff(size: keyof typeof reducingValveFlows): CurveTable {
  const design = reducingValveFlows[size];
  const share = design / reducingValveFlows[printed.size];
  const own = size === printed.size;
  return {
    kind: 'curve',
    id: `reducing-valve-fall-off-${size.replace('/', '-')}`,
    title: `Fall-off of a ${size} in reducing valve below its set pressure`,
    source: sources['reducing-valve-sheet'],
    at: { checkedOn: '2026-11-25' },
    verified: 'computed',
    note:
      `The sheet gives 7.3 psi at 8 gpm for a 3/4 in valve (design flow 7 to 12.5 gpm); ${own ? 'in a straight line beyond' : `scaled by the upper design flows, ${design} / 12.5, and in a straight line`}. ` +
      'A compact valve of the sheet falls 10 psi. A generic curve: the maker’s curve takes its place.',
    x: 'gpm',
    y: 'psi',
    points: [
      [0, 0],
      [tenths(printed.flow * share), printed.fallOff],
      [design, tenths((printed.fallOff * design) / (printed.flow * share))],
    ],
    ...(own ? { rowVerified: { 1: 'seen' } } : {}),
  };
}

/** Fall-off below the set pressure by the valve's nominal size. */
export const reducingValveFallOff: Readonly<Record<string, CurveTable>> = Object.fromEntries(
  Object.keys(reducingValveFlows).map((size) => [size, fallOff(size as keyof typeof reducingValveFlows)]),
);

/** Rated flow of backflow assemblies by nominal size, gpm; recalled. */
const backflowFlows = {
  '1/2': 15,
  '3/4': 30,
  '1': 50,
  '1-1/4': 75,
  '1-1/2': 100,
  '2': 160,
  '2-1/2': 225,
  '3': 320,
} as const;

/** Loss against the share of the rated flow, as recalled for a 1 in assembly of 50 gpm. */
const backflowShapes = {
  'reduced-pressure': {
    title: 'reduced-pressure assembly',
    source: sources['backflow-training-page'],
    points: [
      [0, 6],
      [0.2, 10],
      [0.5, 11],
      [1, 14],
    ],
    first: 'computed',
    note:
      'The springs were read: first check at least 5 psi, second at least 1 psi, so 6 psi at the least flow. 10 to 15 psi at ' +
      'rated flow is recalled. The real loss is not monotone and is no multiple of flow squared.',
  },
  'double-check': {
    title: 'double-check assembly',
    source: sources['trade-practice'],
    points: [
      [0, 2],
      [0.2, 3.5],
      [0.5, 5],
      [1, 7],
    ],
    first: 'memory',
    note: '3 to 7 psi is recalled as typical, 10 psi as allowed at rated flow.',
  },
} as const;

function backflow(type: keyof typeof backflowShapes, size: keyof typeof backflowFlows): CurveTable {
  const shape = backflowShapes[type];
  const rated = backflowFlows[size];
  const first: Verification = shape.first;
  return {
    kind: 'curve',
    id: `backflow-${type}-${size.replace('/', '-')}`,
    title: `Loss of a ${size} in ${shape.title}`,
    source: shape.source,
    at: { checkedOn: '2026-11-25' },
    verified: 'memory',
    note: `${shape.note} Rated flow ${rated} gpm, recalled. A generic curve: the maker’s curve takes its place.`,
    x: 'gpm',
    y: 'psi',
    points: shape.points.map(([share, loss]) => [share * rated, loss] as const),
    rowVerified: { 0: first },
  };
}

function backflowBySize(type: keyof typeof backflowShapes): Readonly<Record<string, CurveTable>> {
  return Object.fromEntries(
    Object.keys(backflowFlows).map((size) => [size, backflow(type, size as keyof typeof backflowFlows)]),
  );
}

/** Loss of backflow assemblies by type and nominal size. */
export const backflowLoss = {
  'reduced-pressure': backflowBySize('reduced-pressure'),
  'double-check': backflowBySize('double-check'),
} as const;
