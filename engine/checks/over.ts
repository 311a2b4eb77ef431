/**
 * Whether a figure is over its limit, both in one unit. Lengths and flows are sums: 1 + 1 + 48 ft comes out a hair over
 * 50 ft in binary, and what is just as long as allowed breaks no rule.
 */
export function isOver(figure: number, limit: number): boolean {
  return figure > limit * (1 + 1e-9);
}
