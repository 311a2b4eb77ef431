import type { AddressInfo } from 'node:net';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect } from 'vitest';
import { type TestApp, testApp } from '../server/test-app.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
});

afterAll(async () => {
  await browser.close();
});

export interface Visit {
  readonly page: Page;
  readonly test: TestApp;
  readonly field: (id: string) => ReturnType<Page['locator']>;
  /** Address of the one job. */
  readonly job: string;
}

/**
 * A journey that begins on the list of jobs, over a server with one job. It fails where the browser complains of
 * anything but a refusal that the journey asks for, or asks any server but its own for anything.
 */
export async function visit(
  work: (visit: Visit) => Promise<void>,
  options: Parameters<Browser['newPage']>[0] = {},
  document?: string,
): Promise<void> {
  const test = await testApp(document);
  await test.app.listen({ port: 0, host: '127.0.0.1' });
  const { port } = test.app.server.address() as AddressInfo;
  const origin = `http://127.0.0.1:${port}`;
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 }, ...options });
  const complaints: string[] = [];
  const asked: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' && !/status of 4(09|22)/.test(message.text()))
      complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => asked.push(request.url()));
  await page.goto(`${origin}/`);
  await work({ page, test, field: (id) => page.locator(`[id="${id}"]`), job: `${origin}/jobs/${test.id}` });
  expect(complaints).toEqual([]);
  expect(asked.filter((url) => new URL(url).origin !== origin)).toEqual([]);
  expect(asked.length).toBeGreaterThan(0);
  await page.close();
  await test.app.close();
}
