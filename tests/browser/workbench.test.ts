import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { visit } from './visit.ts';

const axe = readFileSync(new URL('../../node_modules/axe-core/axe.min.js', import.meta.url), 'utf8');

describe('the workbench', () => {
  it('answers a changed line at once, without a new page, and keeps the focus', () =>
    visit(async ({ page, field }) => {
      expect(await field('answer').textContent()).toContain('PASS');
      await page.evaluate("document.body.setAttribute('data-same-page', 'yes')");
      await field('run:SHH:line:line').fill("1/2 PEX 120' up 6' 1 tee 2 ells to SH hot");
      await page.keyboard.press('Tab');
      await page.getByText('▼ SHORT').waitFor();
      expect(await page.evaluate('document.activeElement.id')).toBe('run:SHH:units');
      expect(await page.locator('body').getAttribute('data-same-page')).toBe('yes');
      expect(await field('path').locator('figcaption').textContent()).toContain('Rain shower, hot');
    }));

  it('shows why a line will not do, beside it, and forgets that when it does', () =>
    visit(async ({ page, field, test }) => {
      const before = await test.document();
      await field('run:T2:line:line').fill("3/4 PEXX 10'");
      await page.keyboard.press('Enter');
      await field('run:T2:line:line:problem').waitFor();
      expect(await field('run:T2:line:line:problem').textContent()).toContain('PEXX');
      expect(await field('run:T2:line:line').inputValue()).toBe("3/4 PEXX 10'");
      expect(await test.document()).toBe(before);
      await field('run:T2:line:line').fill("3/4 PEX 10' 1 through tee");
      await page.keyboard.press('Enter');
      await field('run:T2:line:line:problem').waitFor({ state: 'detached' });
    }));

  it('loses nothing to a person who types faster than it answers', () =>
    visit(async ({ page, field, test }) => {
      await field('run:T1:panel:open').click();
      await field('run:T1:edit:size').fill('3/4');
      await field('run:T1:edit:length').fill('30');
      await field('run:T1:edit:note').focus();
      await page.keyboard.type('behind the boiler', { delay: 15 });
      await expect.poll(() => field('run:T1:line:line').inputValue()).toMatch(/^3\/4 PEX 30 ft/);
      expect(await field('run:T1:edit:note').inputValue()).toBe('behind the boiler');
      await page.keyboard.press('Enter');
      await expect.poll(() => test.document()).toContain('behind the boiler');
      expect(await field('run:T1:panel:open').getAttribute('aria-expanded')).toBe('true');
    }));

  it('keeps what is selected in a field through a swap, from its first letter on', () =>
    visit(async ({ page, field }) => {
      await field('run:T1:panel:open').click();
      await field('run:T1:edit:size').fill('3/4');
      // The answer comes only when the selection is there.
      await page.route('**/runs/**', async (route) => {
        await page.waitForTimeout(300);
        await route.continue();
      });
      await field('run:T1:edit:length').focus();
      await page.keyboard.press('Control+a');
      await expect.poll(() => field('run:T1:line:line').inputValue()).toMatch(/^3\/4 PEX/);
      await page.keyboard.type('30');
      expect(await field('run:T1:edit:length').inputValue()).toBe('30');
    }));

  it('adds a run by the keyboard alone and is ready for the next', () =>
    visit(async ({ page, field }) => {
      await field('add-run:from').fill('T1');
      await page.keyboard.press('Tab');
      await page.keyboard.press('Tab');
      await page.keyboard.type("3/4 PEX 5' 1 ell");
      await page.keyboard.press('Enter');
      await field('run:R1:name').waitFor();
      expect(await page.evaluate('document.activeElement.id')).toBe('add-run:line');
      expect(await field('add-run:line').inputValue()).toBe('');
    }));

  it('explains a figure beside the page and comes back to it', () =>
    visit(async ({ page, field }) => {
      await field('run:SHH:velocity').click();
      await field('explanation-title').waitFor();
      expect(await page.evaluate('document.activeElement.id')).toBe('explanation-title');
      await page.getByRole('link', { name: /step SHH\.flow/ }).click();
      await page
        .getByRole('heading', { name: /Design flow/ })
        .first()
        .waitFor();
      await page.keyboard.press('Escape');
      expect(await field('explain').textContent()).toBe('');
      expect(await page.evaluate('document.activeElement.id')).toBe('run:SHH:velocity');
    }));

  it('shows another path where one is chosen', () =>
    visit(async ({ page, field }) => {
      await field('picker-path').selectOption('KS.cold');
      await page.getByText(/^Kitchen sink, cold:/).waitFor();
    }));

  it('does the same without the script', () =>
    visit(
      async ({ page, field }) => {
        await field('run:SHH:line:line').fill("1/2 PEX 120' up 6' 1 tee 2 ells to SH hot");
        await field('run:SHH:line').getByRole('button', { name: 'Save' }).click();
        expect(await field('answer').textContent()).toContain('SHORT');
        await field('run:T2:line:line').fill('nonsense');
        await field('run:T2:line').getByRole('button', { name: 'Save' }).click();
        expect(await field('run:T2:line:line:problem').textContent()).toContain('nonsense');
        await page.goBack();
        await field('run:SHH:velocity').click();
        expect(await page.getByRole('heading', { level: 2 }).textContent()).toContain('SHH');
      },
      { javaScriptEnabled: false },
    ));

  it.each([
    ['a desk', { viewport: { width: 1280, height: 900 } }],
    ['a phone', { viewport: { width: 390, height: 844 } }],
    ['a dark room', { viewport: { width: 1280, height: 900 }, colorScheme: 'dark' }],
  ] as const)('is accessible and as wide as the screen on %s', (_where, options) =>
    visit(async ({ page, field }) => {
      await field('run:T1:panel:open').click();
      await page.evaluate(axe);
      const violations = await page.evaluate(async () => {
        const { axe } = globalThis as unknown as {
          axe: { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
        };
        return (await axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
      });
      expect(violations).toEqual([]);
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(options.viewport.width);
    }, options),
  );
});
