import { rename, unlink, writeFile } from 'node:fs/promises';
import type { UnitSystem } from '../../engine/index.ts';
import { type Paper, papers } from '../../views/sheet.ts';
import { hashMark, hashMatches, jobHash } from '../document/job-hash.ts';
import { isDay } from '../sheet/day.ts';
import { makeSheet } from '../sheet/make-sheet.ts';
import { shownWord } from '../words/shown-word.ts';
import type { Call } from './command.ts';
import { readJobAt } from './open-job.ts';
import { openPrices } from './open-prices.ts';
import { isRefusal, type Outcome, type Refusal, refuse } from './outcome.ts';
import { placeName } from './read-file.ts';

/** `hightap sheet JOB`: the whole calculation as a PDF, or whether a hash read off paper is that of the job's file. */
export async function sheet(call: Call): Promise<Outcome> {
  const { words, values, input } = call;
  const [out, match] = [values.get('out'), values.get('match')];
  if ((out === undefined) === (match === undefined)) {
    const came = out === undefined ? 'neither --out nor --match came' : '--out and --match both came';
    return refuse(`${came}; expected one of them`);
  }
  const choice = readChoice(call);
  if (isRefusal(choice)) return choice;
  const job = await readJobAt(words[0]!, input);
  if (isRefusal(job)) return job;
  const hash = jobHash(job);
  if (out === undefined) return matched(hash, match!, placeName(words[0]!));
  if (!out.toLowerCase().endsWith('.pdf')) {
    return refuse(`--out: ${shownWord(out)} came; expected a name that ends in .pdf`);
  }
  const prices = await openPrices(call);
  if (isRefusal(prices)) return prices;
  const made = makeSheet(job, choice, prices, placeName(words[0]!));
  if (isRefusal(made)) return made;
  const { sheetPdf } = await import('../pdf/sheet-pdf.ts');
  const { bytes, pages } = await sheetPdf(made);
  const problem = await writeWhole(out, bytes);
  if (problem !== undefined) return refuse(`--out: ${placeName(out)} ${problem}`);
  return {
    is: 'text',
    code: 0,
    lines: [`${placeName(out)}: ${pages} pages; job file ${hashMark(hash)}`, `SHA-256 ${hash}`],
  };
}

function readChoice({ values }: Call): Parameters<typeof makeSheet>[1] | Refusal {
  const units = oneOf(values.get('units'), 'units', ['us', 'si'] as const satisfies readonly UnitSystem[]);
  const paper = oneOf(values.get('paper'), 'paper', Object.keys(papers) as Paper[]);
  if (typeof units === 'object') return units;
  if (typeof paper === 'object') return paper;
  const date = values.get('date') ?? '';
  if (date !== '' && !isDay(date)) {
    return refuse(`--date: ${shownWord(date)} came; expected a day like 2026-11-25`);
  }
  return { scheme: values.get('scheme'), units, paper, date };
}

function oneOf<Word extends string>(
  came: string | undefined,
  option: string,
  expected: readonly Word[],
): Word | undefined | Refusal {
  if (came === undefined) return undefined;
  const found = expected.find((word) => word === came);
  return found ?? refuse(`--${option}: ${shownWord(came)} came; expected ${expected.join(' or ')}`);
}

function matched(hash: string, read: string, place: string): Outcome {
  const matches = hashMatches(hash, read);
  if (matches === undefined) {
    return refuse(`--match: ${shownWord(read)} came; expected 8 to 64 digits of a hash, 0-9 and a-f`);
  }
  const words = matches ? 'matches' : 'does NOT match';
  return {
    is: 'text',
    code: matches ? 0 : 1,
    lines: [`${place} ${words} ${read}`, `SHA-256 ${hash}`],
  };
}

/** Writes a file beside its place and moves it there, so that nobody finds half of one; a reason where that fails. */
async function writeWhole(place: string, bytes: Uint8Array): Promise<string | undefined> {
  const beside = `${place}.${process.pid}.part`;
  try {
    await writeFile(beside, bytes);
    await rename(beside, place);
    return undefined;
  } catch (error) {
    await unlink(beside).catch(() => {});
    const code = error instanceof Error && 'code' in error ? String(error.code) : 'unknown reason';
    return `cannot be written (${code}); expected a file in a folder that you may write to`;
  }
}
