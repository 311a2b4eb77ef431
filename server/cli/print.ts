import { cleanText } from '../words/clean-text.ts';
import type { Outcome } from './outcome.ts';

/** What goes to the two outputs, and the exit code. */
export interface Printed {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** The one place where an outcome becomes text. Minus signs are plain, so that other tools can read the figures. */
export function print(outcome: Outcome): Printed {
  switch (outcome.is) {
    case 'text':
      return { code: outcome.code, stdout: joined(outcome.lines), stderr: '' };
    case 'json':
      return {
        code: outcome.code,
        stdout: `${escapeControls(JSON.stringify(outcome.value, null, 2))}\n`,
        stderr: '',
      };
    case 'file':
      return { code: 0, stdout: escapeControls(outcome.text), stderr: '' };
    case 'refusal':
      return {
        code: outcome.code ?? 2,
        stdout: '',
        stderr: joined(outcome.sentences.map((sentence) => `hightap: ${sentence}`)),
      };
  }
}

function joined(lines: readonly string[]): string {
  return lines.map((line) => `${cleanText(line).replaceAll('−', '-').trimEnd()}\n`).join('');
}

/** JSON in which nothing can steer a terminal: control and format characters stand as escapes. */
function escapeControls(json: string): string {
  return json.replace(/[\u007f-\u009f\u2028\u2029]|\p{Cf}/gu, (character) => {
    const units = Array.from({ length: character.length }, (_, at) => character.charCodeAt(at));
    return units.map((unit) => `\\u${unit.toString(16).padStart(4, '0')}`).join('');
  });
}
