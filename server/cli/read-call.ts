import { parseArgs } from 'node:util';
import { shownWord } from '../words/shown-word.ts';
import type { Call, Command } from './command.ts';
import { type Refusal, refuse } from './outcome.ts';
import type { CliInput } from './read-file.ts';

/** Checks the words behind a command against what it takes. */
export function readCall(command: Command, args: readonly string[], input: CliInput): Call | Refusal {
  const { name, takes, options } = command;
  const { tokens } = parseArgs({
    args: [...args],
    strict: false,
    tokens: true,
    options: Object.fromEntries(
      Object.entries(options).map(([option, spec]) => [
        option,
        { type: spec.takes === 'flag' ? 'boolean' : 'string' } as const,
      ]),
    ),
  });
  const words: string[] = [];
  const flags = new Set<string>();
  const values = new Map<string, string>();
  const repeated = new Map<string, string[]>();
  for (const token of tokens) {
    if (token.kind === 'positional') words.push(token.value);
    if (token.kind !== 'option') continue;
    const raw = shownWord(token.rawName);
    const option =
      Object.hasOwn(options, token.name) && token.rawName.startsWith('--') ? options[token.name] : undefined;
    if (option === undefined) return refuse(`${name} has no option ${raw}; ${expectedOptions(command)}`);
    if (flags.has(token.name) || values.has(token.name)) return refuse(`${raw} came twice; expected it once`);
    if (option.takes === 'flag') {
      if (token.value !== undefined) return refuse(`${raw} takes no value; expected it alone`);
      flags.add(token.name);
      continue;
    }
    const missing =
      token.value === undefined || token.value === '' || (!token.inlineValue && token.value.startsWith('--'));
    if (missing) return refuse(`${raw} came without its value; expected ${raw} ${option.takes}`);
    if (option.repeats) repeated.set(token.name, [...(repeated.get(token.name) ?? []), token.value]);
    else values.set(token.name, token.value);
  }
  const least = takes.filter((word) => !word.startsWith('[')).length;
  const usage = `expected hightap ${[name, ...takes].join(' ')}`;
  if (words.length < least) return refuse(`${name} needs ${takes[words.length]}; ${usage}`);
  if (words.length > takes.length) {
    return refuse(`${name} came with ${shownWord(words[takes.length]!)} as one word too many; ${usage}`);
  }
  return { words, flags, values, repeated, input };
}

function expectedOptions({ options }: Command): string {
  const names = Object.keys(options).map((option) => `--${option}`);
  return names.length === 0 ? 'it takes none' : `expected ${names.join(', ')}`;
}
