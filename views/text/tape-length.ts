import type { UnitSystem } from '../../engine/job/job.ts';

/**
 * A length as it is read off a tape: feet, inches and the nearest sixteenth, `12 ft 6-1/4 in`; or metres to the
 * millimetre, `3.810 m`.
 *
 * @param metres 0 or more
 */
export function tapeLength(metres: number, system: UnitSystem): string {
  if (system === 'si') return `${metres.toFixed(3)} m`;
  const sixteenths = Math.round((metres / 0.0254) * 16);
  const feet = Math.floor(sixteenths / 192);
  const inches = Math.floor((sixteenths % 192) / 16);
  const [top, bottom] = lowest(sixteenths % 16);
  const fraction = top === 0 ? '' : `${top}/${bottom}`;
  const inch = inches === 0 ? fraction : fraction === '' ? `${inches}` : `${inches}-${fraction}`;
  const parts = [feet === 0 ? '' : `${feet} ft`, inch === '' ? '' : `${inch} in`].filter(
    (part) => part !== '',
  );
  return parts.length === 0 ? '0 in' : parts.join(' ');
}

function lowest(sixteenths: number): readonly [top: number, bottom: number] {
  let [top, bottom] = [sixteenths, 16];
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return [top, bottom];
}
