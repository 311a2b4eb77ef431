import type { Job, PriceBook, PricedLine, TakeOff, TakeOffPrice } from '../../engine/index.ts';
import { jointWords, materialWords } from '../../engine/job/words.ts';
import { type Article, articleKey, articleName } from '../../engine/takeoff/article.ts';
import { toCents } from '../../engine/takeoff/money.ts';
import type { JointId, MaterialId } from '../../tables/pipe/names.ts';
import {
  type PartGroup,
  type PhaseId,
  partGroups,
  partKinds,
  phases,
} from '../../tables/takeoff/part-kinds.ts';
import { takeOffRules } from '../../tables/takeoff/rules.ts';
import type { BidLine } from '../../views/take-off.ts';
import { citedText } from '../../views/text/citation-text.ts';
import { questionText } from '../../views/text/question-text.ts';
import type { Earlier } from '../answers/taken-off.ts';
import { quantityWords } from '../takeoff/in-units.ts';
import { citedValue } from '../words/cited-words.ts';
import { money } from '../words/money-words.ts';
import { differenceLines } from './difference-lines.ts';
import { deferral, labelled } from './job-head.ts';
import { bookLines } from './open-prices.ts';
import { tableLines } from './table-lines.ts';
import { wrap } from './wrap.ts';

/** Questions told in full; the others are counted. */
const mostQuestions = 20;

const testing = wrap(
  'Rough-in test: test pressure and time are the local code’s, and no more than the pipe, its joints and what is ' +
    'connected are rated for. Compressed air can burst what water would only wet: many makers of plastic pipe forbid it.',
);

/** The take-off by article over the whole job, with what falls to each phase; then questions and how it was counted. */
export function takeOffLines(
  job: Job,
  taken: TakeOff,
  priced: TakeOffPrice,
  book: PriceBook,
  built: readonly BidLine[] | undefined,
  earlier: Earlier | undefined,
): string[] {
  const sections = Object.entries(partGroups) as [PartGroup, string][];
  return [
    ...labelled('Job', job.name),
    ...labelled('Scheme', `${taken.scheme.name} (${taken.scheme.id})`),
    ...bookLines(book),
    ...sections.flatMap(([group, title]) => sectionLines(group, title, priced.lines, job.units)),
    '',
    ...totalLines(priced, book),
    ...builtLines(built, book),
    ...(earlier === undefined ? [] : differenceLines(earlier, book.currency, job.units)),
    ...questionLines(taken),
    '',
    'How it was counted (common practice, no source, but for the table values below)',
    ...taken.rules.flatMap((rule) => wrap(takeOffRules[rule], '  - ')),
    '',
    'Table values and rules of thumb',
    ...taken.cited.flatMap((cited) => wrap(`${citedValue(cited)}. ${citedText(cited)}`, '  - ')),
    '',
    ...testing,
    ...deferral,
  ];
}

/** The article in the words of the shorthand, so that it fits the line: `1/2 90° ell, PEX brass`. */
function shortName(article: Article): string {
  const { material, joint, to, ...bare } = article;
  if (material === undefined) return articleName(article);
  const pipe = (one: MaterialId, by: JointId | undefined): string =>
    `${materialWords[one][0]} ${by === undefined ? '' : jointWords[by][0]}`.trim();
  return `${articleName(bare)}, ${pipe(material, joint)}${to === undefined ? '' : ` to ${pipe(to.material, to.joint)}`}`;
}

interface Row {
  readonly name: string;
  readonly unit: 'each' | 'ft';
  readonly byPhase: Map<PhaseId, PricedLine['line']['quantity']>;
  readonly cents: number | undefined;
}

function sectionLines(
  group: PartGroup,
  title: string,
  lines: readonly PricedLine[],
  units: Job['units'],
): string[] {
  const rows = new Map<string, Row>();
  for (const priced of lines) {
    const { article, unit, phase, quantity } = priced.line;
    if (partKinds[article.kind].group !== group) continue;
    const key = articleKey(article);
    const before = rows.get(key);
    const byPhase = before?.byPhase ?? new Map();
    byPhase.set(phase, quantity.plus(byPhase.get(phase) ?? 0));
    const cents = priced.price === 'known' ? (before?.cents ?? 0) + priced.cents : undefined;
    rows.set(key, { name: shortName(article), unit, byPhase, cents });
  }
  if (rows.size === 0) return [];
  const columns = [
    { title: 'Total', holds: 'figures' },
    ...Object.values(phases).map((phase) => ({ title: phase, holds: 'figures' }) as const),
    { title, holds: 'words' },
    { title: 'Price', holds: 'figures' },
  ] as const;
  const cells = [...rows.values()].map(({ name, unit, byPhase, cents }) => {
    const parts = [...byPhase.values()];
    const total = parts.reduce((sum, part) => sum.plus(part));
    const shown = (one: typeof total | undefined): string =>
      one === undefined ? '' : quantityWords(one, unit, units);
    const price = cents === undefined ? (group === 'joint' ? 'in fittings' : 'missing') : money(cents);
    const each = (Object.keys(phases) as PhaseId[]).map((phase) => shown(byPhase.get(phase)));
    return [shown(total), ...each, name, price];
  });
  return ['', ...tableLines(columns, cells)];
}

function totalLines({ total, priced, hours, missing }: TakeOffPrice, { currency }: PriceBook): string[] {
  const what = `${money(toCents(total ?? priced))} ${currency} and ${hours.toFixed(1)} h of labor`;
  if (total !== undefined) {
    return labelled(
      'Total',
      `${what}; each line rounded to cents; without tax, overhead, waste and fixtures`,
    );
  }
  const names = missing.map(articleName);
  const more = names.length > 6 ? `; and ${names.length - 6} more` : '';
  return [
    ...labelled('Total', `none: prices are missing; what has one comes to ${what}`),
    ...labelled('No price', `${names.slice(0, 6).join('; ')}${more}`),
  ];
}

/** The price built up, an amount a line. */
function builtLines(built: readonly BidLine[] | undefined, { currency }: PriceBook): string[] {
  if (built === undefined) return [];
  const amounts = built.map(({ cents }) => money(cents));
  const width = Math.max(...amounts.map(({ length }) => length));
  return [
    '',
    `The price built up, ${currency}; each amount rounded to cents (the order is common practice)`,
    ...built.map(({ what, sum }, at) => `  ${amounts[at]!.padStart(width)}  ${sum ? `= ${what}` : what}`),
  ];
}

function questionLines({ questions }: TakeOff): string[] {
  if (questions.length === 0) return [];
  const over = questions.length - mostQuestions;
  return [
    '',
    `Questions about the drawing (${questions.length})`,
    ...questions.slice(0, mostQuestions).flatMap((question) => wrap(questionText(question), '  - ')),
    ...(over > 0 ? [`  and ${over} more`] : []),
  ];
}
