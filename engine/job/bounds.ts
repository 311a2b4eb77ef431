/** How many of a thing one place of a job may name; wide of any building, so that a slip of the keys is caught. */
export const bounds = {
  fittingCount: { least: 1, most: 1000 },
  fittingsPerRun: 50,
  fixtureCount: { least: 1, most: 1000 },
  manifoldPorts: { least: 1, most: 300 },
  flowCoefficient: { least: 1e-6, most: 10_000 },
  nameLength: 200,
  lineLength: 2000,
} as const;
