/** Whether a size is named by outside diameter and wall in millimetres, as `20x2.8` is. */
function isMetric(size: string): boolean {
  return /^[\d.]+x[\d.]+$/.test(size);
}

/** The unit that a size is named in. */
export function sizeUnit(size: string): 'in' | 'mm' {
  return isMetric(size) ? 'mm' : 'in';
}

/** A size in a sentence: `3/4 in.`, `20x2.8 mm`. */
export function sizeText(size: string): string {
  return isMetric(size) ? `${size} mm` : `${size} in.`;
}

/** The same where there is little room, as in a drawing: `3/4″`, `20x2.8 mm`. */
export function shortSizeText(size: string): string {
  return isMetric(size) ? `${size} mm` : `${size}″`;
}
