/**
 * Bounds of a job file, and of a price book: far above any small building, low enough that a mistaken or hostile file
 * is refused before it costs much.
 */
export const fileLimits = {
  bytes: 20_000_000,
  depth: 32,
  fieldsOfObject: 100,
  entriesOfList: 200_000,
  levels: 200,
  risers: 50,
  groups: 5000,
  fixtures: 20_000,
  schemes: 50,
  runsOfScheme: 200_000,
  pointsOfCurve: 100,
  pricesOfList: 20_000,
  note: 4000,
  quantity: 60,
  /** Problems told in full; what is over is counted. */
  problemsTold: 20,
  /** Within one list, reading stops here. */
  problemsSought: 100,
} as const;
