import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { exampleFiles, run } from '../cli/run.ts';
import { testApp } from '../test-app.ts';

const house = exampleFiles().find((path) => path.endsWith('home-run-house.json'))!;
const rates = { rate: '85', tax: '7.25', overhead: '12', margin: '10' };

/** Half a cent up, as by hand. */
const cents = (money: number): number => Math.round(money * 100 + 1e-6) / 100;

interface Bid {
  readonly total: string;
  readonly labor_h: number;
  readonly bid: readonly { readonly what: string; readonly amount: string }[] | null;
}

describe('a price built up on a take-off', () => {
  it('is the same by hand, in the terminal and on the page', async () => {
    const args = Object.entries(rates).flatMap(([name, value]) => [`--${name}`, value]);
    const told = JSON.parse((await run(['takeoff', house, ...args, '--json'])).stdout) as Bid;
    const material = Number(told.total);
    const tax = cents(material * 0.0725);
    const labor = cents(told.labor_h * 85);
    const overhead = cents((material + tax + labor) * 0.12);
    const cost = cents(material + tax + labor + overhead);
    const price = cents(cost / 0.9);
    const amounts = told.bid!.map(({ amount }) => Number(amount));
    expect(amounts).toEqual([
      material,
      tax,
      labor,
      cents(material + tax + labor),
      overhead,
      cost,
      cents(price - cost),
      price,
    ]);
    const { app, id } = await testApp(readFileSync(house, 'utf8'));
    const page = await app.inject(`/jobs/${id}/takeoff?${new URLSearchParams(rates)}`);
    const table = page.body.slice(page.body.indexOf('class="bid"'), page.body.indexOf('</tfoot>'));
    const shown = [...table.matchAll(/\$([\d,]+\.\d\d)/g)].map(([, money]) =>
      Number(money!.replaceAll(',', '')),
    );
    expect(shown).toEqual(amounts);
    expect(table).toContain('invented');
  });

  it('is not there where nothing is added', async () => {
    expect((JSON.parse((await run(['takeoff', house, '--json'])).stdout) as Bid).bid).toBeNull();
    const { app, id } = await testApp();
    expect((await app.inject(`/jobs/${id}/takeoff`)).body).not.toContain('class="bid"');
  });

  it('refuses rates that are none in a sentence, and keeps what was typed', async () => {
    const terminal = await run(['takeoff', house, '--margin', '100']);
    expect(terminal.code).toBe(2);
    expect(terminal.stderr).toContain('the margin is 100 % of the price; expected 0 to 95');
    const { app, id } = await testApp();
    const page = await app.inject(`/jobs/${id}/takeoff?tax=%22%3E%3Cb%3E`);
    expect(page.statusCode).toBe(422);
    expect(page.body).toContain('No price: the tax is');
    // In its field as typed, with the quote that would end it written out; in the sentence with its bracket.
    expect(page.body).toContain('value="&#34;><b>"');
    expect(page.body.replace('value="&#34;><b>"', '')).not.toContain('<b>');
  });
});
