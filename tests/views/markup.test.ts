import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { testApp } from '../server/test-app.ts';

/** A misspelt attribute of htmx is no type error and does nothing at all. */
const known = new Set([
  'hx-post',
  'hx-get',
  'hx-swap',
  'hx-target',
  'hx-trigger',
  'hx-include',
  'hx-sync',
  'hx-swap-oob',
  'hx-disable',
]);

const root = fileURLToPath(new URL('../..', import.meta.url));

describe('rendered markup', () => {
  it('holds no attribute of htmx but those that we use', async () => {
    const { app, id, postInPlace } = await testApp();
    const answers = [
      await app.inject('/jobs'),
      await app.inject(`/jobs/${id}`),
      await app.inject(`/jobs/${id}/explain/SV/flow`),
      await app.inject(`/jobs/${id}/runs/SV`),
      await app.inject('/nothing'),
      await postInPlace(`/jobs/${id}/runs`, { from: 'T1', id: '', line: "3/4 PEX 5'" }),
    ];
    const found = new Set(
      answers.flatMap(({ body }) => [...body.matchAll(/ (hx-[a-z-]+)[=>]/g)].map((match) => match[1]!)),
    );
    expect([...found].filter((name) => !known.has(name))).toEqual([]);
    expect(found.size).toBe(known.size);
  });

  it('has each id once, a label for each field, and a form for each button', async () => {
    const { app, id, post } = await testApp();
    const book = (await post('/prices', { name: 'Copy', start: 'shipped' })).headers.location!;
    for (const url of [
      '/jobs',
      `/jobs/${id}`,
      `/jobs/${id}/compare`,
      `/jobs/${id}/sizing`,
      `/jobs/${id}/runs/SV`,
      `/jobs/${id}/fixtures/SH`,
      '/quick-start',
      '/prices',
      '/prices/shipped',
      `${book}?list=devices`,
      `${book}/delete`,
    ]) {
      const { body } = await app.inject(url);
      const ids = [...body.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]!);
      expect(ids.filter((one, at) => ids.indexOf(one) !== at)).toEqual([]);
      const labelled = new Set([...body.matchAll(/<label for="([^"]+)"/g)].map((match) => match[1]));
      const fields = [...body.matchAll(/<(?:input|select) id="([^"]+)"/g)].map((match) => match[1]);
      expect(fields.filter((field) => !labelled.has(field))).toEqual([]);
      for (const [form] of body.matchAll(/<form[^>]*>/g)) {
        expect(form).toMatch(/ method="(post|get)"/);
        expect(form).toMatch(/ action="\//);
      }
      for (const match of body.matchAll(/aria-(?:describedby|labelledby)="([^"]+)"/g)) {
        for (const one of match[1]!.split(' ')) expect(ids).toContain(one);
      }
      for (const match of body.matchAll(/href="#([^"]+)"/g)) expect(ids).toContain(match[1]);
    }
  });
});

describe('the scan for markup that is not escaped', () => {
  mkdirSync(join(root, '.reports'), { recursive: true });
  const planted = mkdtempSync(join(root, '.reports', 'planted-'));
  afterAll(() => rmSync(planted, { recursive: true, force: true }));

  it('finds a hole that was planted for it', () => {
    const file = join(planted, 'hole.tsx');
    writeFileSync(
      file,
      'export function Hole({ name }: { name: string }): JSX.Element {\n  return <p>{name}</p>;\n}\n',
    );
    const scan = spawnSync('npx', ['xss-scan', '-p', join(root, 'tsconfig.json'), file], {
      cwd: root,
      encoding: 'utf8',
    });
    expect(scan.status).toBe(1);
    expect(scan.stdout + scan.stderr).toContain('K601');
  });

  it('finds none in our own', () => {
    const scan = execFileSync('npx', ['xss-scan'], { cwd: root, encoding: 'utf8' });
    expect(Number(/No XSS vulnerabilities found in (\d+) files/.exec(scan)?.[1])).toBeGreaterThan(20);
  });
});
