import type { AddressInfo } from 'node:net';
import { type CDPSession, chromium, type Page } from 'playwright-core';
import { buildApp } from '../../server/app.tsx';
import { writeJob } from '../../server/document/write-job.ts';
import { openStore } from '../../server/storage/database.ts';
import { createJob } from '../../server/storage/job-store.ts';
import { buildingJob } from './building-job.ts';
import { figure, median } from './figure.ts';

const start = new Date('2026-11-25T12:00:00Z');

/** The first run of the building: each of its lengths gives every row another figure. */
const lengths = [40, 60];

/** In the page: from a key going down to the frame in which the answer is another. */
const stopwatch = `
  let pressed = 0;
  let shown = '';
  const answer = () => document.getElementById('answer').textContent;
  addEventListener('keydown', () => { pressed = performance.now(); shown = answer(); }, true);
  new MutationObserver(() => {
    if (pressed === 0 || answer() === shown) return;
    const since = pressed;
    pressed = 0;
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => globalThis.times.push(performance.now() - since);
      channel.port2.postMessage(0);
    });
  }).observe(document.body, { subtree: true, childList: true, characterData: true });
  globalThis.times = [];
`;

/**
 * A building of 150 runs in Chromium: what its page weighs over the wire when nothing is kept yet, and what an edit
 * of the first run takes from the key press to the frame with the new answer, in time and in bytes.
 */
export async function benchBrowser(short: boolean): Promise<void> {
  const store = await openStore(':memory:');
  const document = writeJob(buildingJob(150));
  const id = await createJob(store, 'Invented building', document, start);
  const app = await buildApp({ store, now: () => start });
  await app.listen({ host: '127.0.0.1', port: 0 });
  const { port } = app.server.address() as AddressInfo;
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    const wire = await countBytes(page);
    await page.goto(`http://127.0.0.1:${port}/jobs/${id}`, { waitUntil: 'networkidle' });
    figure('first_load_bytes_wire', wire.take(), 'bytes');
    figure('first_load_elements', Number(await page.evaluate('document.querySelectorAll("*").length')), '');
    await measureEdits(page, wire, short ? 6 : 60);
  } finally {
    await browser.close();
    await app.close();
    await store.destroy();
  }
}

async function measureEdits(page: Page, wire: Wire, rounds: number): Promise<void> {
  await page.evaluate(stopwatch);
  const line = page.locator('[id="run:R0:line:line"]');
  const times: number[] = [];
  const bytes: number[] = [];
  for (let round = 0; round < rounds + 4; round++) {
    const typed = (await line.inputValue()).replace(/\d+ ft/, `${lengths[round % 2]!} ft`);
    await line.fill(typed);
    await line.focus();
    wire.take();
    await page.keyboard.press('Enter');
    while (Number(await page.evaluate('globalThis.times.length')) <= round) await page.waitForTimeout(10);
    while (wire.edits() === 0) await page.waitForTimeout(10);
    if (round < 4) continue;
    times.push(Number(await page.evaluate('globalThis.times.at(-1)')));
    bytes.push(wire.take());
  }
  figure('edit_keypress_ms', median(times), 'ms');
  figure('edit_bytes_wire', median(bytes), 'bytes');
}

interface Wire {
  /** Bytes of all answers, heads and compressed bodies, since the last call. */
  readonly take: () => number;
  /** How many edits were answered to the last byte since then. */
  readonly edits: () => number;
}

async function countBytes(page: Page): Promise<Wire> {
  const session: CDPSession = await page.context().newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.setCacheDisabled', { cacheDisabled: true });
  const posted = new Set<string>();
  let bytes = 0;
  let edits = 0;
  session.on('Network.requestWillBeSent', ({ requestId, request }) => {
    if (request.method === 'POST') posted.add(requestId);
  });
  session.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
    bytes += encodedDataLength;
    if (posted.delete(requestId)) edits++;
  });
  return {
    take: () => {
      const taken = bytes;
      bytes = 0;
      edits = 0;
      return taken;
    },
    edits: () => edits,
  };
}
