import { fileURLToPath } from 'node:url';
import { indexPrices, type PriceBook, type PriceIndex } from '../../engine/index.ts';
import { readPrices } from '../document/read-prices.ts';
import type { Call } from './command.ts';
import { labelled } from './job-head.ts';
import { refuseProblems } from './open-job.ts';
import { isRefusal, type Refusal, refuse } from './outcome.ts';
import { readFile } from './read-file.ts';

const shipped = fileURLToPath(new URL('../../examples/prices/invented-2026.json', import.meta.url));

/** The price book that `--prices` names, else the one that ships. */
export async function openPrices({ words, values, input }: Call): Promise<PriceIndex | Refusal> {
  const place = values.get('prices') ?? shipped;
  if (place === '-' && words[0] === '-') {
    return refuse('job and prices both came as -; expected one of them as a file');
  }
  const bytes = await readFile(place, input, 'price book');
  if (isRefusal(bytes)) return bytes;
  const read = await readPrices(bytes);
  return read.ok ? indexPrices(read.book) : refuseProblems(place, read.problems);
}

/** Whose prices an answer rests on; said wherever one is shown. */
export function bookLines({ name, invented, currency, effective }: PriceBook): string[] {
  const warning = invented ? ': INVENTED, every figure is made up; --prices FILE for your own' : '';
  return labelled('Prices', `${name}, ${currency} from ${effective}${warning}`);
}
