import { readFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { testApp } from '../server/test-app.ts';

const axe = readFileSync(new URL('../../node_modules/axe-core/axe.min.js', import.meta.url), 'utf8');
const large = readFileSync(new URL('../../examples/large-house.json', import.meta.url), 'utf8');

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
});

afterAll(async () => {
  await browser.close();
});

async function visit(
  path: string,
  work: (page: Page) => Promise<void>,
  options: Parameters<Browser['newPage']>[0] = {},
): Promise<void> {
  const test = await testApp(large);
  await test.app.listen({ port: 0, host: '127.0.0.1' });
  const { port } = test.app.server.address() as AddressInfo;
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 }, ...options });
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(`http://127.0.0.1:${port}/jobs/${test.id}${path}`);
  await work(page);
  expect(complaints).toEqual([]);
  await page.close();
  await test.app.close();
}

/** Presses Tab until the focus is on what this selector finds. */
async function tabTo(page: Page, selector: string): Promise<void> {
  for (let presses = 0; presses < 100; presses++) {
    await page.keyboard.press('Tab');
    if (await page.evaluate(`document.activeElement.matches(${JSON.stringify(selector)})`)) return;
  }
  throw new Error(`the keyboard does not reach ${selector}`);
}

describe('the take-off', () => {
  it.each([
    ['with the script', {}],
    ['without it', { javaScriptEnabled: false }],
    ['on a phone, without it', { javaScriptEnabled: false, viewport: { width: 390, height: 844 } }],
  ])('is grouped anew, set against another scheme and taken home as files %s', (_how, options) =>
    visit(
      '',
      async (page) => {
        await page.getByRole('link', { name: 'Take-off', exact: true }).click();
        await page.getByRole('heading', { name: 'List by diameter' }).waitFor();
        await page.getByLabel('List', { exact: true }).selectOption({ label: 'by phase' });
        await page.getByLabel('Differences against').selectOption({ label: 'Trunk and branch' });
        await page.getByRole('button', { name: 'Show' }).click();
        await page.getByRole('heading', { name: 'Differences against Trunk and branch' }).waitFor();
        await page.getByRole('heading', { name: 'List by phase' }).waitFor();
        expect(await page.locator('table.parts caption').first().textContent()).toBe('Underground');
        for (const [name, ending] of [
          ['Workbook (XLSX)', '.xlsx'],
          ['List (CSV)', '.csv'],
        ] as const) {
          const download = page.waitForEvent('download');
          await page.getByRole('link', { name }).click();
          expect((await download).suggestedFilename()).toMatch(
            new RegExp(`^Large three-level house take-off .*\\${ending}$`),
          );
        }
      },
      options,
    ),
  );

  it('opens the cuts of a pipe by the keyboard alone', () =>
    visit('/takeoff', async (page) => {
      const cuts = page.locator('table.cuts').first();
      expect(await cuts.isVisible()).toBe(false);
      await tabTo(page, '.pipe-cuts summary');
      await page.keyboard.press('Enter');
      await cuts.waitFor({ state: 'visible' });
    }));

  it('has no barrier that can be found by rule, wide or on a phone, and nothing too wide', () =>
    visit('/takeoff?against=trunk', async (page) => {
      await page.evaluate("for (const fold of document.querySelectorAll('details')) fold.open = true");
      for (const width of [1280, 390]) {
        await page.setViewportSize({ width, height: 844 });
        await page.evaluate(axe);
        expect(
          await page.evaluate('axe.run().then((result) => result.violations.map(({ id }) => id))'),
        ).toEqual([]);
        expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
      }
    }));

  it('is printed with its cuts and the warning about its prices, tables kept whole', () =>
    visit('/takeoff?against=trunk', async (page) => {
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('.price-note').first().isVisible()).toBe(true);
      expect(await page.locator('table.cuts').first().isVisible()).toBe(true);
      expect(await page.locator('.take-off form').isVisible()).toBe(false);
      const kept = await page.evaluate(
        "[...document.querySelectorAll('table.parts, .pipe-cuts')].map((one) => getComputedStyle(one).breakInside)",
      );
      expect(new Set(kept as string[])).toEqual(new Set(['avoid']));
      const heads = await page.locator('#list thead').allTextContents();
      expect(heads.length).toBeGreaterThan(1);
      for (const head of heads) expect(head).toContain('Price (invented)');
    }));
});
