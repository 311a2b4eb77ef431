import { parseFile } from '../document/open-document.ts';
import { computations } from './computations.ts';
import { isRefusal } from './refusal.ts';

export type Answered =
  /** The answer as JSON text. */
  { readonly ok: true; readonly json: string } | { readonly ok: false; readonly problems: readonly string[] };

/**
 * Answers one question of the JSON interface from the bytes of its body.
 *
 * @param name of one of {@link computations}
 * @throws where there is no computation of that name
 */
export async function answerQuestion(name: string, body: Uint8Array): Promise<Answered> {
  const computation = computations.find((one) => one.name === name);
  if (computation === undefined) throw new Error(`there is no computation ${name}`);
  const parsed = parseFile(body, 'question');
  if (!parsed.ok) return parsed;
  const answer = await computation.compute(parsed.value);
  if (isRefusal(answer)) return { ok: false, problems: answer.sentences };
  return { ok: true, json: JSON.stringify(answer) };
}
