import type { PriceBook, SizingStudy } from '../../engine/index.ts';
import { show } from '../../tables/units/display.ts';
import { money, moneyMore } from '../words/money-words.ts';
import { changeWords } from './change-words.ts';
import { labelled } from './job-head.ts';

/** Runs and changes that are told one by one. */
const mostTold = 6;

/** Why nothing fits, and what would make it fit. */
export function unsizedLines({ result, drawn, remedy }: SizingStudy, { currency }: PriceBook): string[] {
  if (result.ok) return [];
  const { unsized } = result;
  const { units } = drawn.report.network.job;
  switch (unsized.why) {
    case 'no-pipe': {
      const over = unsized.runs.length - mostTold;
      const runs = `${unsized.runs.slice(0, mostTold).join(', ')}${over > 0 ? ` and ${over} more` : ''}`;
      const why = 'no pipe in stock with a price holds velocity, rating and least size';
      return labelled(
        'Least',
        `NOTHING FITS: ${why} on ${unsized.runs.length === 1 ? 'run' : 'runs'} ${runs}`,
      );
    }
    case 'no-fixture':
      return ['Nothing to size for: no run ends at a fixture yet.'];
    case 'tied':
      return labelled(
        'Least',
        'NOTHING FITS with these sizes tied or kept together; without --not-larger, --trunk and --keep the fixtures can have what they need',
      );
    case 'short': {
      const { fixture, side } = unsized.inlet;
      const by = show(unsized.by, 'pressure', units);
      const street = remedy?.street;
      const changes = (remedy?.changes ?? []).slice(0, mostTold);
      const raised =
        street === undefined
          ? 'no pressure at the street is enough: a reducing valve is set too low, or what is kept loses too much'
          : `${show(street.need, 'pressure', units)} at the street would do, at ${money(street.cost)} ${currency}`;
      return [
        ...labelled(
          'Least',
          `NOTHING FITS: even with the largest pipes ${fixture.name} (${fixture.id}.${side}) is short by ${by}`,
        ),
        ...labelled('', raised),
        ...changes.flatMap(({ change, gain, cents }) =>
          labelled(
            '',
            `with the largest pipes, ${changeWords(change)} gains ${show(gain, 'pressure', units)} for ${moneyMore(cents)} ${currency}: ${gain >= unsized.by ? 'enough there' : 'not enough alone'}`,
          ),
        ),
      ];
    }
  }
}
