import type { MaterialId } from '../../tables/pipe/names.ts';
import { pressureRatings } from '../../tables/pipe/ratings.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { nominalInches } from './nominal-inches.ts';
import { readCurve } from './water.ts';

/**
 * Rated pressure of a pipe at a temperature (K), Pa; undefined where its table does not go so hot or so large.
 */
export function pipeRating(material: MaterialId, size: string, temperature: number): number | undefined {
  const rating = pressureRatings[material].find(({ sizesUpTo }) => nominalInches(size) <= sizesUpTo);
  const hottest = rating?.curve.points.at(-1)?.[0];
  // A hair of room for a temperature typed in another unit than the table's.
  if (rating === undefined || hottest === undefined || temperature > toSI(hottest, rating.curve.x) + 1e-9) {
    return undefined;
  }
  return readCurve(rating.curve, temperature);
}
