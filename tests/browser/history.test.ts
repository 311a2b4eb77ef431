import { mkdirSync, readFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type TestApp, testApp } from '../server/test-app.ts';

const axe = readFileSync(new URL('../../node_modules/axe-core/axe.min.js', import.meta.url), 'utf8');
const longer = "1/2 PEX 120' up 6' 1 tee 2 ells to SH hot";
const shots = process.env.HIGHTAP_SHOTS;

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
});

afterAll(async () => {
  await browser.close();
});

interface Visit {
  readonly page: Page;
  readonly test: TestApp;
  readonly at: string;
}

async function visit(
  work: (visit: Visit) => Promise<void>,
  options: Parameters<Browser['newPage']>[0] = {},
): Promise<void> {
  const test = await testApp();
  await test.app.listen({ port: 0, host: '127.0.0.1' });
  const { port } = test.app.server.address() as AddressInfo;
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 }, ...options });
  const at = `http://127.0.0.1:${port}`;
  await page.goto(`${at}/`);
  await work({ page, test, at });
  await page.close();
  await test.app.close();
}

/** Changes the line of the shower's hot run, and leaves the field. */
async function lengthen(page: Page): Promise<void> {
  await page.locator('[id="run:SHH:line:line"]').fill(longer);
  await page.keyboard.press('Tab');
  await page.locator('#answer').getByText('▼ SHORT').waitFor();
}

describe('history in the browser', () => {
  it('undoes and redoes by the keyboard, tries, drops, tries again, keeps, and tells of it in words', () =>
    visit(async ({ page, test, at }) => {
      const first = await test.document();
      await lengthen(page);
      await page.locator('#undo button').focus();
      await page.keyboard.press('Control+z');
      await page.locator('#answer').getByText('✓ PASS').waitFor();
      expect(await page.locator('#notice').textContent()).toContain(
        "Undone: Run SHH: length 15' becomes 120'",
      );
      await page.keyboard.press('Control+y');
      await page.locator('#answer').getByText('▼ SHORT').waitFor();
      await page.keyboard.press('Control+z');
      await page.locator('#answer').getByText('✓ PASS').waitFor();

      const tryIt = page.getByRole('button', { name: 'Try without saving' });
      await tryIt.click();
      await page.getByRole('heading', { name: 'Trying: 0 changes, not saved' }).waitFor();
      await lengthen(page);
      const panel = page.locator('#trial');
      await panel.getByRole('heading', { name: 'Trying: 1 change, not saved' }).waitFor();
      expect(await panel.getByRole('row', { name: /^Answer/ }).textContent()).toBe('AnswerPassShort');
      await page.reload();
      await panel.getByRole('heading', { name: 'Trying: 1 change, not saved' }).waitFor();
      await shoot(page, 'trial');
      await panel.getByRole('button', { name: 'Drop' }).click();
      await page.getByText('Dropped: the job is as it was').waitFor();
      expect(await page.locator('#answer').textContent()).toContain('PASS');
      expect(await test.document()).toBe(first);

      await tryIt.click();
      await lengthen(page);
      await panel.getByRole('button', { name: 'Keep' }).click();
      await page.getByText('Kept: what was tried is saved').waitFor();
      expect(await page.locator('#answer').textContent()).toContain('SHORT');
      await page.goto(`${at}/jobs/${test.id}/history`);
      const shown = page.getByRole('row', { name: /\(shown\)/ });
      expect(await shown.textContent()).toContain("Run SHH: length 15' becomes 120'");
      await page.getByRole('link', { name: 'Open 1', exact: true }).click();
      await page.getByText('Revision 1 of this job; read only.').waitFor();
      expect(await page.locator('[id="run:SHH:line:line"]').isDisabled()).toBe(true);
      await shoot(page, 'past');
      await page.getByRole('button', { name: 'Go back to revision 1' }).click();
      await page.getByRole('heading', { name: /^History of/ }).waitFor();
      expect(JSON.parse(await test.document())).toEqual(JSON.parse(first));
    }));

  it('tries and keeps without the script', () =>
    visit(
      async ({ page, test }) => {
        await page.getByRole('button', { name: 'Try without saving' }).click();
        await page.locator('[id="run:SHH:line:line"]').fill(longer);
        await page.locator('[id="run:SHH:line"]').getByRole('button', { name: 'Save' }).click();
        expect(await page.locator('#trial').textContent()).toContain('Trying: 1 change, not saved');
        expect(await test.document()).not.toContain("120'");
        await page.locator('#trial').getByRole('button', { name: 'Keep' }).click();
        expect(await page.locator('#notice').textContent()).toContain('Kept');
        expect(await test.document()).toContain("120'");
      },
      { javaScriptEnabled: false },
    ));

  it.each([
    ['a desk', { width: 1280, height: 900 }],
    ['a phone', { width: 390, height: 844 }],
  ] as const)('is accessible and as wide as the screen on %s', (_where, viewport) =>
    visit(
      async ({ page, test, at }) => {
        await page.getByRole('button', { name: 'Try without saving' }).click();
        await page.locator('#trial h2').waitFor();
        await lengthen(page);
        const trial = new URL(page.url()).pathname;
        for (const address of [trial, `${trial}/takeoff`, `/jobs/${test.id}/history`, `/jobs/${test.id}~1`]) {
          await page.goto(at + address);
          expect([address, await violations(page)]).toEqual([address, []]);
          const width = await page.evaluate('document.documentElement.scrollWidth');
          expect([address, width]).toEqual([address, viewport.width]);
          await shoot(page, `${viewport.width} ${address.replaceAll(/\/jobs\/|~t\w+|\//g, ' ').trim()}`);
        }
      },
      { viewport },
    ),
  );
});

async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  return await page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    return (await axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  });
}

/** Pictures to look at, in the folder that `HIGHTAP_SHOTS` names. */
async function shoot(page: Page, name: string): Promise<void> {
  if (shots === undefined) return;
  mkdirSync(shots, { recursive: true });
  await page.screenshot({ path: `${shots}/${name}.png` });
}
