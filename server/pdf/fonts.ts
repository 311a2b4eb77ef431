import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { Font } from './marks.ts';

const folder = dirname(
  createRequire(import.meta.url).resolve('@expo-google-fonts/source-sans-3/package.json'),
);

const files: Record<Font, string> = {
  regular: '400Regular/SourceSans3_400Regular.ttf',
  semibold: '600SemiBold/SourceSans3_600SemiBold.ttf',
  italic: '400Regular_Italic/SourceSans3_400Regular_Italic.ttf',
};

let loaded: Readonly<Record<Font, Uint8Array>> | undefined;

/** The open typeface that ships with its package: its figures are of one width, and it has the signs of formulas. */
export function fonts(): Readonly<Record<Font, Uint8Array>> {
  loaded ??= {
    regular: readFileSync(join(folder, files.regular)),
    semibold: readFileSync(join(folder, files.semibold)),
    italic: readFileSync(join(folder, files.italic)),
  };
  return loaded;
}
