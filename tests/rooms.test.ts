import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { allowed, breach, importsOf } from './rooms.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

describe('the arrows between the rooms', () => {
  it.each(Object.keys(allowed))('are held by %s', (room) => {
    const modules = readdirSync(`${root}${room}`, { recursive: true, encoding: 'utf8' }).filter((file) =>
      /\.tsx?$/.test(file),
    );
    expect(modules.length).toBeGreaterThan(10);
    const breaches = modules.flatMap((file) => {
      const path = `${room}/${file}`;
      return importsOf(readFileSync(`${root}${path}`, 'utf8')).flatMap((one) => breach(path, one) ?? []);
    });
    expect(breaches).toEqual([]);
  });

  it.each([
    ['engine/checks/judge.ts', "import { readFileSync } from 'node:fs';"],
    ['engine/report.ts', "import { layout } from '../views/layout.tsx';"],
    ['engine/job/job.ts', "export * from '../../server/app.tsx';"],
    ['tables/profiles.ts', "import type { Job } from '../engine/index.ts';"],
    ['views/layout.tsx', "import { solve } from '../engine/index.ts';"],
    ['views/parts/here.tsx', "import {\n  type Job,\n  solve,\n} from '../../engine/index.ts';"],
    ['engine/report.ts', "const { z } = await import('zod');"],
  ])('would be seen to break in %s by %s', (path, text) => {
    expect(importsOf(text).map((one) => breach(path, one))).toEqual([expect.stringContaining(path)]);
  });

  it.each([
    ['views/layout.tsx', "import type { Report } from '../engine/index.ts';"],
    ['views/parts/here.tsx', "import { type Job, type Report } from '../../engine/index.ts';"],
    ['engine/report.ts', "import { lookUp } from '../tables/look-up.ts';"],
  ])('are kept in %s by %s', (path, text) => {
    expect(importsOf(text).map((one) => breach(path, one))).toEqual([undefined]);
  });
});
