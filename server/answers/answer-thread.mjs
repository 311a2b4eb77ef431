import { register } from 'tsx/esm/api';

// A thread does not inherit a loader that was registered by the thread that started it, so this file is no TypeScript.
register();
const { answerQuestion } = await import('./answer-question.ts');

/**
 * What a thread of the pool does with each question.
 *
 * @param {{ name: string, body: Uint8Array }} question
 */
export default ({ name, body }) => answerQuestion(name, body);
