/** Prints one figure of the bench: `name value unit`. */
export function figure(name: string, value: number, unit: string): void {
  process.stdout.write(`${name} ${value.toPrecision(4).replace(/\.?0+$/, '')} ${unit}\n`);
}

/** Median of one or more numbers. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** Slope of a straight line through points, by least squares. */
export function slope(points: readonly (readonly [number, number])[]): number {
  const meanX = points.reduce((sum, [x]) => sum + x, 0) / points.length;
  const meanY = points.reduce((sum, [, y]) => sum + y, 0) / points.length;
  const over = points.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0);
  return over / points.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0);
}
