import { readFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writePrices } from '../../server/document/write-prices.ts';
import { createPriceBook, readPriceBookRow } from '../../server/storage/price-book-store.ts';
import { smallBook } from '../engine/takeoff/small-book.ts';
import { noon, testApp } from '../server/test-app.ts';

const axe = readFileSync(new URL('../../node_modules/axe-core/axe.min.js', import.meta.url), 'utf8');

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
});

afterAll(async () => {
  await browser.close();
});

const table = `item,kind,material,joint,size,unit,price,hours,shelf
pipe,,pex,,3/4 in,ft,0.90,0.03,A1
pipe,,pex,,4-Mar,ft,0.90,0.03,A1
pipe,,copper-l,,1 in,ft,6.10,0.05,A2
fitting,ell,pex,insert-brass,3/4 in,each,2.10,0.125,B1
fitting,ell,pex,solder,3/4 in,each,2.10,0.125,B1
fitting,ball-valve,pex,insert-brass,1 in,each,,0.5,B2
device,meter,,,1 in,each,"$1,480.00",1,C1
device,other,,,Booster pump,each,910.00,4,C2
pipe,,pex,,1 in,box,88.00,0.03,A1
`;

const file = (text: string) => ({ name: 'yard.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });

async function violations(page: Page): Promise<unknown> {
  await page.evaluate(axe);
  return await page.evaluate(
    'axe.run().then(({ violations }) => violations.map(({ id, nodes }) => [id, nodes[0].html]))',
  );
}

/** Whether nothing sticks out to the right. */
async function fits(page: Page): Promise<boolean> {
  return Boolean(
    await page.evaluate('document.documentElement.scrollWidth <= document.documentElement.clientWidth'),
  );
}

const phone = { viewport: { width: 390, height: 844 } };

describe('a price book', () => {
  it.each([
    ['with the script', {}],
    ['without it', { javaScriptEnabled: false }],
    ['on a phone, with the script', phone],
    ['on a phone, without it', { ...phone, javaScriptEnabled: false }],
  ])('is copied, filtered, edited, and read from a table with bad lines, %s', async (how, options) => {
    const test = await testApp();
    const book = await createPriceBook(test.store, 'Yard prices', writePrices(smallBook), noon);
    await test.app.listen({ port: 0, host: '127.0.0.1' });
    const { port } = test.app.server.address() as AddressInfo;
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 }, ...options });
    const complaints: string[] = [];
    page.on('pageerror', (error) => complaints.push(error.message));
    const scripted = !('javaScriptEnabled' in options);
    const kept = async () => (await readPriceBookRow(test.store, book))?.document ?? '';

    await page.goto(`http://127.0.0.1:${port}/prices`);
    if (scripted) expect(await violations(page)).toEqual([]);
    await page.getByRole('link', { name: 'Yard prices', exact: true }).click();
    await page.getByLabel('Only items with these words').fill('copper');
    await page.getByRole('button', { name: 'Show', exact: true }).click();
    expect(await page.locator('.price-name').allTextContents()).toEqual(['3/4 copper type L pipe']);
    await page.getByLabel('Price a foot').fill('4.41');
    await page.keyboard.press('Enter');
    await page.waitForURL(/#item:pipe:2/);
    expect(await kept()).toContain('"perFoot": "4.41"');
    await page.getByLabel('Price a foot').fill('four');
    await page.getByRole('button', { name: 'Keep the price of 3/4 copper type L pipe' }).click();
    expect(await page.locator('[id="row:pipe:2:price:problem"]').textContent()).toContain('"four" came');
    expect(await page.getByLabel('Price a foot').inputValue()).toBe('four');

    const before = await kept();
    await page.goto(`http://127.0.0.1:${port}/prices/${book}`);
    expect(await fits(page)).toBe(true);
    if (scripted) expect(await violations(page)).toEqual([]);
    await page.getByLabel('A file ending in .csv or .json').setInputFiles(file(table));
    await page.getByRole('button', { name: 'Show what it changes' }).click();
    await page.getByText('Nothing is kept yet.').waitFor();
    expect(await page.locator('.line-number').allTextContents()).toEqual(
      [3, 6, 7, 8, 10].map((line) => `Line ${line}`),
    );
    expect(await fits(page)).toBe(true);
    if (scripted) expect(await violations(page)).toEqual([]);
    expect(await kept()).toBe(before);
    await page.getByRole('button', { name: 'Keep 3 lines, leave 5 out' }).click();
    await page.waitForURL(/\/prices\/[a-z0-9]+$/);
    expect(await kept()).toContain('"device": "other", "size": "Booster pump", "each": "910.00"');
    expect(complaints, how).toEqual([]);
    await page.close();
    await test.app.close();
  });
});
