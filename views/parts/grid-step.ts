/** A round distance for about `count` lines over `span`. */
export function gridStep(span: number, count = 5): number {
  const rough = span / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const scaled = rough / power;
  return power * (scaled < 1.5 ? 1 : scaled < 3.5 ? 2 : scaled < 7.5 ? 5 : 10);
}
