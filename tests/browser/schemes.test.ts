import { readFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { placedDocument } from '../server/placed-job.ts';
import { testApp } from '../server/test-app.ts';

const axe = readFileSync(new URL('../../node_modules/axe-core/axe.min.js', import.meta.url), 'utf8');

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
});

afterAll(async () => {
  await browser.close();
});

async function visit(
  path: (id: string) => string,
  work: (page: Page) => Promise<void>,
  options: Parameters<Browser['newPage']>[0] = {},
): Promise<void> {
  const test = await testApp(placedDocument());
  await test.app.listen({ port: 0, host: '127.0.0.1' });
  const { port } = test.app.server.address() as AddressInfo;
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 }, ...options });
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(`http://127.0.0.1:${port}${path(test.id)}`);
  await work(page);
  expect(complaints).toEqual([]);
  await page.close();
  await test.app.close();
}

/** Presses Tab until the focus is on what carries these words. */
async function tabTo(page: Page, words: string): Promise<void> {
  for (let presses = 0; presses < 200; presses++) {
    await page.keyboard.press('Tab');
    const focused = await page.evaluate('document.activeElement.textContent.trim()');
    if (String(focused).startsWith(words)) return;
  }
  throw new Error(`the keyboard does not reach ${words}`);
}

const phone = { viewport: { width: 390, height: 844 } };

describe('from a few answers to a chosen scheme', () => {
  it.each([
    ['with the script', {}],
    ['without it', { javaScriptEnabled: false }],
    ['on a phone, without it', { javaScriptEnabled: false, ...phone }],
  ])('%s', (_how, options) =>
    visit(
      () => '/quick-start',
      async (page) => {
        await page.getByLabel('Name', { exact: true }).first().fill('Haw House (invented)');
        await page.getByRole('button', { name: 'Make the house' }).click();
        await page.getByRole('heading', { name: 'Schemes side by side' }).waitFor();
        await page
          .getByRole('button', { name: /^Choose this one\s+Home runs/ })
          .filter({ visible: true })
          .click();
        await page.getByText('✓ chosen').filter({ visible: true }).waitFor();
        await page.getByRole('link', { name: 'How it is sized' }).filter({ visible: true }).click();
        await page.getByRole('heading', { name: 'Sizing at least cost' }).waitFor();
        expect(await page.locator('.opening').textContent()).toContain('Home runs');
        expect(await page.locator('#answer').textContent()).toContain('the least that holds every limit');
      },
      options,
    ),
  );

  it('by the keyboard alone', () =>
    visit(
      (id) => `/jobs/${id}/compare`,
      async (page) => {
        await tabTo(page, 'Choose this one Zone manifolds');
        await page.keyboard.press('Enter');
        await page.locator('th.chosen', { hasText: 'Zone manifolds' }).waitFor();
        await tabTo(page, 'The same as a table');
        await page.keyboard.press('Enter');
        await page.getByText('as drawn', { exact: true }).waitFor();
      },
    ));

  it('switches the scheme on the workbench without a new page', () =>
    visit(
      (id) => `/jobs/${id}`,
      async (page) => {
        await page.evaluate("document.body.setAttribute('data-same-page', 'yes')");
        const before = await page.locator('.run').count();
        await page.getByLabel('Scheme on this page').selectOption('home-run');
        await page
          .locator('[id="job:chosen"] option[value="home-run"][selected]')
          .waitFor({ state: 'attached' });
        expect(await page.locator('.run').count()).not.toBe(before);
        expect(await page.locator('body').getAttribute('data-same-page')).toBe('yes');
      },
    ));
});

describe('the pages about schemes', () => {
  const pages = [
    ['side by side', (id: string) => `/jobs/${id}/compare`],
    ['sizing', (id: string) => `/jobs/${id}/sizing`],
    ['quick start', () => '/quick-start'],
  ] as const;
  it.each(pages)(
    '%s: no barrier that can be found by rule, wide or on a phone, and nothing too wide',
    (_name, path) =>
      visit(path, async (page) => {
        for (const width of [1280, 390]) {
          await page.setViewportSize({ width, height: 844 });
          await page.evaluate(axe);
          const violations = await page.evaluate(
            'axe.run().then((result) => result.violations.map(({ id }) => id))',
          );
          expect(violations).toEqual([]);
          expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
        }
      }),
  );
});
