import { insteadOf } from '../words/nearest.ts';
import { shownWord } from '../words/shown-word.ts';
import type { Call, Command } from './command.ts';
import { commands } from './commands.ts';
import { type Outcome, refuse } from './outcome.ts';
import { wrap } from './wrap.ts';

export const helpCommand: Command = {
  name: 'help',
  about: 'this overview, or the help of one command',
  takes: ['[COMMAND]'],
  options: {},
  details: [],
  load: async () => help,
};

export const allCommands: readonly Command[] = [...commands, helpCommand];

/** `hightap help [COMMAND]`. */
async function help({ words }: Call): Promise<Outcome> {
  const [name] = words;
  if (name === undefined) return { is: 'text', code: 0, lines: overview() };
  const command = allCommands.find((one) => one.name === name);
  if (command !== undefined) return { is: 'text', code: 0, lines: helpOf(command) };
  const names = allCommands.map((one) => one.name);
  return refuse(`there is no command ${shownWord(name)}; ${insteadOf(name, names)}`);
}

function overview(): string[] {
  return [
    "Hightap sizes a building's water supply and shows what pressure is left at the worst fixture.",
    '',
    'Usage: hightap COMMAND ...',
    '',
    ...allCommands.flatMap(({ name, about }) => wrap(about, `  ${name.padEnd(10)}`)),
    '',
    '  --help     after a command: its help',
    '  --version  the version of Hightap',
    '',
    'Exit codes: 0 done, 1 the job breaks a rule (check) or no sizes fit (size), 2 bad input.',
    ...wrap(
      'Pressures, sizes and findings are for planning. The local code, its inspector and the licensed plumber decide.',
    ),
  ];
}

/** The help of one command. */
export function helpOf({ name, about, takes, options, details }: Command): string[] {
  const listed = Object.entries(options).map(([option, spec]) => ({
    usage: `--${option}${spec.takes === 'flag' ? '' : ` ${spec.takes}`}`,
    about: spec.about,
  }));
  const width = Math.max(0, ...listed.map(({ usage }) => usage.length)) + 2;
  return [
    ...wrap([`hightap ${name}`, ...takes, ...listed.map(({ usage }) => `[${usage}]`)].join(' '), 'Usage: '),
    '',
    ...wrap(`${about[0]!.toUpperCase()}${about.slice(1)}.`),
    ...(listed.length > 0 ? [''] : []),
    ...listed.flatMap((option) => wrap(option.about, `  ${option.usage.padEnd(width)}`)),
    ...details.flatMap((paragraph) => ['', ...wrap(paragraph)]),
  ];
}
