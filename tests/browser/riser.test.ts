import { readFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writeJob } from '../../server/document/write-job.ts';
import { manyBathsJob } from '../engine/drawing/many-baths.ts';
import { exampleNames, exampleText } from '../examples/open-example.ts';
import { exampleFiles, run } from '../server/cli/run.ts';
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
  document: string,
  path: string,
  work: (page: Page) => Promise<void>,
  options: Parameters<Browser['newPage']>[0] = {},
): Promise<void> {
  const test = await testApp(document);
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

/** Texts of the drawing as the browser sets them: those that share paper, and those over its edge. */
const faultyTexts = `(() => {
  const svg = document.querySelector('svg.drawing');
  const { width, height } = svg.viewBox.baseVal;
  const onSheet = svg.getScreenCTM().inverse();
  const texts = [...svg.querySelectorAll('text')].map((one) => {
    const own = one.getBBox();
    const corners = [[own.x, own.y], [own.x + own.width, own.y + own.height]].map(([x, y]) => {
      const at = new DOMPoint(x, y).matrixTransform(onSheet.multiply(one.getScreenCTM()));
      return [at.x, at.y];
    });
    const xs = corners.map(([x]) => x);
    const ys = corners.map(([, y]) => y);
    // A box holds the room of every letter of the face; what stands above and below small letters is clear paper.
    const clear = one.hasAttribute('transform') ? { x: 1, y: 0 } : { x: 0, y: 1 };
    return {
      text: one.textContent,
      left: Math.min(...xs) + clear.x, right: Math.max(...xs) - clear.x,
      top: Math.min(...ys) + clear.y, bottom: Math.max(...ys) - clear.y,
    };
  });
  const over = texts.filter((one) => one.left < 0 || one.top < 0 || one.right > width || one.bottom > height);
  const shared = texts.flatMap((one, at) => texts.slice(at + 1)
    .filter((two) => one.left < two.right && two.left < one.right && one.top < two.bottom && two.top < one.bottom)
    .map((two) => one.text + ' / ' + two.text));
  return { count: texts.length, over: over.map(({ text }) => text), shared };
})()`;

/** The middle of a path on the screen. */
const middleOf = (path: string): string => `(() => {
  const path = document.querySelector(${JSON.stringify(path)});
  const at = path.getPointAtLength(path.getTotalLength() / 2).matrixTransform(path.getScreenCTM());
  return [at.x, at.y];
})()`;

interface Faulty {
  readonly count: number;
  readonly over: string[];
  readonly shared: string[];
}

describe('the texts of a drawing, as the browser sets them', () => {
  const houses: (readonly [name: string, document: string])[] = [
    ...exampleNames.map((name) => [name, exampleText(name)] as const),
    ['a generated house of 192 runs', writeJob(manyBathsJob())],
  ];
  it.each(houses)('share no paper: %s', async (_name, document) => {
    for (const view of ['riser', 'plan']) {
      await visit(document, `/riser?view=${view}`, async (page) => {
        for (const media of ['screen', 'print'] as const) {
          await page.emulateMedia({ media });
          const { count, over, shared } = (await page.evaluate(faultyTexts)) as Faulty;
          expect(count).toBeGreaterThan(15);
          expect({ over, shared }).toEqual({ over: [], shared: [] });
        }
      });
    }
  });
});

describe('a run', () => {
  it.each([
    ['with the script', {}],
    ['without it', { javaScriptEnabled: false }],
  ])(
    'is reached on the workbench by a click on its pipe, and marked in the drawing on the way back, %s',
    (_how, options) =>
      visit(
        exampleText('three-level-house.json'),
        '/riser',
        async (page) => {
          const pipe = 'svg.drawing a[href$="run%3AER"] path.reach';
          await page.locator(pipe).scrollIntoViewIfNeeded();
          const [x, y] = (await page.evaluate(middleOf(pipe))) as [number, number];
          await page.mouse.click(x, y);
          await page.waitForURL(/#run%3AER$/);
          expect(await page.locator('[id="run:ER"]').isVisible()).toBe(true);
          await page.goto(`${page.url().split('#')[0]}/runs/ER`);
          await page.getByRole('link', { name: 'On the riser' }).click();
          await page.getByText('ER: 1 in.').first().waitFor();
          const mark = page.locator('#marked-run');
          expect(await mark.count()).toBe(1);
        },
        options,
      ),
  );

  it('that is far off on a phone is scrolled to', () =>
    visit(
      exampleText('three-level-house.json'),
      '/riser?run=KC2#marked-run',
      async (page) => {
        const box = await page.locator('#marked-run').boundingBox();
        expect(box!.x).toBeLessThan(390);
        expect(box!.x + box!.width).toBeGreaterThan(0);
      },
      { viewport: { width: 390, height: 844 } },
    ));
});

describe('the page of a drawing', () => {
  it.each(['light', 'dark'] as const)(
    'has no barrier that can be found by rule and nothing too wide: %s',
    (colorScheme) =>
      visit(
        exampleText('three-level-house.json'),
        '/riser?run=ER',
        async (page) => {
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

  it('prints the drawing whole', () =>
    visit(exampleText('large-house.json'), '/riser', async (page) => {
      await page.emulateMedia({ media: 'print' });
      const { width, height } = (await page.locator('svg.drawing').boundingBox())!;
      // 108 mm at 96 pixels an inch, and the width of the page.
      expect(height).toBeLessThanOrEqual((108 / 25.4) * 96 + 1);
      expect(width).toBeLessThanOrEqual(1280);
    }));
});

it('the file of the command line is well-formed XML that a browser draws', async () => {
  for (const file of exampleFiles()) {
    const { stdout } = await run(['riser', file]);
    const page = await browser.newPage();
    await page.setContent('<p></p>');
    const root = await page.evaluate(
      `new DOMParser().parseFromString(${JSON.stringify(stdout)}, 'image/svg+xml').documentElement.localName`,
    );
    expect(root).toBe('svg');
    await page.close();
  }
});
