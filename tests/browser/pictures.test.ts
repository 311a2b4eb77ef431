import { readFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { testApp } from '../server/test-app.ts';

const axe = readFileSync(new URL('../../node_modules/axe-core/axe.min.js', import.meta.url), 'utf8');
const house = readFileSync(new URL('../../examples/three-level-house.json', import.meta.url), 'utf8');

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
});

afterAll(async () => {
  await browser.close();
});

async function visit(
  work: (page: Page) => Promise<void>,
  options: Parameters<Browser['newPage']>[0] = {},
): Promise<void> {
  const test = await testApp(house);
  await test.app.listen({ port: 0, host: '127.0.0.1' });
  const { port } = test.app.server.address() as AddressInfo;
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 }, ...options });
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(`http://127.0.0.1:${port}/jobs/${test.id}/pictures`);
  await work(page);
  expect(complaints).toEqual([]);
  await page.close();
  await test.app.close();
}

/** What a row of the supply's table reads, as the read-out tells it. */
async function readOffRow(page: Page, row: number): Promise<string> {
  const [flow, street, behind, what] = await page
    .locator('#supply-table tbody tr')
    .nth(row)
    .locator('th, td')
    .allTextContents();
  const words = `Flow ${flow!.trim()} gpm · At the street ${street!.trim()} psi · Behind the service ${behind!.trim()} psi`;
  return what === '' ? words : `${words} · the demand`;
}

describe('the pictures', () => {
  it('are read off by keyboard and by pointer, figure for figure as in the table', () =>
    visit(async (page) => {
      const output = page.locator('.read-off output');
      await page.locator('.read-off canvas').waitFor();
      expect(await page.locator('.supply-plot.wide').isVisible()).toBe(false);
      const rows = page.locator('#supply-table tbody tr');
      const demand = await rows.evaluateAll((all) => all.findIndex((row) => row.className === 'total'));
      expect(await output.textContent()).toBe(await readOffRow(page, demand));
      const slider = page.getByLabel('Read off at flow');
      await slider.focus();
      await page.keyboard.press('ArrowRight');
      expect(await output.textContent()).toBe(await readOffRow(page, demand + 1));
      await page.keyboard.press('Home');
      expect(await output.textContent()).toBe(await readOffRow(page, 0));
      const over = await page.locator('.read-off .u-over').boundingBox();
      await page.mouse.move(over!.x + over!.width - 1, over!.y + over!.height / 2);
      const last = await readOffRow(page, (await rows.count()) - 1);
      await page.waitForFunction(
        `document.querySelector('.read-off output').textContent === ${JSON.stringify(last)}`,
      );
    }));

  it('are drawings with tables where scripts are off, and on paper', async () => {
    await visit(
      async (page) => {
        expect(await page.locator('.supply-plot.wide').isVisible()).toBe(true);
        expect(await page.locator('.read-off canvas').count()).toBe(0);
        await page.locator('#supply-table summary').click();
        expect(await page.locator('#supply-table table').isVisible()).toBe(true);
        await page.getByLabel('Staircase A').selectOption({ index: 3 });
        const chosen = await page.getByLabel('Staircase A').inputValue();
        await page.getByRole('button', { name: 'Show' }).click();
        await page.waitForURL(/\?a=/);
        expect(await page.getByLabel('Staircase A').inputValue()).toBe(chosen);
      },
      { javaScriptEnabled: false },
    );
    await visit(async (page) => {
      await page.locator('.read-off canvas').waitFor();
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('.supply-plot.wide').isVisible()).toBe(true);
      expect(await page.locator('.read-off canvas').isVisible()).toBe(false);
      expect(await page.locator('#velocity-table table').isVisible()).toBe(true);
    });
  });

  it.each(['light', 'dark'] as const)(
    'have no barrier that can be found by rule in %s, wide or on a phone, and nothing too wide',
    (colorScheme) =>
      visit(
        async (page) => {
          await page.locator('.read-off canvas').waitFor();
          await page.evaluate("for (const fold of document.querySelectorAll('details')) fold.open = true");
          for (const width of [1280, 390]) {
            await page.setViewportSize({ width, height: 844 });
            await page.evaluate(axe);
            expect(
              await page.evaluate('axe.run().then((result) => result.violations.map(({ id }) => id))'),
            ).toEqual([]);
            expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
          }
        },
        { colorScheme },
      ),
  );
});
