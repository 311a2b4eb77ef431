import type { z } from 'zod';
import { isManifold, type PriceLine } from '../../engine/takeoff/price-line.ts';
import type { Problems } from '../../views/workbench.ts';
import { priceEntries } from '../document/schema-prices.ts';
import { tellIssue } from '../document/tell-issue.ts';
import type { FormFields } from '../forms/form-fields.ts';

export type EditedPrice =
  | { readonly ok: true; readonly line: PriceLine }
  | { readonly ok: false; readonly problems: Problems };

const fieldOf: Readonly<Record<string, string>> = {
  perFoot: 'price',
  each: 'price',
  hoursPerFoot: 'hours',
  perPort: 'portPrice',
  hoursPerPort: 'portHours',
};

/** The price of a line with other figures, as they were typed. */
export function editPrice(before: PriceLine, fields: FormFields): EditedPrice {
  const { price: money = '', hours = '', portPrice = '', portHours = '' } = fields;
  switch (before.list) {
    case 'pipe': {
      const raw = { ...before.price, perFoot: typed(money), hoursPerFoot: numberOf(hours) };
      return check(priceEntries.pipe, raw, (price) => ({ list: 'pipe', price }));
    }
    case 'fittings': {
      const raw = { ...before.price, each: typed(money), hours: numberOf(hours) };
      return check(priceEntries.fitting, raw, (price) => ({ list: 'fittings', price }));
    }
    case 'devices': {
      const ports = isManifold(before.price)
        ? { perPort: typed(portPrice), hoursPerPort: numberOf(portHours) }
        : {};
      const raw = { ...before.price, each: typed(money), hours: numberOf(hours), ...ports };
      return check(priceEntries.device, raw, (price) => ({ list: 'devices', price }));
    }
    case 'parts': {
      const raw = { ...before.price, each: typed(money), hours: numberOf(hours) };
      return check(priceEntries.part, raw, (price) => ({ list: 'parts', price }));
    }
  }
}

function check<Price>(schema: z.ZodType<Price>, raw: object, line: (price: Price) => PriceLine): EditedPrice {
  const read = schema.safeParse(raw);
  if (read.success) return { ok: true, line: line(read.data) };
  const problems = new Map<string, string>();
  for (const issue of read.error.issues) {
    const field = fieldOf[String(issue.path[0])] ?? '';
    const told = tellIssue(issue, raw, 'price').replace(/^\w+:? /, '');
    if (!problems.has(field)) problems.set(field, told);
  }
  return { ok: false, problems: Object.fromEntries(problems) };
}

/** What is left empty is missing, never nothing. */
function typed(text: string): string | undefined {
  const trimmed = text.trim();
  return trimmed === '' ? undefined : trimmed;
}

function numberOf(text: string): number | string | undefined {
  const trimmed = text.trim();
  if (trimmed === '') return undefined;
  return /^\d+(?:\.\d+)?(?:e[+-]?\d+)?$/i.test(trimmed) ? Number(trimmed) : trimmed;
}
