import type { Outcome } from './outcome.ts';
import type { CliInput } from './read-file.ts';

export interface Option {
  /** `flag` is there or not; any other word names the value that must follow. */
  readonly takes: string;
  readonly about: string;
  /** Whether it may come more than once. */
  readonly repeats?: true;
}

/** A command as somebody gave it, checked against what it takes. */
export interface Call {
  readonly words: readonly string[];
  readonly flags: ReadonlySet<string>;
  readonly values: ReadonlyMap<string, string>;
  /** Values of the options that may come more than once, in their order. */
  readonly repeated: ReadonlyMap<string, readonly string[]>;
  readonly input: CliInput;
}

/** One command: what it takes, what it is for, and its work, loaded when it is called. */
export interface Command {
  readonly name: string;
  readonly about: string;
  /** Words that follow; those in brackets may be left out. */
  readonly takes: readonly string[];
  readonly options: Readonly<Record<string, Option>>;
  /** Paragraphs of its help. */
  readonly details: readonly string[];
  readonly load: () => Promise<(call: Call) => Promise<Outcome>>;
}
