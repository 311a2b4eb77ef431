import type { UnitSystem } from '../../engine/job/job.ts';
import type { Unsized } from '../../engine/sizing/size-scheme.ts';
import { figureWithUnit } from './figure.ts';

const mostNamed = 8;

/**
 * In a sentence, why no sizes hold every limit.
 *
 * @param missing prices that the book does not have, in words
 */
export function unsizedText(unsized: Unsized, missing: readonly string[], system: UnitSystem): string {
  switch (unsized.why) {
    case 'no-pipe': {
      const runs = `run${unsized.runs.length > 1 ? 's' : ''} ${some(unsized.runs)}`;
      const prices = missing.length === 0 ? '' : ` The price book lacks ${some(missing)}.`;
      return `No pipe holds every limit (velocity, rating, least size) and has a price for ${runs}.${prices}`;
    }
    case 'short': {
      const { fixture, side } = unsized.inlet;
      return `Nothing fits: even with the largest pipe allowed, ${fixture.name}, ${side}, stays ${figureWithUnit(unsized.by, 'pressure', system)} short.`;
    }
    case 'no-fixture':
      return 'There is nothing to size for: no run ends at a fixture yet.';
    case 'tied':
      return 'Every fixture could have what it needs, but not while the sizes are tied to each other; untie them.';
  }
}

function some(words: readonly string[]): string {
  const more = words.length - mostNamed;
  return more > 0 ? `${words.slice(0, mostNamed).join(', ')} and ${more} more` : words.join(', ');
}
