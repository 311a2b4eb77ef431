import { mkdirSync, readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { visit } from './visit.ts';

/** Where pictures of a walk go, to be looked at; none are taken where it is not set. */
const pictures = process.env.PICTURES;

async function picture(page: Page, name: string): Promise<void> {
  if (pictures === undefined) return;
  mkdirSync(pictures, { recursive: true });
  // Hiding the caret would take an inline style, which the page forbids.
  await page.screenshot({ path: `${pictures}/${name}.png`, caret: 'initial' });
}

/** Names of the runs, in the order of the page. */
async function shown(page: Page): Promise<string[]> {
  return await page.locator('.run-name strong').allTextContents();
}

const focused = 'document.activeElement.id';

describe('the outline', () => {
  it('moves, hangs, copies, adds and deletes runs by the keys on their lines, and takes it all back', () =>
    visit(async ({ page, field, test }) => {
      const [before, first] = [await shown(page), await test.document()];
      const line = 'run:WH:line:line';
      await field(line).focus();
      await page.keyboard.press('Alt+Shift+ArrowUp');
      await expect
        .poll(async () => (await shown(page)).slice(2, 9).join(' '))
        .toBe('HBR WH H1 KSH RH LAVH SHH');
      expect(await page.evaluate(focused)).toBe(line);
      await page.keyboard.press('Alt+Shift+ArrowDown');
      await expect.poll(() => shown(page)).toEqual(before);
      await page.keyboard.press('Alt+Shift+ArrowRight');
      await expect.poll(() => field('run:WH').getAttribute('class')).toBe('run depth-3');
      expect(await page.evaluate(focused)).toBe(line);
      await page.keyboard.press('Alt+Shift+ArrowLeft');
      await expect.poll(() => field('run:WH').getAttribute('class')).toBe('run depth-2');
      await field('run:HBR:line:line').focus();
      await page.keyboard.press('Alt+Shift+D');
      await expect.poll(() => field('run:R1:line:line').count()).toBe(1);
      expect((await shown(page)).slice(2, 4)).toEqual(['HBR', 'R1']);
      await field('run:R1:line:line').focus();
      await page.keyboard.press('Alt+Enter');
      await expect.poll(() => page.evaluate(focused)).toBe('run:R1:under:line');
      await page.keyboard.type("1/2 PEX 5'");
      await page.keyboard.press('Enter');
      await field('run:R2').waitFor();
      await field('run:R2:line:line').focus();
      await page.keyboard.press('Alt+Shift+Delete');
      await field('run:R2').waitFor({ state: 'detached' });
      expect(await page.evaluate(focused)).toBe('run:T2:line:line');
      // Up, down, in, out, copy, under, delete.
      for (let turn = 0; turn < 7; turn++) {
        const document = await test.document();
        await page.keyboard.press('Control+z');
        await expect.poll(() => test.document()).not.toBe(document);
      }
      await expect.poll(() => shown(page)).toEqual(before);
      expect(JSON.parse(await test.document())).toEqual(JSON.parse(first));
      await page.keyboard.press('Control+y');
      await expect.poll(async () => (await shown(page))[3]).toBe('WH');
    }));

  it('saves what is typed on a line before it moves the run, and moves no run whose line is refused', () =>
    visit(async ({ page, field, test }) => {
      await field('run:RC:line:line').fill("3/4 PEX 17' up 10' 1 ell");
      await page.keyboard.press('Alt+Shift+ArrowUp');
      await expect.poll(async () => (await shown(page)).indexOf('RC')).toBe(4);
      expect(await field('run:RC:line:line').inputValue()).toBe("3/4 PEX 17' up 10' 1 ell");
      await field('run:RC:line:line').fill('3/4 PEXX');
      await page.keyboard.press('Alt+Shift+ArrowDown');
      await field('run:RC:line:line:problem').waitFor();
      expect((await shown(page)).indexOf('RC')).toBe(4);
      expect(await test.document()).toContain("3/4 PEX 17' up 10' 1 ell");
    }));

  it('says why a run cannot go where the keys send it', () =>
    visit(async ({ page, field }) => {
      await field('run:T2:line:line').focus();
      await page.keyboard.press('Alt+Shift+ArrowRight');
      await page.getByText('Run HBR, before T2, ends at a fixture').waitFor();
      expect(await page.evaluate(focused)).toBe('run:T2:line:line');
    }));

  it('moves a run by its buttons without the script', () =>
    visit(
      async ({ page, field }) => {
        await field('run:RC:panel:open').click();
        await page.getByRole('button', { name: 'Up', exact: true }).click();
        expect((await shown(page)).indexOf('RC')).toBe(4);
      },
      { javaScriptEnabled: false },
    ));
});

/** The three-level house with a riser to the top floor that is too thin. */
const thinRiser = readFileSync(
  new URL('../../examples/three-level-house.json', import.meta.url),
  'utf8',
).replace("1 PEX 25' up 10' 6\\\" 1 through tee 1 ell", "1/2 PEX 25' up 10' 6\\\" 1 through tee 1 ell");

describe('a top-floor bath that falls short', () => {
  it('is understood and mended in five actions', () =>
    visit(
      async ({ page, field, job }) => {
        // 1: the job is opened.
        await page.goto(job);
        expect(await field('answer').textContent()).toContain('SHORT');
        await picture(page, 'walk-1-open');
        // 2: from the answer to its findings.
        await field('answer')
          .getByRole('link', { name: /finding/ })
          .click();
        await picture(page, 'walk-2-findings');
        // 3: from a finding to the run that it is about.
        await field('findings').getByRole('link', { name: 'Go to run ER' }).first().click();
        await picture(page, 'walk-3-run');
        // 4: another size; 5: Enter.
        const line = field('run:ER:line:line');
        await line.fill((await line.inputValue()).replace(/^1\/2/, '1'));
        await page.keyboard.press('Enter');
        await page.getByText('PASS').first().waitFor();
        expect(await field('answer').textContent()).toContain('PASS');
        await picture(page, 'walk-5-mended');
      },
      {},
      thinRiser,
    ));
});
