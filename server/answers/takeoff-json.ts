import type { Job, PriceBook, PricedLine } from '../../engine/index.ts';
import { articleName } from '../../engine/takeoff/article.ts';
import { takeOffRules } from '../../tables/takeoff/rules.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { questionText } from '../../views/text/question-text.ts';
import { citedValue } from '../words/cited-words.ts';
import { moneyJson } from '../words/money-words.ts';
import { bookJson } from './book-json.ts';
import type { AgainstAnswer, LineAnswer, TakeOffAnswer } from './schema-takeoff.ts';
import type { Earlier, TakenOff } from './taken-off.ts';

/** The take-off for programs: counts, lengths in SI beside feet; money as decimals in strings. */
export function takeOffJson(
  job: Job,
  { taken, priced, built, earlier }: TakenOff,
  book: PriceBook,
): TakeOffAnswer {
  return {
    format: 'hightap-takeoff',
    version: 1,
    job: job.name,
    scheme: taken.scheme,
    prices: bookJson(book),
    lines: priced.lines.map(lineJson),
    pieces: taken.pieces.map(({ run, material, size, service, feet, homeRun }) => {
      return { run, material, size, service, ...lengthJson(feet.toString()), homeRun };
    }),
    priced: priced.priced.toFixed(2),
    labor_h: priced.hours,
    total: priced.total?.toFixed(2) ?? null,
    bid: built?.map(({ what, cents }) => ({ what, amount: moneyJson(cents) })) ?? null,
    against: earlier === undefined ? null : earlierJson(earlier),
    missingPrices: priced.missing,
    questions: taken.questions.map((question) => ({ ...question, what: questionText(question) })),
    rules: taken.rules.map((rule) => ({ rule, says: takeOffRules[rule] })),
    values: taken.cited.map((cited) => ({ value: citedValue(cited), verified: cited.verified })),
  };
}

function lineJson(priced: PricedLine): LineAnswer {
  const { article, unit, quantity, phase, area, service, from } = priced.line;
  const many = (text: string) => (unit === 'ft' ? lengthJson(text) : { count: Number(text) });
  return {
    item: articleName(article),
    ...article,
    ...many(quantity.toString()),
    phase,
    area: area.area === 'level' ? { level: area.level } : area.area,
    service,
    from: from.map((part) => ({ runs: part.runs, ...many(part.quantity.toString()) })),
    price: priced.price === 'known' ? (priced.cents / 100).toFixed(2) : priced.price,
  };
}

function lengthJson(feet: string) {
  return { length_m: toSI(Number(feet), 'ft'), length_ft: feet };
}

function earlierJson({ name, differences, more }: Earlier): AgainstAnswer {
  const listed = (list: Earlier['differences']['added']) =>
    list.map(({ article, unit, by, before, after }) => ({
      item: articleName(article),
      unit,
      by: by.toNumber(),
      before: before.toNumber(),
      after: after.toNumber(),
    }));
  return {
    name,
    more: more === undefined ? null : moneyJson(more),
    added: listed(differences.added),
    dropped: listed(differences.dropped),
  };
}
