import { expect } from 'vitest';

/** Compares with a printed figure; what is allowed is in the unit of the figure. */
export function expectPrinted(computed: number, printed: number, allowed: number): void {
  const apart = Math.abs(computed - printed);
  expect(apart, `computed ${computed}, printed ${printed}, allowed ${allowed}`).toBeLessThanOrEqual(
    allowed * (1 + 1e-9),
  );
}

/** (computed - printed) / printed. */
export function apart(computed: number, printed: number): number {
  return computed / printed - 1;
}
