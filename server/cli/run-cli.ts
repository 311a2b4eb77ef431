import { readFileSync } from 'node:fs';
import { insteadOf } from '../words/nearest.ts';
import { shownWord } from '../words/shown-word.ts';
import { allCommands, helpOf } from './help.ts';
import { isRefusal, type Outcome, refuse } from './outcome.ts';
import { type Printed, print } from './print.ts';
import { readCall } from './read-call.ts';
import type { CliInput } from './read-file.ts';

/** Runs one command line; what it would print and its exit code are returned, nothing is printed here. */
export async function runCli(args: readonly string[], input: CliInput): Promise<Printed> {
  return print(await outcomeOf(args, input));
}

async function outcomeOf(args: readonly string[], input: CliInput): Promise<Outcome> {
  const [first, ...others] = args;
  const names = allCommands.map(({ name }) => name);
  if (first === undefined) return refuse(`no command came; expected one of ${names.join(', ')}`);
  if (first === '--version') return { is: 'text', code: 0, lines: [`hightap ${version()}`] };
  const name = first === '--help' || first === '-h' ? 'help' : first;
  const command = allCommands.find((one) => one.name === name);
  if (command === undefined) {
    const shown = shownWord(first);
    const instead = first.startsWith('-') ? `expected one of ${names.join(', ')}` : insteadOf(first, names);
    return refuse(`there is no ${first.startsWith('-') ? 'option' : 'command'} ${shown}; ${instead}`);
  }
  const asked = others.includes('--') ? others.slice(0, others.indexOf('--')) : others;
  if (asked.includes('--help') || asked.includes('-h')) {
    return { is: 'text', code: 0, lines: helpOf(command) };
  }
  const call = readCall(command, others, input);
  if (isRefusal(call)) return call;
  const work = await command.load();
  return work(call);
}

function version(): string {
  const manifest: unknown = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
  const known = typeof manifest === 'object' && manifest !== null && 'version' in manifest;
  return known ? String(manifest.version) : 'of unknown version';
}
