/**
 * Nominal sizes and the inches that their names say; no bore and no outside diameter is meant. Here and in every table
 * by size, JavaScript lists the keys '1', '2', '3' and '4' before all others: where the order matters, sort by these
 * inches.
 */
export const nominalSizes: Readonly<Record<string, number>> = {
  '3/8': 0.375,
  '1/2': 0.5,
  '5/8': 0.625,
  '3/4': 0.75,
  '1': 1,
  '1-1/4': 1.25,
  '1-1/2': 1.5,
  '2': 2,
  '2-1/2': 2.5,
  '3': 3,
  '4': 4,
};

/** Sizes that supply houses seldom keep in water pipe: never proposed, though a job may use them. Common practice. */
export const seldomStocked: ReadonlySet<string> = new Set(['5/8']);
